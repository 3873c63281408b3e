package shimwright.mechanics.statistics;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import shimwright.mechanics.chart.ChartSheets;
import shimwright.mechanics.chart.Individuals;
import shimwright.mechanics.history.HistorySheets;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.registry.Registry;
import shimwright.mechanics.study.StudySheets;
import shimwright.mechanics.worksheet.Answer;
import shimwright.mechanics.worksheet.Worksheet;

/** What holds for each of the statistics sheets. */
class StatisticsSheetsTest {
    private record Bad(String sheet, String inputs, String sentence) {}

    private static final List<Worksheet<?, ?>> SHEETS = Stream.of(StudySheets.ALL, ChartSheets.ALL, HistorySheets.ALL)
            .<Worksheet<?, ?>>flatMap(List::stream)
            .toList();

    private static List<Bad> bad() throws IOException {
        try (InputStream file = requireNonNull(StatisticsSheetsTest.class.getResourceAsStream("refusals.txt"))) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .map(line -> line.split("\\s*\\|\\s*", -1))
                    .map(parts -> new Bad(parts[0], parts[1], parts[2].strip()))
                    .toList();
        }
    }

    private static Map<String, String> typed(String inputs) {
        Map<String, String> given = new LinkedHashMap<>();
        for (String pair : inputs.split("\\s*&\\s*", -1)) {
            String[] parts = pair.split("=", 2);
            given.put(parts[0], parts[1]);
        }
        return given;
    }

    @TestFactory
    Stream<DynamicTest> badInputIsRefusedInASentence() throws IOException {
        return bad().stream()
                .map(bad -> DynamicTest.dynamicTest(bad.sheet() + " " + bad.inputs(), () -> {
                    List<Refusal> refusals = Registry.find(bad.sheet())
                            .orElseThrow()
                            .answer(typed(bad.inputs()), UnitSystem.METRIC)
                            .refusals();
                    assertThat(refusals.stream()
                                    .map(refusal ->
                                            refusal.placed("", refusal.key()).sentence())
                                    .collect(Collectors.joining(" ")))
                            .contains(bad.sentence());
                }));
    }

    @Test
    void everySheetHasFiveOrMore() throws IOException {
        Map<String, Long> counts = bad().stream().collect(Collectors.groupingBy(Bad::sheet, Collectors.counting()));
        assertThat(counts.keySet())
                .containsExactlyInAnyOrderElementsOf(
                        SHEETS.stream().map(Worksheet::name).toList());
        assertThat(counts.values()).allMatch(count -> count >= 5);
    }

    @TestFactory
    Stream<DynamicTest> theExampleIsAnsweredWithWorkingAndCautions() {
        return SHEETS.stream()
                .map(sheet -> DynamicTest.dynamicTest(sheet.name(), () -> {
                    Answer answer =
                            sheet.answer(sheet.example(), UnitSystem.METRIC).orElseThrow();
                    assertThat(answer.working()).isNotEmpty();
                    assertThat(answer.cautions().size()
                                    + answer.sheet().sources().size())
                            .isGreaterThan(1);
                    assertThat(answer.budgets()).isEmpty();
                    assertThat(answer.text()).doesNotContain("NaN", "Infinity", "null");
                }));
    }

    /** Millimetres or inches, the same charts. */
    @Test
    void aChartOfAnyKindIsTheSheetsChart() {
        List<Double> values = List.of(0.001, 0.003, 0.002, 0.004);
        Individuals.Result sheet = Individuals.work(new Individuals.Case(values, 0, List.of(), 0.95))
                .orElseThrow()
                .result();
        Individuals.Result torque =
                Individuals.of(values, Kind.TORQUE).orElseThrow().result();
        assertThat(torque.upper()).isEqualTo(sheet.upper());
        assertThat(torque.rangeLimit()).isEqualTo(sheet.rangeLimit());
        assertThat(Individuals.drawn(values, Kind.TORQUE, torque)).hasSize(2);
        assertThat(Individuals.of(values.subList(0, 3), Kind.TORQUE)
                        .refusals()
                        .get(0)
                        .sentence())
                .contains("3 values, a chart wants 4");
    }

    @Test
    void unitsDoNotMatter() {
        Map<String, String> mm = Map.of("values", "25.4 50.8 25.4 76.2 50.8 mm");
        Map<String, String> inch = Map.of("values", "1 2 1 3 2 in");
        for (String name : List.of("individuals-chart", "ewma-chart", "cusum-chart")) {
            Worksheet<?, ?> sheet = Registry.find(name).orElseThrow();
            Answer one = sheet.answer(mm, UnitSystem.METRIC).orElseThrow();
            Answer two = sheet.answer(inch, UnitSystem.METRIC).orElseThrow();
            for (int i = 0; i < one.working().size(); i++) {
                double value = one.working().get(i).value();
                assertThat(two.working().get(i).value()).isCloseTo(value, within(1e-12));
            }
        }
    }
}
