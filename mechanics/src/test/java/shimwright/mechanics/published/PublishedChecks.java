package shimwright.mechanics.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DynamicTest;

/**
 * Published values against our functions, row by row. A binding parses the inputs of its row and calls our code; the
 * answer is compared in the row's unit within the row's tolerance. Every row must be bound or listed with the reason why it is
 * not; the deviations are written to {@code target/published-NAME.txt}.
 */
public final class PublishedChecks {
    /** One row of a file of published values. */
    public record Row(String id, String quantity, String inputs, double expected, double tolerance, String source) {
        /** The same row with other inputs. */
        Row with(String others) {
            return new Row(id, quantity, others, expected, tolerance, source);
        }

        /** The number behind {@code name=}. */
        public double number(String name) {
            Matcher matcher = Pattern.compile("(?:^|[;,] ?)" + Pattern.quote(name) + "=([-+0-9.eE]+)")
                    .matcher(inputs);
            if (!matcher.find()) {
                throw new IllegalArgumentException(id + " has no " + name);
            }
            return Double.parseDouble(matcher.group(1));
        }

        /** The numbers behind {@code name=}, up to the next semicolon. */
        public List<Double> numbers(String name) {
            Matcher matcher = Pattern.compile("(?:^|; ?)" + Pattern.quote(name) + "=([^;]*)")
                    .matcher(inputs);
            if (!matcher.find()) {
                throw new IllegalArgumentException(id + " has no " + name);
            }
            return Arrays.stream(matcher.group(1).split(",", -1))
                    .map(part -> Double.parseDouble(part.strip().split("\\s", -1)[0]))
                    .toList();
        }

        /** Every number of the inputs in order, signs included. */
        public List<Double> all() {
            List<Double> all = new ArrayList<>();
            Matcher matcher = Pattern.compile("(?<![A-Za-z0-9_.])[-+]?\\d+(?:\\.\\d+)?(?:[eE][-+]?\\d+)?")
                    .matcher(inputs);
            while (matcher.find()) {
                all.add(Double.valueOf(matcher.group()));
            }
            return all;
        }
    }

    private final String name;
    private final Map<String, Row> rows = new LinkedHashMap<>();
    private final Map<String, ToDoubleFunction<Row>> bindings = new LinkedHashMap<>();
    private final Map<String, String> listed = new LinkedHashMap<>();

    private PublishedChecks(String name) {
        this.name = name;
        for (CSVRecord line : PublishedFiles.rows(name)) {
            Row row = new Row(
                    line.get("id"),
                    line.get("quantity"),
                    line.get("inputs"),
                    Double.parseDouble(line.get("expected")),
                    Double.parseDouble(line.get("tolerance")),
                    line.get("source"));
            rows.put(row.id(), row);
        }
    }

    /** The rows of {@code published/checks/NAME.csv}. */
    public static PublishedChecks of(String name) {
        return new PublishedChecks(name);
    }

    /** Binds every row whose id matches. */
    public PublishedChecks bind(String idPattern, ToDoubleFunction<Row> ours) {
        Pattern pattern = Pattern.compile(idPattern);
        long bound = rows.keySet().stream()
                .filter(id -> pattern.matcher(id).matches())
                .peek(id -> bindings.putIfAbsent(id, ours))
                .count();
        if (bound == 0) {
            throw new IllegalArgumentException("no row " + idPattern);
        }
        return this;
    }

    /** Names a row that cannot be met, with the reason. */
    public PublishedChecks listed(String id, String reason) {
        if (!rows.containsKey(id) || reason.isBlank()) {
            throw new IllegalArgumentException("listed " + id);
        }
        listed.put(id, reason);
        return this;
    }

    /** The bound rows as they are asked, each with its inputs as one text. */
    List<TypedRow> typed() {
        List<TypedRow> typed = new ArrayList<>();
        bindings.forEach((id, ours) -> {
            Row row = Objects.requireNonNull(rows.get(id));
            typed.add(new TypedRow(
                    id,
                    row.inputs() + " " + row.quantity(),
                    String.valueOf(row.expected()),
                    Map.of("inputs", row.inputs()),
                    given -> OptionalDouble.of(ours.applyAsDouble(row.with(given.getOrDefault("inputs", ""))))));
        });
        return typed;
    }

    /** One test per bound row, and one that every row is accounted for. */
    public Stream<DynamicTest> tests() {
        TreeSet<String> open = new TreeSet<>(rows.keySet());
        open.removeAll(bindings.keySet());
        open.removeAll(listed.keySet());
        List<String> report = new ArrayList<>();
        listed.forEach((id, reason) -> report.add(id + "\tlisted\t" + reason));
        List<DynamicTest> tests = new ArrayList<>();
        bindings.forEach((id, ours) -> tests.add(DynamicTest.dynamicTest(id, () -> check(rows.get(id), ours, report))));
        tests.add(DynamicTest.dynamicTest("every row is bound or named", () -> {
            Files.createDirectories(Path.of("target"));
            Files.write(Path.of("target", "published-" + name + ".txt"), report);
            assertThat(open).isEmpty();
        }));
        return tests.stream();
    }

    private static void check(@Nullable Row row, ToDoubleFunction<Row> ours, List<String> report) {
        if (row == null) {
            throw new IllegalStateException("row vanished");
        }
        double value = ours.applyAsDouble(row);
        double deviation = value - row.expected();
        report.add(row.id() + "\t" + row.source() + "\texpected " + row.expected() + "\tours " + value + "\tdeviation "
                + deviation);
        assertThat(Math.abs(deviation))
                .as("%s, %s: expected %s, ours %s", row.quantity(), row.source(), row.expected(), value)
                .isLessThanOrEqualTo(row.tolerance() + 1e-12 * Math.abs(row.expected()));
    }
}
