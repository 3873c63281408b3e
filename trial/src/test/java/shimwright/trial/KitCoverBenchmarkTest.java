package shimwright.trial;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import shimwright.rebuild.supply.Cover;

/** What is measured has everything and buys kits. */
class KitCoverBenchmarkTest {
    @Test
    void everythingIsHad() {
        KitCoverBenchmark benchmark = new KitCoverBenchmark();
        benchmark.make();
        Cover cover = benchmark.cover();
        assertThat(cover.without()).isEmpty();
        assertThat(cover.kits()).isNotEmpty();
        assertThat(cover.singles()).isNotEmpty();
    }
}
