package shimwright.mechanics.gears;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.published.SheetAnswers;
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
        return SheetAnswers.ask(sheet, inputs(inputs));
    }

    static Answer answer(String sheet, String inputs) {
        return ask(sheet, inputs).orElseThrow();
    }

    /** The SI number at {@code name}, {@code record.name} or {@code list[2].name}. */
    static double number(Answer answer, String path) {
        return SheetAnswers.number(answer, path);
    }

    static @Nullable Object at(Answer answer, String path) {
        return SheetAnswers.value(answer, path);
    }

    static double number(String sheet, String inputs, String path) {
        return number(answer(sheet, inputs), path);
    }
}
