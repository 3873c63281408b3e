package shimwright.mechanics.joints;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.MeasureUnit;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.registry.Registry;
import shimwright.mechanics.working.Line;
import shimwright.mechanics.worksheet.Answer;

/**
 * One line of {@code bindings.txt}.
 *
 * @param ids rows it answers
 * @param sheet worksheet, or {@code unit}
 * @param inputs as typed, with places for the row's values
 * @param result path, working line or kind
 */
record Binding(List<String> ids, String sheet, String inputs, String result) {
    private static final Map<String, String> UNITS = Map.of("-", "", "xD", "", "of target", "", "kpsi", "ksi");

    static List<String> lines(String file) {
        try (InputStream in = requireNonNull(Binding.class.getResourceAsStream(file), file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .toList();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    static List<Binding> all() {
        return lines("bindings.txt").stream()
                .map(line -> line.split("\\s*\\|\\s*", -1))
                .map(parts -> new Binding(List.of(parts[0].strip().split(" ")), parts[1], parts[2], parts[3].strip()))
                .toList();
    }

    /** What the worksheet says to a row: text for a text, else the number in the row's unit. */
    Object answer(JointRow row) {
        if (sheet.equals("unit")) {
            Kind kind = Kind.valueOf(result);
            double si = Quantities.parse(
                            filled(row), kind, UnitSystem.METRIC.display(kind).unit(), row.id())
                    .orElseThrow()
                    .si();
            return unit(row, kind).fromSi(si);
        }
        return answer(row, given(row));
    }

    /** What is typed for a row. */
    Map<String, String> given(JointRow row) {
        Map<String, String> given = new LinkedHashMap<>();
        for (String pair : filled(row).split(";\\s*(?=[a-zA-Z]+=)", -1)) {
            String[] parts = pair.split("=", 2);
            given.put(parts[0].strip(), parts[1].strip());
        }
        return given;
    }

    /** What the worksheet says to other inputs, as for a row. */
    Object answer(JointRow row, Map<String, String> given) {
        Answer answer = Registry.find(sheet)
                .orElseThrow()
                .answer(given, UnitSystem.METRIC)
                .orElseThrow();
        if (result.startsWith("working ")) {
            String symbol = result.substring("working ".length());
            Line line = answer.working().stream()
                    .filter(l -> l.symbol().equals(symbol))
                    .findFirst()
                    .orElseThrow();
            return unit(row, line.kind()).fromSi(line.value());
        }
        return number(answer, row);
    }

    private Object number(Answer answer, JointRow row) {
        String[] steps = result.split("\\s*/\\s*", -1);
        Object at = requireNonNull(answer.json().get("result"));
        for (String step : steps[0].split("\\.", -1)) {
            at = at instanceof List<?> list
                    ? list.get(Integer.parseInt(step))
                    : requireNonNull(((Map<?, ?>) at).get(step));
        }
        Map<?, ?> found = (Map<?, ?>) at;
        if (!(found.get("value") instanceof Double si)) {
            return String.valueOf(found.get("text"));
        }
        double value = si;
        for (String divisor : Arrays.asList(steps).subList(1, steps.length)) {
            value /= Double.parseDouble(divisor);
        }
        if (steps.length > 1) {
            return value;
        }
        String symbol = String.valueOf(found.get("unit"));
        Kind kind = symbol.isEmpty()
                ? Kind.NUMBER
                : Arrays.stream(Kind.values())
                        .filter(k -> k.siSymbol().equals(symbol) && k != Kind.TEMPERATURE_DIFFERENCE)
                        .filter(k -> Units.find(row.unit(), k).isPresent() || UNITS.containsKey(row.unit()))
                        .findFirst()
                        .orElseThrow();
        return unit(row, kind).fromSi(value);
    }

    private static MeasureUnit unit(JointRow row, Kind kind) {
        String symbol = UNITS.getOrDefault(row.unit(), row.unit());
        return Units.find(symbol, kind).orElseThrow(() -> new IllegalStateException(row.id() + ": " + row.unit()));
    }

    private String filled(JointRow row) {
        String text = inputs;
        for (Map.Entry<String, String> input : row.inputs().entrySet()) {
            text = text.replace("{" + input.getKey() + "}", input.getValue())
                    .replace("{" + input.getKey() + "#}", input.getValue().replaceAll("\\s.*", ""));
        }
        if (text.contains("{")) {
            throw new IllegalStateException(row.id() + " leaves open: " + text);
        }
        return text;
    }
}
