package shimwright.mechanics.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.registry.Registry;
import shimwright.mechanics.worksheet.Answer;
import shimwright.mechanics.worksheet.Help;
import shimwright.mechanics.worksheet.Worksheet;

/** What every worksheet of fits keeps. */
class FitsTest {
    static List<Worksheet<?, ?>> sheets() {
        return FitSheets.ALL;
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void itsExampleIsAnsweredInBothSystemsWithWorkingAndHelp(Worksheet<?, ?> sheet) {
        for (UnitSystem system : UnitSystem.values()) {
            Answer answer = sheet.answer(sheet.example(), system).orElseThrow();
            assertThat(answer.working()).isNotEmpty().allMatch(line -> Double.isFinite(line.value()));
            assertThat(answer.cautions()).isNotEmpty();
            assertThat(answer.text()).doesNotContain("NaN", "Infinity");
            assertThat(answer.json()).containsKeys("result", "working");
            assertThat(Help.text(sheet, system)).contains("Example", "Sources");
        }
        assertThat(Registry.find(sheet.name())).contains(sheet);
    }

    @Test
    void materialsAndCeilingsNameTheirSources() {
        assertThat(Material.values()).allMatch(material -> !material.source().isBlank());
        assertThat(HeatedPart.values())
                .allMatch(part -> !part.source().isBlank())
                .allMatch(part -> part.ceiling() > 330);
        assertThat(Material.values())
                .allMatch(m -> m.data().coldExpansion() < m.data().expansion());
    }
}
