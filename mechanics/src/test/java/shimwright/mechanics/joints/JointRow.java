package shimwright.mechanics.joints;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shimwright.mechanics.published.PublishedFiles;

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

    static List<JointRow> all() {
        return PublishedFiles.rows("joints").stream()
                .map(row -> new JointRow(
                        row.get("id"),
                        row.get("quantity"),
                        inputs(row.get("inputs")),
                        row.get("expected"),
                        row.get("unit"),
                        row.get("tolerance"),
                        row.get("source")))
                .toList();
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
