package shimwright.mechanics.joints;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.published.SheetAnswers;

/** Bad input comes back with a sentence, all faults at once; single faults stand in the topics' {@code refused.txt}. */
class RefusalsTest {
    @Test
    void allFaultsOfAJointComeBackAtOnce() {
        List<Refusal> refusals = SheetAnswers.ask(
                        "tightening",
                        SheetAnswers.typed(
                                "diameter=10 mm; strengthClass=7; scatter=0.1; tighteningFactor=2; serviceLoad=1 kN"))
                .refusals();
        assertThat(refusals)
                .extracting(Refusal::key)
                .contains("pitch", "strengthClass", "torque", "scatter", "loadShare");
    }
}
