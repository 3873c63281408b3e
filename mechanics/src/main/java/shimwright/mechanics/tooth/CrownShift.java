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

/** The worksheet {@code crown-shift}: the shim change that brings the backlash where it shall be, or what a change makes. */
public final class CrownShift {
    private static final String SOURCE = "common practice, no source: straight slopes";

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "crown-shift",
            "Crown wheel shim",
            "The shim change that brings the backlash where it is wanted, and the backlash a chosen shim will give.",
            List.of(SOURCE),
            Case.class,
            Result.class,
            CrownShift::work);

    private CrownShift() {}

    /** Lengths in metres; moves toward the mate are less backlash. */
    public record Case(
            @Input(
                    kind = Kind.LENGTH,
                    meaning = "backlash read, mean of the places",
                    min = 0,
                    max = 0.02,
                    example = "0.268 mm")
            double backlash,

            @Input(
                    meaning = "backlash lost per shift of the crown wheel, from two readings",
                    min = 0.05,
                    max = 5,
                    example = "0.858")
            double slope,

            @Input(kind = Kind.LENGTH, meaning = "backlash wanted", min = 0, max = 0.02, example = "0.15 mm") @Nullable
            Double wanted,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "change of the shim that pushes the crown toward the pinion, + thicker",
                    min = -0.01,
                    max = 0.01)
            @Nullable
            Double shimChange,

            @Input(
                    kind = Kind.LENGTH,
                    meaning =
                            "change of both side shims together since the reading, + thicker; half of it moves the crown back",
                    orElse = "0 mm",
                    min = -0.01,
                    max = 0.01)
            double packChange,

            @Input(
                    meaning = "backlash gained per shift of the pinion away from the crown axis",
                    orElse = "0",
                    min = 0,
                    max = 5)
            double pinionSlope,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "shift of the pinion since the reading, + away from the crown axis",
                    orElse = "0 mm",
                    min = -0.01,
                    max = 0.01)
            double pinionShift,

            @Input(kind = Kind.LENGTH, meaning = "smallest mean backlash allowed", min = 0, max = 0.02) @Nullable
            Double least,

            @Input(kind = Kind.LENGTH, meaning = "largest mean backlash allowed", min = 0, max = 0.02) @Nullable
            Double most) {}

    /** Lengths in metres. */
    public record Result(
            @Output(kind = Kind.LENGTH, meaning = "change of that shim, + thicker", decimals = 4)
            double shimChange,

            @Output(kind = Kind.LENGTH, meaning = "the same as an amount", decimals = 4)
            double amount,

            @Output(kind = Kind.LENGTH, meaning = "backlash then", decimals = 4)
            double backlash,

            @Output(kind = Kind.LENGTH, meaning = "change of backlash", decimals = 4)
            double change,

            @Output(meaning = "within the limits given") @Nullable
            String within) {}

    /**
     * Shim change for a wanted backlash, or backlash for a shim change.
     *
     * @param c the case; exactly one of wanted and shimChange. Crown moves toward the pinion by shimChange −
     *     packChange/2
     * @return refused where the limits are crossed or the result would be a negative backlash. Source: straight slopes
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> faults = new ArrayList<>();
        ExactlyOne.one(faults, List.of("wanted", "shimChange"), c.wanted(), c.shimChange());
        Double least = c.least();
        Double most = c.most();
        if (least != null && most != null && least > most) {
            faults.add(Refusal.of("least", "is more than most", "Turn the limits round"));
        }
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        Working w = new Working();
        double pinion = w.line(
                "by the pinion", "pinion slope × pinion shift", c.pinionSlope() * c.pinionShift(), Kind.LENGTH, SOURCE);
        Double wanted = c.wanted();
        Double given = c.shimChange();
        double change = given != null
                ? given
                : w.line(
                        "shim change",
                        "(backlash + by the pinion − wanted) / slope + pack change / 2",
                        (c.backlash() + pinion - (wanted == null ? 0 : wanted)) / c.slope() + c.packChange() / 2,
                        Kind.LENGTH,
                        SOURCE);
        double then = w.line(
                "backlash then",
                "backlash − slope × (shim change − pack change / 2) + by the pinion",
                c.backlash() - c.slope() * (change - c.packChange() / 2) + pinion,
                Kind.LENGTH,
                SOURCE);
        if (then < -1e-12) {
            return Outcome.refused(Refusal.of(
                    "shimChange",
                    "would leave no backlash at all, " + PinMeasurement.mm(then),
                    "Take a thinner shim there"));
        }
        w.caution("Read again after the change. The smallest place decides, not the mean.");
        if (c.pinionShift() != 0 && c.pinionSlope() == 0) {
            w.caution("The pinion was moved but its slope is 0: take it from bevel-slopes.");
        }
        String within = null;
        if (least != null || most != null) {
            boolean in = (least == null || then >= least) && (most == null || then <= most);
            within = in ? "yes" : "no";
        }
        return Outcome.ok(
                w.worked(new Result(change, Math.abs(change), Math.max(0, then), then - c.backlash(), within)));
    }
}
