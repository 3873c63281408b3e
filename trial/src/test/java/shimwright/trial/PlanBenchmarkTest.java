package shimwright.trial;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shimwright.rebuild.plan.Plan;

/** What is measured ends with a plan, and the longer one with a proof. */
class PlanBenchmarkTest {
    @ParameterizedTest
    @ValueSource(strings = {"A", "B"})
    void theLongerSearchIsProvenAndNoDearerThanThePages(String variant) {
        PlanBenchmark benchmark = new PlanBenchmark();
        benchmark.variant = variant;
        benchmark.read();
        Plan page = benchmark.page().orElseThrow();
        Plan proof = benchmark.proof().orElseThrow();
        assertThat(proof.proven()).isTrue();
        assertThat(proof.value()).isLessThanOrEqualTo(page.value() + 1e-6);
        assertThat(proof.ahead()).hasSameSizeAs(page.ahead());
    }
}
