package shimwright.mechanics.joints;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.worksheet.Worksheet;

/** Bad input comes back with a sentence. */
class RefusalsTest {
    private record Bad(String sheet, String inputs, String sentence) {}

    private static final List<Bad> ALL = Binding.lines("refusals.txt").stream()
            .map(line -> line.split("\\s*\\|\\s*", -1))
            .map(parts -> new Bad(parts[0], parts[1], parts[2].strip()))
            .toList();

    @Test
    void everySheetHasFiveOrMore() {
        var counts = ALL.stream().collect(Collectors.groupingBy(Bad::sheet, Collectors.counting()));
        assertThat(counts.keySet())
                .containsExactlyInAnyOrderElementsOf(
                        Sheets.MINE.stream().map(Worksheet::name).toList());
        assertThat(counts.values()).allMatch(count -> count >= 5);
    }

    @TestFactory
    Stream<DynamicTest> isRefused() {
        return ALL.stream()
                .map(bad -> DynamicTest.dynamicTest(bad.sheet() + " " + bad.inputs(), () -> {
                    List<Refusal> refusals =
                            Sheets.ask(bad.sheet(), Sheets.typed(bad.inputs())).refusals();
                    assertThat(refusals).isNotEmpty();
                    assertThat(refusals.stream().map(Refusal::sentence).collect(Collectors.joining(" ")))
                            .contains(bad.sentence());
                }));
    }

    @Test
    void allFaultsOfAJointComeBackAtOnce() {
        List<Refusal> refusals = Sheets.ask(
                        "tightening",
                        Sheets.typed(
                                "diameter=10 mm; strengthClass=7; scatter=0.1; tighteningFactor=2; serviceLoad=1 kN"))
                .refusals();
        assertThat(refusals)
                .extracting(Refusal::place)
                .contains("pitch", "strengthClass", "torque", "scatter", "loadShare");
    }
}
