package shimwright.mechanics.tooth;

import java.util.List;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code bevel-slopes}: what a shim does to the backlash of a bevel pair, by its geometry. */
public final class BevelSlopes {
    private static final String SOURCE = "cone geometry, common practice, no source";

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "bevel-slopes",
            "Backlash slopes of a bevel pair",
            "How much backlash a shift of the crown wheel or of the pinion makes, by the geometry of the pair.",
            List.of(SOURCE),
            Case.class,
            Result.class,
            BevelSlopes::work);

    private BevelSlopes() {}

    /** Angles in radians. */
    public record Case(
            @Input(meaning = "teeth of the pinion", min = 4, max = 200, example = "9")
            int pinionTeeth,

            @Input(meaning = "teeth of the crown wheel", min = 4, max = 300, example = "38")
            int crownTeeth,

            @Input(
                    kind = Kind.ANGLE,
                    meaning = "normal pressure angle",
                    orElse = "20°",
                    min = Toothing.LEAST_ANGLE,
                    max = Math.PI / 4)
            double pressureAngle,

            @Input(kind = Kind.ANGLE, meaning = "spiral angle", orElse = "0°", min = 0, max = Toothing.MOST_HELIX)
            double spiral,

            @Input(kind = Kind.ANGLE, meaning = "angle between the shafts", orElse = "90°", min = 0.5, max = 2.5)
            double shaftAngle) {}

    /** Angles in radians. */
    public record Result(
            @Output(meaning = "backlash per shift of the crown wheel along its axis", decimals = 4)
            double crown,

            @Output(meaning = "backlash per shift of the pinion along its axis", decimals = 4)
            double pinion,

            @Output(kind = Kind.ANGLE, meaning = "pitch cone half angle of the pinion")
            double pinionCone,

            @Output(kind = Kind.ANGLE, meaning = "pitch cone half angle of the crown wheel")
            double crownCone,

            @Output(meaning = "ratio") double ratio,

            @Output(meaning = "common factor of the tooth counts")
            int commonFactor) {}

    /**
     * Slopes of the backlash read square to the tooth.
     *
     * @param c the case, no offset between the axes; 2 × tan(pressure angle) × sin(cone)/cos(spiral)
     * @return refused where the teeth and shaft angle make no outside pair. Source: cone geometry
     */
    public static Outcome<Worked<Result>> work(Case c) {
        double below = (double) c.crownTeeth() / c.pinionTeeth() + Math.cos(c.shaftAngle());
        double cone = Math.atan2(Math.sin(c.shaftAngle()), below);
        double other = c.shaftAngle() - cone;
        if (!(below > 0) || other >= Math.PI / 2 || cone >= Math.PI / 2) {
            return Outcome.refused(Refusal.of(
                    "shaftAngle",
                    "these teeth make no outside pair at this angle",
                    "Look at the counts and the angle"));
        }
        Working w = new Working();
        double pinionCone = w.line(
                "pinion cone", "arctan(sin(shafts) / (crown/pinion teeth + cos(shafts)))", cone, Kind.ANGLE, SOURCE);
        double crownCone = w.line("crown cone", "shafts − pinion cone", other, Kind.ANGLE, SOURCE);
        double both = 2 * Math.tan(c.pressureAngle()) / Math.cos(c.spiral());
        double crown = w.line(
                "slope of the crown",
                "2 × tan(pressure angle) × sin(crown cone) / cos(spiral)",
                both * Math.sin(crownCone),
                Kind.NUMBER,
                SOURCE);
        double pinion = w.line(
                "slope of the pinion",
                "2 × tan(pressure angle) × sin(pinion cone) / cos(spiral)",
                both * Math.sin(pinionCone),
                Kind.NUMBER,
                SOURCE);
        int factor = ToothingPair.commonFactor(c.pinionTeeth(), c.crownTeeth());
        if (factor > 1) {
            w.caution("Tooth counts share the factor " + factor + ": look for timing marks.");
        }
        w.caution("Theory without offset: after the first shim change take the slope from two readings instead.");
        double ratio = (double) c.crownTeeth() / c.pinionTeeth();
        return Outcome.ok(w.worked(new Result(crown, pinion, pinionCone, crownCone, ratio, factor)));
    }
}
