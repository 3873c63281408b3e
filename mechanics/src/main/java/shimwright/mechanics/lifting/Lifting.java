package shimwright.mechanics.lifting;

import java.util.ArrayList;
import java.util.List;
import shimwright.mechanics.lifting.LiftingCase.Constants;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Worksheet;

/** Worksheet {@code lifting}. */
public final class Lifting {
    private static final String NIOSH = "NIOSH revised lifting equation, Applications Manual 94-110";

    static final Worksheet<LiftingCase, LiftingResult> SHEET = new Worksheet<>(
            "lifting",
            "Lifting by hand",
            "Mass that one person may lift, from reach, height, travel, twist and grip, and whether a hoist is needed.",
            List.of(NIOSH),
            LiftingCase.class,
            LiftingResult.class,
            Lifting::work);

    /** The worksheets of this topic. */
    public static final List<Worksheet<?, ?>> ALL = List.of(SHEET);

    private Lifting() {}

    /**
     * RWL = LC · HM · VM · DM · AM · FM · CM; metric LC 23 kg, HM 25/H, VM 1 − 0.003 |V − 75|, DM 0.82 + 4.5/D, AM 1 −
     * 0.0032 A.
     *
     * @param c mass in kg, lengths in m, twist in rad, multipliers without unit
     * @return mass in kg; refused: hands that end above or below reach, a frequency multiplier of 0
     */
    public static Outcome<Worked<LiftingResult>> work(LiftingCase c) {
        List<Refusal> refusals = new ArrayList<>();
        if (c.frequency() == 0) {
            refusals.add(new Refusal("frequency", "at this frequency nothing is lifted by hand", "Use a hoist"));
        }
        if (c.travel() > Math.max(c.height(), 1.75 - c.height()) + 1e-9) {
            refusals.add(new Refusal(
                    "travel", "the hands would end below the floor or above 175 cm", "Look at height and travel"));
        }
        return refusals.isEmpty() ? Outcome.ok(lifted(c)) : Outcome.refused(refusals);
    }

    private static Worked<LiftingResult> lifted(LiftingCase c) {
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
        return w.worked(new LiftingResult(limit, index, hoist));
    }
}
