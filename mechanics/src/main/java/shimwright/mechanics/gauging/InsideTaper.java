package shimwright.mechanics.gauging;

import java.util.ArrayList;
import java.util.List;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** Worksheet {@code inside-taper}: a tapered hole measured with two balls. */
public final class InsideTaper {
    private static final String BALLS = "geometry of two balls in a cone; Machinery's Handbook, measuring tapers";

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
                    "inside-taper",
                    "Inside taper with balls",
                    "Half angle, taper and mouth of a tapered hole from the depths of two balls.",
                    List.of(BALLS),
                    Case.class,
                    Result.class,
                    InsideTaper::work)
            .drawn(GaugingPictures::insideTaper);

    private InsideTaper() {}

    /** Two balls dropped in one after the other; depths from the mouth down to the top of each; lengths in metres. */
    public record Case(
            @Input(
                    kind = Kind.LENGTH,
                    meaning = "diameter of the large ball",
                    min = 0.001,
                    max = 0.5,
                    example = "40 mm")
            double large,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "diameter of the small ball",
                    min = 0.0005,
                    max = 0.5,
                    example = "32 mm")
            double small,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "top of the large ball below the mouth, minus where it stands out",
                    min = -0.5,
                    max = 1,
                    example = "-8 mm")
            double largeDepth,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "top of the small ball below the mouth, minus where it stands out",
                    min = -0.5,
                    max = 1,
                    example = "76 mm")
            double smallDepth) {}

    /** Lengths in metres, angles in radians. */
    public record Result(
            @Output(kind = Kind.LENGTH, meaning = "distance of the middles of the balls", decimals = 4)
            double middles,

            @Output(kind = Kind.ANGLE, meaning = "half angle", decimals = 4)
            double halfAngle,

            @Output(kind = Kind.ANGLE, meaning = "whole angle", decimals = 4)
            double angle,

            @Output(meaning = "taper: diameter per length", decimals = 5)
            double taper,

            @Output(kind = Kind.LENGTH, meaning = "diameter at the mouth", decimals = 4)
            double mouthDiameter) {}

    /**
     * sin α = (R − r)/c, c the distance of the middles; mouth diameter = 2 (R/cos α + (R + depth) tan α).
     *
     * @param c lengths in m
     * @return lengths in m, angles in rad; refused: balls of one size, a small ball that does not lie deeper by more than the
     *     difference of the radii, a large ball that stands wholly above the mouth
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = new ArrayList<>();
        double radii = (c.large() - c.small()) / 2;
        if (radii <= 0) {
            refusals.add(Refusal.of("small", "the small ball is not the smaller one", "Look at both diameters"));
        } else if (middles(c) <= radii * 1.02) {
            refusals.add(Refusal.of(
                    "smallDepth",
                    "the middles lie " + Quantities.brief(middles(c), Units.MM) + " apart, the radii differ by "
                            + Quantities.brief(radii, Units.MM) + ": no cone holds both",
                    "Measure both depths again; minus only for a ball that stands out of the mouth"));
        } else if (c.largeDepth() + c.large() / 2 + c.large() / 2 * radii / middles(c) < 0) {
            refusals.add(Refusal.of(
                    "largeDepth",
                    "the large ball would touch above the mouth",
                    "It rests on the edge there: take a smaller ball"));
        }
        return refusals.isEmpty() ? Outcome.ok(measured(c)) : Outcome.refused(refusals);
    }

    private static double middles(Case c) {
        return c.smallDepth() + c.small() / 2 - c.largeDepth() - c.large() / 2;
    }

    private static Worked<Result> measured(Case c) {
        Working w = new Working();
        double large = c.large() / 2;
        double middles = w.line("c", "small depth + r − large depth − R", middles(c), Kind.LENGTH, BALLS);
        double half = w.line("α", "asin((R − r)/c)", Math.asin((large - c.small() / 2) / middles), Kind.ANGLE, BALLS);
        double taper = w.line("taper", "2 tan α", 2 * Math.tan(half), Kind.NUMBER);
        double mouth = w.line(
                "mouth diameter",
                "2 (R/cos α + (R + depth) tan α)",
                2 * (large / Math.cos(half) + (large + c.largeDepth()) * Math.tan(half)),
                Kind.LENGTH,
                BALLS);
        w.caution(
                "The mouth is that of a sharp edge: a chamfer there does not change it, but the depth must start at the face.");
        w.caution(
                "Clean the hole; let each ball drop and settle by its own weight, no tapping; wipe oil off the balls.");
        w.caution("Two balls say nothing of a worn step between them: blue it, or try a third ball.");
        return w.worked(new Result(middles, half, 2 * half, taper, mouth));
    }
}
