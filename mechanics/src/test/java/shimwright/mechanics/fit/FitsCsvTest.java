package shimwright.mechanics.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import shimwright.mechanics.reference.Table;

/** Every row of the published checks on fits, each to its own tolerance; the source stands in the row. */
class FitsCsvTest {
    /** Rows that no worksheet answers, with the reason. */
    private static Map<String, String> listed() {
        return Table.read("../fit/fits-listed.csv").rows().stream()
                .collect(Collectors.toMap(row -> row.text("id"), row -> row.text("reason")));
    }

    @TestFactory
    Stream<DynamicTest> everyPublishedValueIsMet() {
        Map<String, String> listed = listed();
        return CheckRow.all().stream()
                .filter(row -> !listed.containsKey(row.id()))
                .map(row -> DynamicTest.dynamicTest(row.id() + " " + row.quantity(), () -> met(row)));
    }

    private static void met(CheckRow row) {
        double value = Bindings.value(row);
        double deviation = value - row.expected();
        System.out.printf(
                Locale.ROOT,
                "%s deviation %.3g %s, allowed %s: %s%n",
                row.id(),
                deviation,
                row.unit(),
                row.tolerance(),
                row.source());
        double dust = 1e-9 * Math.max(1, Math.abs(row.expected()));
        assertThat(value)
                .as("%s %s %s: %s", row.id(), row.quantity(), row.inputs(), row.source())
                .isCloseTo(row.expected(), within(row.tolerance() + dust));
    }

    @Test
    void aListedRowIsReallyThereAndReallyUnanswered() {
        List<CheckRow> rows = CheckRow.all();
        assertThat(rows).extracting(CheckRow::id).containsAll(listed().keySet());
        assertThat(rows.stream().filter(row -> listed().containsKey(row.id()))).noneMatch(Bindings::has);
    }
}
