package shimwright.mechanics.fit;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Assumptions;

/** A row of the published checks: what was given, what must come out, how closely, and who says so. */
record CheckRow(
        String id,
        String quantity,
        Map<String, String> inputs,
        double expected,
        String unit,
        double tolerance,
        String source) {

    static List<CheckRow> all() {
        Path file = Path.of(System.getProperty("shimwright.root", "."), "..", "shared", "checks", "fits.csv");
        Assumptions.assumeTrue(Files.exists(file), "published checks not found at " + file.normalize());
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8);
                CSVParser parser = CSVParser.parse(reader, format)) {
            return parser.stream().map(CheckRow::of).toList();
        } catch (IOException unreadable) {
            throw new IllegalStateException(unreadable);
        }
    }

    private static CheckRow of(CSVRecord row) {
        Map<String, String> inputs = new LinkedHashMap<>();
        for (String pair : row.get("inputs").split(";")) {
            String[] sides = pair.split("=", 2);
            inputs.putIfAbsent(sides[0].strip(), sides[sides.length - 1].strip());
        }
        return new CheckRow(
                row.get("id"),
                row.get("quantity"),
                inputs,
                Double.parseDouble(row.get("expected")),
                row.get("unit"),
                Double.parseDouble(row.get("tolerance")),
                row.get("source"));
    }

    boolean has(String key) {
        return inputs.containsKey(key);
    }

    /** The text of an input. */
    String text(String key) {
        String value = inputs.get(key);
        if (value == null) {
            throw new IllegalArgumentException(id + " has no input " + key + ", only " + inputs.keySet());
        }
        return value;
    }

    /** The leading number of an input, in its own unit. */
    double number(String key) {
        return Double.parseDouble(text(key).split("\\s")[0]);
    }
}
