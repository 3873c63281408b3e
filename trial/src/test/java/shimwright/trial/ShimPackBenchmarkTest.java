package shimwright.trial;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shimwright.mechanics.axial.shim.PackOffer;

/** What is measured is the search and not a refusal. */
class ShimPackBenchmarkTest {
    @ParameterizedTest
    @ValueSource(ints = {2, 3})
    void theDrawerOfFortyHoldsAPossiblePack(int most) {
        ShimPackBenchmark benchmark = new ShimPackBenchmark();
        benchmark.most = most;
        benchmark.fill();
        PackOffer best = benchmark.search().orElseThrow().result().offers().get(0);
        assertThat(best.predicted()).isBetween(20e-6, 80e-6);
        assertThat(best.probability()).isGreaterThan(0.95);
        assertThat(best.pieces()).hasSizeLessThanOrEqualTo(most);
    }
}
