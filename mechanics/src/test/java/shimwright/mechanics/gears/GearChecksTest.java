package shimwright.mechanics.gears;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import shimwright.mechanics.published.PublishedFiles;

/**
 * Every row of {@code published/checks/gears.csv} against the worksheet that answers it. The source of each value stands
 * in the row and is printed. {@code bindings.txt} says which worksheet, inputs and output; {@code listed.txt} names the
 * rows that are not met, with the reason.
 */
class GearChecksTest {
    record Binding(String sheet, String inputs, String output, String unit) {}

    @TestFactory
    Stream<DynamicTest> everyRowIsMetOrListed() {
        Map<String, Binding> bindings = bindings();
        Map<String, String> listed = listed();
        List<DynamicTest> tests = new ArrayList<>();
        for (CSVRecord row : PublishedFiles.rows("gears")) {
            String id = row.get("id");
            String name = id + " " + row.get("quantity");
            if (!listed.containsKey(id)) {
                tests.add(DynamicTest.dynamicTest(name, () -> check(row, bindings.get(id))));
            }
        }
        return tests.stream();
    }

    private static void check(CSVRecord row, @Nullable Binding binding) {
        String id = row.get("id");
        assertThat(binding).as(id + " has neither a binding nor a reason").isNotNull();
        Binding bound = Objects.requireNonNull(binding);
        double expected = Double.parseDouble(row.get("expected"));
        double tolerance = Double.parseDouble(row.get("tolerance"));
        String unit = bound.unit().isEmpty() ? row.get("unit") : bound.unit();
        double found = SheetCalls.in(SheetCalls.number(bound.sheet(), bound.inputs(), bound.output()), unit);
        System.out.printf(
                "%s  %s.%s = %.9g %s, published %s, deviation %.2g (allowed %s)  [%s; %s]%n",
                id,
                bound.sheet(),
                bound.output(),
                found,
                row.get("unit"),
                row.get("expected"),
                found - expected,
                row.get("tolerance"),
                row.get("source"),
                row.get("origin"));
        assertThat(Math.abs(found - expected))
                .as("%s: %s against %s, source %s", id, found, expected, row.get("source"))
                .isLessThanOrEqualTo(tolerance + 1e-12 * Math.abs(expected));
    }

    static Map<String, Binding> bindings() {
        Map<String, Binding> bindings = new LinkedHashMap<>();
        for (String line : SheetCalls.resource("/gears/bindings.txt")) {
            String[] parts = line.split("\\s*::\\s*", -1);
            Binding old = bindings.put(
                    parts[0].strip(),
                    new Binding(parts[1], parts[2], parts[3], parts.length > 4 ? parts[4].strip() : ""));
            assertThat(old).as("bound twice: " + parts[0]).isNull();
        }
        return bindings;
    }

    private static Map<String, String> listed() {
        Map<String, String> listed = new LinkedHashMap<>();
        for (String line : SheetCalls.resource("/gears/listed.txt")) {
            String[] parts = line.split("\\s*::\\s*", 2);
            assertThat(parts).as("no reason given: " + line).hasSize(2);
            listed.put(parts[0].strip(), parts[1]);
        }
        return listed;
    }
}
