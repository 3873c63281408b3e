package shimwright.mechanics.fit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import shimwright.mechanics.published.PublishedFiles;

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
        return PublishedFiles.rows("fits").stream().map(CheckRow::of).toList();
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

    /** The same row with other inputs. */
    CheckRow with(Map<String, String> others) {
        return new CheckRow(id, quantity, others, expected, unit, tolerance, source);
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
