package shimwright.mechanics.gears;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.registry.Registry;
import shimwright.mechanics.worksheet.Answer;
import shimwright.mechanics.worksheet.Worksheet;

/** Asks worksheets the way a person types and reads their numbers by path. */
final class SheetCalls {
    private SheetCalls() {}

    static Worksheet<?, ?> sheet(String name) {
        return Registry.find(name).orElseThrow(() -> new IllegalArgumentException("no worksheet " + name));
    }

    /** Inputs as {@code key=value | key=value}. */
    static Map<String, String> inputs(String text) {
        Map<String, String> inputs = new LinkedHashMap<>();
        for (String part : text.split("\\|", -1)) {
            int equals = part.indexOf('=');
            if (equals > 0) {
                inputs.put(
                        part.substring(0, equals).strip(),
                        part.substring(equals + 1).strip());
            }
        }
        return inputs;
    }

    static Outcome<Answer> ask(String sheet, String inputs) {
        return sheet(sheet).answer(inputs(inputs), UnitSystem.METRIC);
    }

    static Answer answer(String sheet, String inputs) {
        return ask(sheet, inputs).orElseThrow();
    }

    /** The SI number at {@code name}, {@code record.name} or {@code list[2].name}. */
    static double number(Answer answer, String path) {
        return ((Number) Objects.requireNonNull(at(answer, path))).doubleValue();
    }

    static @Nullable Object at(Answer answer, String path) {
        Object here = Objects.requireNonNull(answer.json().get("result"));
        for (String step : path.replace("]", "").split("[.\\[]", -1)) {
            Object next =
                    here instanceof List<?> list ? list.get(Integer.parseInt(step)) : ((Map<?, ?>) here).get(step);
            here = Objects.requireNonNull(next, "nothing at " + step + " of " + path);
        }
        return here instanceof Map<?, ?> map ? map.get("value") : here;
    }

    static double number(String sheet, String inputs, String path) {
        return number(answer(sheet, inputs), path);
    }

    static List<String> sentences(String sheet, String inputs) {
        return ask(sheet, inputs).refusals().stream().map(Refusal::sentence).toList();
    }

    /** A number in the unit written in a check file; units unknown to the house count as plain. */
    static double in(double si, String unit) {
        if (unit.startsWith("x")) {
            return si / Double.parseDouble(unit.substring(1));
        }
        return Units.findAny(unit).map(known -> known.fromSi(si)).orElse(si);
    }

    static List<String> resource(String name) {
        try (InputStream stream = Objects.requireNonNull(SheetCalls.class.getResourceAsStream(name), name);
                BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return reader.lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .toList();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
