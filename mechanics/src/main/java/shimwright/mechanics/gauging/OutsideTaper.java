package shimwright.mechanics.gauging;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
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

/** Worksheet {@code outside-taper}: a cone measured over two rollers, on the plate and on gauge blocks. */
public final class OutsideTaper {
    private static final String ROLLERS = "geometry of a roller in a corner; Machinery's Handbook, measuring tapers";

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
                    "outside-taper",
                    "Outside taper over rollers",
                    "Half angle, taper and end sizes of a cone from two readings over rollers.",
                    List.of(ROLLERS),
                    Case.class,
                    Result.class,
                    OutsideTaper::work)
            .drawn(GaugingPictures::outsideTaper);

    private OutsideTaper() {}

    /** Readings over two equal rollers on opposite sides of a cone standing on a plate; lengths in metres. */
    public record Case(
            @Input(kind = Kind.LENGTH, meaning = "diameter of the rollers", min = 1e-4, max = 0.1, example = "10 mm")
            double roller,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "reading over them on the plate",
                    min = 0.001,
                    max = 2,
                    example = "52.10 mm")
            double low,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "reading over them on the blocks",
                    min = 0.001,
                    max = 2,
                    example = "58.10 mm")
            double high,

            @Input(kind = Kind.LENGTH, meaning = "height of the blocks", min = 0.001, max = 1, example = "30 mm")
            double blocks,

            @Input(kind = Kind.LENGTH, meaning = "length of the cone, from the plate", min = 0.001, max = 1) @Nullable
            Double length) {}

    /** Lengths in metres, angles in radians; a cone that gets thinner upward has a negative angle. */
    public record Result(
            @Output(kind = Kind.ANGLE, meaning = "half angle", decimals = 4)
            double halfAngle,

            @Output(kind = Kind.ANGLE, meaning = "whole angle", decimals = 4)
            double angle,

            @Output(meaning = "taper: diameter per length", decimals = 5)
            double taper,

            @Output(kind = Kind.LENGTH, meaning = "diameter at the plate", decimals = 4)
            double plateDiameter,

            @Output(kind = Kind.LENGTH, meaning = "diameter at the upper end", decimals = 4) @Nullable
            Double topDiameter) {}

    /**
     * tan α = (M2 − M1)/(2 h); plate diameter = M1 − d (1 + cot((90° − α)/2)); top = plate + 2 L tan α.
     *
     * @param c lengths in m
     * @return lengths in m, angles in rad; refused: a half angle over 40°, rollers that leave no cone, a cone that ends in a
     *     point below its length, a length below the blocks
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = new ArrayList<>();
        double half = Math.atan((c.high() - c.low()) / (2 * c.blocks()));
        if (Math.abs(half) > Math.toRadians(40)) {
            refusals.add(Refusal.of(
                    "high",
                    "the two readings give a half angle of " + Quantities.brief(half, Units.DEGREE),
                    "Look at both readings and the blocks; a cone so blunt is measured another way"));
        } else if (plate(c, half) <= 0) {
            refusals.add(
                    Refusal.of("low", "the rollers leave no cone between them", "Look at the roller and the reading"));
        } else {
            Double length = c.length();
            if (length != null && plate(c, half) + 2 * length * Math.tan(half) < 0) {
                refusals.add(Refusal.of("length", "the cone ends in a point before that", "Measure its length again"));
            }
            if (length != null && length < c.blocks()) {
                refusals.add(Refusal.of(
                        "length", "the cone is shorter than the blocks are high", "Measure it, or take lower blocks"));
            }
        }
        return refusals.isEmpty() ? Outcome.ok(measured(c)) : Outcome.refused(refusals);
    }

    private static double plate(Case c, double half) {
        return c.low() - c.roller() * (1 + 1 / Math.tan((Math.PI / 2 - half) / 2));
    }

    private static Worked<Result> measured(Case c) {
        Working w = new Working();
        double slope =
                w.line("tan α", "(M2 − M1)/(2 h)", (c.high() - c.low()) / (2 * c.blocks()), Kind.NUMBER, ROLLERS);
        double half = w.line("α", "atan", Math.atan(slope), Kind.ANGLE);
        double plate = w.line("plate diameter", "M1 − d (1 + cot((90° − α)/2))", plate(c, half), Kind.LENGTH, ROLLERS);
        Double length = c.length();
        Double top = length == null
                ? null
                : w.line("top diameter", "plate + 2 L tan α", plate + 2 * length * slope, Kind.LENGTH, ROLLERS);
        w.caution("The diameter at the plate is that of a sharp corner: a chamfer or radius there does not change it.");
        w.caution(
                "Lap the plate end, no burr; rollers of one size, blocks of one height on both sides, a light steady pressure.");
        w.caution("Turn the cone and read again at a right angle: an oval cone reads well once.");
        return w.worked(new Result(half, 2 * half, 2 * slope, plate, top));
    }
}
