package shimwright.mechanics.joints;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * One published value.
 *
 * @param id its id
 * @param quantity in words
 * @param inputs by name, as printed, without remarks
 * @param expected as printed
 * @param unit of it
 * @param tolerance {@code abs:x}, {@code rel:x} or {@code exact}
 * @param source where it stands
 */
record JointRow(
        String id,
        String quantity,
        Map<String, String> inputs,
        String expected,
        String unit,
        String tolerance,
        String source) {

    static Path file() {
        return Path.of(System.getProperty("shimwright.root", "."), "..", "shared", "checks", "joints.csv");
    }

    static List<JointRow> all() throws IOException {
        List<JointRow> rows = new ArrayList<>();
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (Reader reader = Files.newBufferedReader(file(), StandardCharsets.UTF_8)) {
            for (CSVRecord row : format.parse(reader)) {
                rows.add(new JointRow(
                        row.get("id"),
                        row.get("quantity"),
                        inputs(row.get("inputs")),
                        row.get("expected"),
                        row.get("unit"),
                        row.get("tolerance"),
                        row.get("source")));
            }
        }
        return rows;
    }

    private static Map<String, String> inputs(String text) {
        Map<String, String> inputs = new LinkedHashMap<>();
        for (String part : text.split(";\\s*", -1)) {
            String[] pair = part.split("=", 2);
            if (pair.length == 2) {
                inputs.put(
                        pair[0].strip(),
                        pair[1].replaceAll("\\(.*\\)| coarse| abs", "")
                                .replace('|', ' ')
                                .strip());
            }
        }
        if (inputs.containsKey("order")) {
            inputs.computeIfPresent("order", (key, order) -> order.replace('-', ' '));
        }
        return inputs;
    }

    /** How far a number may lie from the printed one, in the row's unit. */
    double allowed() {
        double share = Double.parseDouble(tolerance.substring(tolerance.indexOf(':') + 1));
        return tolerance.startsWith("rel:") ? share * Math.abs(Double.parseDouble(expected)) : share;
    }
}
