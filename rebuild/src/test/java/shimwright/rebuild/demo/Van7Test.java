package shimwright.rebuild.demo;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The demo job, invented scenario: it plays from intake to hand-back without one refusal. */
class Van7Test {
    @Test
    void isPlayedThroughTheRulesToItsHandBack() {
        DemoWorkbench bench = Van7.handedBack();
        assertThat(bench.job().closed()).isTrue();
        assertThat(bench.job().stepsDone()).hasSize(95);
    }
}
