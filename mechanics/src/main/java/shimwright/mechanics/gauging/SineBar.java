package shimwright.mechanics.gauging;

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

/** Worksheet {@code sine-bar}: an angle by a sine bar and gauge blocks, or the blocks for an angle. */
public final class SineBar {
    private static final String BAR = "geometry of the sine bar; Machinery's Handbook, sine-bar";

    /** Beyond this a slip of the blocks moves the angle too much: usual limit of the books, 45°. */
    private static final double STEEP = Math.PI / 4;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "sine-bar",
            "Sine bar",
            "Angle and taper from the blocks under a sine bar, or the blocks for an angle, and what is left to a sweep.",
            List.of(BAR),
            Case.class,
            Result.class,
            SineBar::work);

    private SineBar() {}

    /** Lengths in metres, angle in radians; either the blocks or the angle. */
    public record Case(
            @Input(
                    kind = Kind.LENGTH,
                    meaning = "distance of the rollers' middles, such as 100 mm or 5 in",
                    min = 0.02,
                    max = 1,
                    example = "100 mm")
            double bar,

            @Input(kind = Kind.LENGTH, meaning = "blocks under the one roller", min = 0, max = 1, example = "2.5 mm")
            @Nullable
            Double blocks,

            @Input(kind = Kind.ANGLE, meaning = "angle to set instead", min = 0, max = 1.4) @Nullable
            Double angle,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "rise of the indicator over the sweep, plus where it rises towards the blocks",
                    min = -0.001,
                    max = 0.001,
                    orElse = "0 mm")
            double rise,

            @Input(kind = Kind.LENGTH, meaning = "length of the sweep", min = 0.001, max = 1) @Nullable
            Double sweep) {}

    /** Lengths in metres, angles in radians. */
    public record Result(
            @Output(kind = Kind.LENGTH, meaning = "blocks under the roller", decimals = 4)
            double blocks,

            @Output(kind = Kind.ANGLE, meaning = "angle of the part", decimals = 4)
            double angle,

            @Output(meaning = "taper of a round part: diameter per length", decimals = 5)
            double taper,

            @Output(kind = Kind.ANGLE, meaning = "the same as an angle off the axis", decimals = 4)
            double halfAngle,

            @Output(kind = Kind.ANGLE, meaning = "angle of one micrometre under the roller", decimals = 6)
            double perMicrometre) {}

    /**
     * sin angle = blocks/bar; what the indicator still rises over a sweep is taken off; taper = 2 tan(angle/2).
     *
     * @param c lengths in m, angle in rad
     * @return lengths in m, angles in rad; refused: neither or both of blocks and angle, blocks not lower than the bar is long, a
     *     rise without the length of its sweep
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = new ArrayList<>();
        Double given = c.blocks();
        if ((given == null) == (c.angle() == null)) {
            refusals.add(Refusal.of(
                    "blocks",
                    given == null ? "neither blocks nor an angle are given" : "blocks and an angle are both given",
                    "Give the blocks to measure, or the angle to set"));
        } else if (given != null && given >= c.bar()) {
            refusals.add(
                    Refusal.of("blocks", "the blocks are no lower than the bar is long", "Look at the unit of both"));
        }
        if (c.rise() != 0 && c.sweep() == null) {
            refusals.add(Refusal.of("sweep", "a rise says nothing without it", "Measure how far the indicator went"));
        }
        return refusals.isEmpty() ? Outcome.ok(set(c)) : Outcome.refused(refusals);
    }

    private static Worked<Result> set(Case c) {
        Working w = new Working();
        Double given = c.blocks();
        Double wanted = c.angle();
        double bar = given != null
                ? w.line("angle of the bar", "asin(blocks/bar)", Math.asin(given / c.bar()), Kind.ANGLE, BAR)
                : wanted == null ? 0 : wanted;
        double blocks =
                given != null ? given : w.line("blocks", "bar × sin angle", c.bar() * Math.sin(bar), Kind.LENGTH, BAR);
        Double sweep = c.sweep();
        double angle = sweep == null
                ? bar
                : w.line("angle of the part", "bar − atan(rise/sweep)", bar - Math.atan(c.rise() / sweep), Kind.ANGLE);
        double taper = w.line("taper", "2 tan(angle/2)", 2 * Math.tan(angle / 2), Kind.NUMBER);
        double fine = w.line("per µm", "1 µm/(bar × cos angle)", 1e-6 / (c.bar() * Math.cos(bar)), Kind.ANGLE);
        if (bar > STEEP) {
            w.caution(
                    "Over 45° a small error of the blocks is a large one of the angle: set the other way round from 90°.");
        }
        w.caution("Bar and part lie square to the rollers, clamped, wiped clean, at one temperature with the blocks.");
        w.caution("A taper measured on its own outside is the whole angle; between centres it is half of it.");
        return w.worked(new Result(blocks, angle, taper, angle / 2, fine));
    }
}
