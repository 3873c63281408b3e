package shimwright.mechanics.tooth;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code involute}: angle to involute and back. */
public final class InvoluteSheet {
    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "involute",
            "Involute",
            "The involute of a pressure angle, or the pressure angle of an involute.",
            List.of("ISO 21771-1:2022, involute function"),
            Case.class,
            Result.class,
            InvoluteSheet::work);

    private InvoluteSheet() {}

    /** One of the two. */
    public record Case(
            @Input(kind = Kind.ANGLE, meaning = "pressure angle", min = 0, max = 1.57, example = "20°") @Nullable
            Double angle,

            @Input(meaning = "involute", min = 0, max = 1000) @Nullable
            Double involute) {}

    /** Both. */
    public record Result(
            @Output(meaning = "involute", decimals = 10) double involute,

            @Output(kind = Kind.ANGLE, meaning = "pressure angle", decimals = 8)
            double angle) {}

    /**
     * Involute of an angle, or the angle of an involute.
     *
     * @param c angle in radians, 0 to 1.57, or involute, 0 to 1000; refused unless exactly one is given. Source: ISO
     *     21771-1:2022, involute function
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> faults = new ArrayList<>();
        ExactlyOne.one(faults, List.of("angle", "involute"), c.angle(), c.involute());
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        Working w = new Working();
        Double angle = c.angle();
        Double involute = c.involute();
        if (angle != null) {
            double value = w.line("involute", "tan(angle) − angle", Involute.of(angle), Kind.NUMBER, Toothing.SOURCE);
            return Outcome.ok(w.worked(new Result(value, angle)));
        }
        double given = involute == null ? 0 : involute;
        double found =
                w.line("angle", "tan(angle) − angle = involute", Involute.inverse(given), Kind.ANGLE, Toothing.SOURCE);
        return Outcome.ok(w.worked(new Result(given, found)));
    }
}
