package shimwright.mechanics.lifting;

import java.util.ArrayList;
import java.util.List;
import shimwright.mechanics.lifting.Lifting.Case.Constants;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** Worksheet {@code lifting}. */
public final class Lifting {
    private static final String NIOSH = "NIOSH revised lifting equation, Applications Manual 94-110";

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "lifting",
            "Lifting by hand",
            "Mass that one person may lift, from reach, height, travel, twist and grip, and whether a hoist is needed.",
            List.of(NIOSH),
            Case.class,
            Result.class,
            Lifting::work);

    private Lifting() {}

    /** One lift by one person. */
    public record Case(
            @Input(kind = Kind.MASS, meaning = "what is lifted", min = 0.1, max = 1000, example = "45 kg")
            double mass,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "hands before the middle of the ankles",
                    unit = "cm",
                    min = 0.1,
                    max = 0.63,
                    example = "30 cm")
            double reach,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "height of the hands at the start",
                    unit = "cm",
                    min = 0,
                    max = 1.75,
                    example = "75 cm")
            double height,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "travel up or down",
                    unit = "cm",
                    min = 0,
                    max = 1.75,
                    example = "25 cm")
            double travel,

            @Input(kind = Kind.ANGLE, meaning = "twist of the body", orElse = "0°", min = 0, max = 2.3563)
            double twist,

            @Input(meaning = "frequency multiplier; 1 for a lift now and then", orElse = "1", min = 0, max = 1)
            double frequency,

            @Input(meaning = "grip: 1 with handles, 0.95 fair, 0.9 poor", orElse = "0.9", min = 0.9, max = 1)
            double grip,

            @Input(meaning = "which of the two printed sets of constants", orElse = "metric")
            Constants constants) {

        /** The guide prints both; they differ by rounding. */
        public enum Constants {
            METRIC,
            US
        }
    }

    /** What the guide allows. */
    public record Result(
            @Output(kind = Kind.MASS, meaning = "recommended limit by hand", decimals = 1)
            double limit,

            @Output(meaning = "lifting index, mass over limit", decimals = 2)
            double index,

            @Output(meaning = "hoist needed") boolean hoist) {}

    /**
     * RWL = LC · HM · VM · DM · AM · FM · CM; metric LC 23 kg, HM 25/H, VM 1 − 0.003 |V − 75|, DM 0.82 + 4.5/D, AM 1 −
     * 0.0032 A.
     *
     * @param c mass in kg, lengths in m, twist in rad, multipliers without unit
     * @return mass in kg; refused: hands that end above or below reach, a frequency multiplier of 0
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = new ArrayList<>();
        if (c.frequency() == 0) {
            refusals.add(Refusal.of("frequency", "at this frequency nothing is lifted by hand", "Use a hoist"));
        }
        if (c.travel() > Math.max(c.height(), 1.75 - c.height()) + 1e-9) {
            refusals.add(Refusal.of(
                    "travel", "the hands would end below the floor or above 175 cm", "Look at height and travel"));
        }
        return refusals.isEmpty() ? Outcome.ok(lifted(c)) : Outcome.refused(refusals);
    }

    private static Worked<Result> lifted(Case c) {
        Working w = new Working();
        boolean us = c.constants() == Constants.US;
        double unit = us ? Units.IN.factor() : 0.01;
        double reach = Math.max(us ? 10 : 25, c.reach() / unit);
        double travel = Math.max(us ? 10 : 25, c.travel() / unit);
        double height = c.height() / unit;
        double constant = us ? 51 * Units.POUND_MASS.factor() : 23;
        double h = w.line("HM", us ? "10/H" : "25/H", (us ? 10 : 25) / reach, Kind.NUMBER, NIOSH);
        double v = w.line(
                "VM",
                us ? "1 − 0.0075 |V − 30|" : "1 − 0.003 |V − 75|",
                us ? 1 - 0.0075 * Math.abs(height - 30) : 1 - 0.003 * Math.abs(height - 75),
                Kind.NUMBER,
                NIOSH);
        double d = w.line(
                "DM", us ? "0.82 + 1.8/D" : "0.82 + 4.5/D", 0.82 + (us ? 1.8 : 4.5) / travel, Kind.NUMBER, NIOSH);
        double a = w.line("AM", "1 − 0.0032 A", 1 - 0.0032 * Math.toDegrees(c.twist()), Kind.NUMBER, NIOSH);
        double limit = w.line(
                "limit",
                "constant × HM × VM × DM × AM × FM × CM",
                constant * h * v * d * a * c.frequency() * c.grip(),
                Kind.MASS,
                NIOSH);
        double index = w.line("index", "mass/limit", c.mass() / limit, Kind.NUMBER, NIOSH);
        boolean hoist = index > 1;
        if (hoist) {
            w.caution("Too heavy for one person here: hoist with a rated sling, or two people and a shorter reach.");
        }
        w.caution(
                "Keep feet and fingers out from under; support the case before the last bolt leaves it. Local rules and "
                        + "your own back come first.");
        return w.worked(new Result(limit, index, hoist));
    }
}
