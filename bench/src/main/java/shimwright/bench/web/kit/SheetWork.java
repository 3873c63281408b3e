package shimwright.bench.web.kit;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import shimwright.mechanics.measure.Sampling;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.worksheet.Answer;
import shimwright.mechanics.worksheet.Worksheet;

/** Answers of worksheets for pages and programs: at once where they take milliseconds, behind the page where they may take seconds. */
public final class SheetWork {
    /** So often a program waits for as long as a page does. */
    private static final int TIMES = 40;

    private final Behind<Asked, Outcome<Answer>> behind = new Behind<>("works out a sheet");

    private record Asked(String sheet, Map<String, ?> given, UnitSystem system, Optional<Sampling> sampling) {}

    /**
     * The answer, or empty while it is still worked out.
     *
     * @param given as {@link Worksheet#answer(Map, UnitSystem, Optional)} takes it
     */
    public Optional<Outcome<Answer>> answer(
            Worksheet<?, ?> sheet, Map<String, ?> given, UnitSystem system, Optional<Sampling> sampling) {
        if (!sheet.slow() && sampling.isEmpty()) {
            return Optional.of(sheet.answer(given, system, sampling));
        }
        Asked asked = new Asked(sheet.name(), given, system, sampling);
        return behind.of(asked.toString(), asked, () -> stopped(sheet, asked));
    }

    /** The answer for a program, which waits for some seconds; then refused with the advice to ask again. */
    public Outcome<Answer> waited(
            Worksheet<?, ?> sheet, Map<String, ?> given, UnitSystem system, Optional<Sampling> sampling) {
        for (int i = 0; i < TIMES; i++) {
            Optional<Outcome<Answer>> answer = answer(sheet, given, system, sampling);
            if (answer.isPresent()) {
                return answer.get();
            }
        }
        return Outcome.refused(
                Refusal.at(sheet.name(), "is still being worked out", "Ask for the same again in a moment"));
    }

    private static Outcome<Answer> stopped(Worksheet<?, ?> sheet, Asked asked) {
        try {
            return sheet.answer(asked.given(), asked.system(), asked.sampling());
        } catch (CancellationException late) {
            return Outcome.refused(Refusal.at(
                    sheet.name(),
                    "this takes longer than a page may have",
                    "Give less at a time, or use calc on the command line"));
        }
    }
}
