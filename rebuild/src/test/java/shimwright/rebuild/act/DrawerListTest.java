package shimwright.rebuild.act;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.UnitSystem;

class DrawerListTest {
    @Test
    void aLineOfPastedTextIsOneRefusalAndNotOneAWord() {
        String pasted = "d80-01 SH80 " + "spider pin diameter ".repeat(2_000) + "\nd80-02 SH80 1.00 1.00 1.01";
        assertThat(DrawerList.read(pasted, "", UnitSystem.METRIC).refusals())
                .extracting(Refusal::place, Refusal::fact)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("line 1", "6000 words behind the tag are no piece"));
    }

    @Test
    void asManyReadingsAsAMicrometerGivesAreTaken() {
        String line = "d80-01 SH80" + " 1.00".repeat(12);
        assertThat(DrawerList.read(line, "", UnitSystem.METRIC)
                        .orElseThrow()
                        .get(0)
                        .readings())
                .hasSize(12);
    }
}
