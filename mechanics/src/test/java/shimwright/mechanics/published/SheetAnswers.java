package shimwright.mechanics.published;

import static java.util.Objects.requireNonNull;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.registry.Registry;
import shimwright.mechanics.worksheet.Answer;

/** Asks worksheets as a person types and reads their answers by key, such as {@code hub.hoop} or {@code gears[0].ratio}. */
public final class SheetAnswers {
    private static final Pattern NEXT_KEY = Pattern.compile(";\\s*(?=[a-zA-Z][\\w.]*=)");

    private SheetAnswers() {}

    /** Inputs typed as {@code key=value; key=value}; a value may itself hold semicolons. */
    public static Map<String, String> typed(String inputs) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (String pair : NEXT_KEY.split(inputs, -1)) {
            String[] sides = pair.split("=", 2);
            if (sides.length == 2) {
                typed.put(sides[0].strip(), sides[1].strip());
            }
        }
        return typed;
    }

    /** What a worksheet says, or why not. */
    public static Outcome<Answer> ask(String sheet, Map<String, String> given) {
        return Registry.find(sheet)
                .orElseThrow(() -> new IllegalArgumentException("no worksheet " + sheet))
                .answer(given, UnitSystem.METRIC);
    }

    /** A result with its {@code value} in SI, {@code unit} and {@code text}, or a list of such. */
    static Object at(Answer answer, String path) {
        Object at = requireNonNull(answer.json().get("result"));
        for (String step : path.replace("]", "").split("[.\\[]", -1)) {
            at = requireNonNull(
                    at instanceof List<?> list ? list.get(Integer.parseInt(step)) : ((Map<?, ?>) at).get(step),
                    () -> "nothing at " + step + " of " + path);
        }
        return at;
    }

    /** The value of a result, a number in SI. */
    public static @Nullable Object value(Answer answer, String path) {
        return at(answer, path) instanceof Map<?, ?> result ? result.get("value") : at(answer, path);
    }

    /** A result that is a number, in SI. */
    public static double number(Answer answer, String path) {
        return ((Number) requireNonNull(value(answer, path), path)).doubleValue();
    }

    /** A result that is a number, in SI, of what must not be refused. */
    public static double number(String sheet, Map<String, String> given, String path) {
        return number(ask(sheet, given).orElseThrow(), path);
    }
}
