package shimwright.mechanics.joints;

import static java.util.Objects.requireNonNull;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import shimwright.mechanics.lifting.LiftingSheets;
import shimwright.mechanics.oil.OilSheets;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.registry.Registry;
import shimwright.mechanics.seal.SealSheets;
import shimwright.mechanics.spring.SpringSheets;
import shimwright.mechanics.thread.ThreadSheets;
import shimwright.mechanics.worksheet.Answer;
import shimwright.mechanics.worksheet.Worksheet;

/** Asks worksheets as a person would. */
final class JointSheets {
    static final List<Worksheet<?, ?>> MINE = Stream.of(
                    ThreadSheets.ALL, SpringSheets.ALL, SealSheets.ALL, OilSheets.ALL, LiftingSheets.ALL)
            .<Worksheet<?, ?>>flatMap(List::stream)
            .toList();

    private JointSheets() {}

    /** Inputs typed as {@code key=value; key=value}; a value may itself hold semicolons. */
    static Map<String, String> typed(String inputs) {
        Map<String, String> given = new LinkedHashMap<>();
        for (String pair : inputs.split(";\\s*(?=[a-zA-Z]+=)", -1)) {
            String[] parts = pair.split("=", 2);
            if (parts.length == 2) {
                given.put(parts[0].strip(), parts[1].strip());
            }
        }
        return given;
    }

    static Outcome<Answer> ask(String sheet, Map<String, String> given) {
        return Registry.find(sheet).orElseThrow().answer(given, UnitSystem.METRIC);
    }

    static Answer answer(String sheet, String inputs) {
        return ask(sheet, typed(inputs)).orElseThrow();
    }

    static Answer answer(String sheet, String format, Object... values) {
        return answer(sheet, String.format(Locale.ROOT, format, values));
    }

    /** A result by path such as {@code stages.0.share}, SI. */
    static Object result(Answer answer, String path) {
        Object at = requireNonNull(answer.json().get("result"));
        for (String step : path.split("\\.", -1)) {
            at = at instanceof List<?> list
                    ? list.get(Integer.parseInt(step))
                    : requireNonNull(((Map<?, ?>) at).get(step), path);
        }
        return requireNonNull(((Map<?, ?>) at).get("value"), path);
    }

    static double number(Answer answer, String path) {
        return (Double) result(answer, path);
    }
}
