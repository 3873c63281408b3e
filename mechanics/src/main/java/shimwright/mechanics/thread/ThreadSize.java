package shimwright.mechanics.thread;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/** Which thread: the same three inputs on every sheet of this topic. */
public record ThreadSize(
        @Input(kind = Kind.LENGTH, meaning = "nominal major diameter", min = 0.001, max = 0.1, example = "10 mm")
        double diameter,

        @Input(kind = Kind.LENGTH, meaning = "pitch of a metric thread", min = 1e-4, max = 0.01, example = "1.5 mm")
        @Nullable
        Double pitch,

        @Input(meaning = "threads per inch of an inch thread", min = 3, max = 80) @Nullable
        Double perInch) {
    /** The form of the thread; refused as {@link ThreadForm#of} does. */
    Outcome<ThreadForm> form() {
        return ThreadForm.of(diameter, pitch, perInch);
    }
}
