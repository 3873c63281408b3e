package shimwright.bench.web.guard;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Refusal;

/** Memory that ran out, whatever it is wrapped in by whoever met it first. */
public final class Memory {
    /** The status of the sentence. */
    public static final int STATUS = 503;

    /** What is said. */
    public static final Refusal TOO_LITTLE = Refusal.at(
            "memory",
            "the program has too little for this page, and nothing was kept or lost by it",
            "Close other pages and try again, or start it with more memory");

    private static final int DEEPEST = 30;

    private Memory() {}

    /** Whether something failed because memory ran out; also a class that could not be made ready for that reason before. */
    public static boolean ranOut(@Nullable Throwable failed) {
        Throwable one = failed;
        for (int depth = 0; one != null && depth < DEEPEST; depth++) {
            String said = String.valueOf(one.getMessage());
            if (one instanceof OutOfMemoryError
                    || said.contains("OutOfMemoryError")
                    || said.toLowerCase(Locale.ROOT).contains("out of memory")) {
                return true;
            }
            one = one.getCause();
        }
        return false;
    }

    /** The sentence as a page that needs hardly any memory itself. */
    public static String page() {
        return RefusalAnswers.page(List.of(TOO_LITTLE));
    }
}
