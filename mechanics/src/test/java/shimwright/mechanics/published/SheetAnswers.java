package shimwright.mechanics.published;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Map;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.registry.Registry;
import shimwright.mechanics.worksheet.Answer;

/** Asks worksheets as a person types and reads their answers by key, such as {@code hub.hoop} or {@code gears[0].ratio}. */
public final class SheetAnswers {
    private SheetAnswers() {}

    /** What a worksheet says, or why not. */
    public static Outcome<Answer> ask(String sheet, Map<String, String> given) {
        return Registry.find(sheet)
                .orElseThrow(() -> new IllegalArgumentException("no worksheet " + sheet))
                .answer(given, UnitSystem.METRIC);
    }

    /** A result with its {@code value} in SI, {@code unit} and {@code text}. */
    public static Map<?, ?> at(Answer answer, String path) {
        Object at = requireNonNull(answer.json().get("result"));
        for (String step : path.replace("]", "").split("[.\\[]", -1)) {
            at = requireNonNull(
                    at instanceof List<?> list ? list.get(Integer.parseInt(step)) : ((Map<?, ?>) at).get(step),
                    () -> "nothing at " + step + " of " + path);
        }
        return (Map<?, ?>) at;
    }

    /** A result that is a number, in SI. */
    public static double number(Answer answer, String path) {
        return ((Number) requireNonNull(at(answer, path).get("value"), path)).doubleValue();
    }

    /** A result that is a number, in SI, of what must not be refused. */
    public static double number(String sheet, Map<String, String> given, String path) {
        return number(ask(sheet, given).orElseThrow(), path);
    }
}
