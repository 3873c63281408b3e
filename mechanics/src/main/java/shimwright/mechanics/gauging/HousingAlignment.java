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

/** Worksheet {@code housing-alignment}: a clutch housing or pilot bore against the crankshaft, from a swept dial. */
public final class HousingAlignment {
    private static final String FIT = "least squares of m + a cos θ + b sin θ";
    private static final String HALF = "a swept dial reads twice the offset; shaft alignment practice";

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
                    "housing-alignment",
                    "Housing and pilot alignment",
                    "How far and which way a clutch housing or pilot bore lies off the crankshaft, and which dowel brings it in.",
                    List.of(
                            FIT,
                            HALF,
                            "sag of the arm: rim and face alignment practice",
                            "limits: the book of the engine; where it is silent 0.13 mm of bore reading is common practice, no source"),
                    Case.class,
                    Result.class,
                    HousingAlignment::work)
            .drawn(GaugingPictures::alignment);

    private HousingAlignment() {}

    /** What the plunger rides on. */
    public enum Surface {
        BORE,
        RIM
    }

    /** Readings of a dial carried by the crankshaft; lengths in metres, angles in radians. */
    public record Case(
            @Input(
                    meaning = "round the bore or rim: where: what it reads",
                    fewest = 0,
                    most = 72,
                    example = "0°: 0 mm; 90°: -0.20 mm; 180°: 0.16 mm; 270°: 0.36 mm")
            List<Sweep.Reading> bore,

            @Input(meaning = "round the face: where: what it reads", fewest = 0, most = 72)
            List<Sweep.Reading> face,

            @Input(meaning = "what the plunger rides on", orElse = "bore")
            Surface surface,

            @Input(kind = Kind.LENGTH, meaning = "radius at which the face is read", min = 0.01, max = 1) @Nullable
            Double faceRadius,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "sag: what the same arm reads at the bottom of a true bar, set to 0 on top",
                    orElse = "0 mm",
                    min = -0.005,
                    max = 0.005)
            double sag,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "offset dowels to be had",
                    fewest = 0,
                    most = 20,
                    min = 0.00005,
                    max = 0.003,
                    example = "0.18 mm; 0.36 mm; 0.53 mm")
            List<Double> dowels) {}

    /** What the bore reading says; lengths in metres, angles in radians from the top, clockwise as the dial is seen. */
    public record Off(
            @Output(kind = Kind.LENGTH, meaning = "middle of the housing off the crankshaft by")
            double offset,

            @Output(kind = Kind.ANGLE, meaning = "towards, from the top, clockwise", decimals = 0)
            double towards,

            @Output(kind = Kind.LENGTH, meaning = "of it up")
            double up,

            @Output(kind = Kind.LENGTH, meaning = "of it right")
            double right,

            @Output(kind = Kind.LENGTH, meaning = "read in a turn, largest less smallest")
            double range,

            @Output(kind = Kind.LENGTH, meaning = "furthest reading from a true circle")
            double furthest) {}

    /** What the face reading says; angles in radians. */
    public record Tilt(
            @Output(kind = Kind.LENGTH, meaning = "read in a turn, largest less smallest")
            double range,

            @Output(kind = Kind.LENGTH, meaning = "of it from tilt")
            double runout,

            @Output(kind = Kind.ANGLE, meaning = "nearest to the engine, from the top, clockwise", decimals = 0)
            double nearest,

            @Output(kind = Kind.ANGLE, meaning = "tilt", unit = "mrad", decimals = 2) @Nullable
            Double tilt,

            @Output(kind = Kind.LENGTH, meaning = "furthest reading from a true plane")
            double furthest) {}

    /** Lengths in metres, angle in radians. */
    public record Result(
            @Output(meaning = "bore or rim") @Nullable Off bore,
            @Output(meaning = "face") @Nullable Tilt face,

            @Output(kind = Kind.ANGLE, meaning = "move the housing towards, from the top, clockwise", decimals = 0)
            @Nullable
            Double move,

            @Output(kind = Kind.LENGTH, meaning = "dowel whose offset comes nearest") @Nullable
            Double dowel,

            @Output(kind = Kind.LENGTH, meaning = "offset left with it") @Nullable
            Double left) {}

    /**
     * Offset from the sine fitted to the readings: a bore reads −offset·direction, a rim +; sag taken off first. A dowel turned
     * against the offset leaves |offset − dowel|.
     *
     * @param c lengths in m, angles in rad
     * @return lengths in m, angles in rad; refused: no readings at all, readings at fewer than three places or on one side
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = new ArrayList<>();
        if (c.bore().isEmpty() && c.face().isEmpty()) {
            refusals.add(Refusal.of("bore", "no readings", "Sweep the bore, the face or both"));
        }
        if (!c.bore().isEmpty()) {
            Sweep.check("bore", c.bore(), refusals);
        }
        if (!c.face().isEmpty()) {
            Sweep.check("face", c.face(), refusals);
        }
        return refusals.isEmpty() ? Outcome.ok(swept(c)) : Outcome.refused(refusals);
    }

    /** Bore readings as they would be with a stiff arm. */
    static List<Sweep.Reading> stiff(Case c) {
        return Sweep.withoutSag(c.bore(), c.sag());
    }

    private static Worked<Result> swept(Case c) {
        Working w = new Working();
        Off off = c.bore().isEmpty() ? null : off(c, w);
        Tilt tilt = c.face().isEmpty() ? null : tilt(c, w);
        Double move = off == null ? null : (off.towards() + Math.PI) % (2 * Math.PI);
        Double dowel = off == null ? null : nearest(c.dowels(), off.offset());
        Double left = off == null || dowel == null
                ? null
                : w.line("left", "|offset − dowel|", Math.abs(off.offset() - dowel), Kind.LENGTH, "geometry");
        w.caution("Push the crankshaft one way before each face reading: its end play reads as tilt.");
        w.caution("Turn the crankshaft, not the dial on it; end at the top again: it must come back to what it was.");
        w.caution(
                "Angles are clockwise as you look at the housing from the gearbox, both when reading and when setting dowels.");
        if (c.sag() == 0 && !c.bore().isEmpty()) {
            w.caution("Sag is taken as none: read it once with the same arm on a true bar, or use a short stiff arm.");
        }
        if (dowel != null) {
            w.caution(
                    "Turn both dowels the same way, offset against the error, mark them, sweep again before they are final.");
        }
        w.caution(
                "Take the ignition out of action and use the bar: fingers between dial and housing when it turns get caught.");
        return w.worked(new Result(off, tilt, move, dowel, left));
    }

    private static Off off(Case c, Working w) {
        Sweep s = Sweep.of(stiff(c));
        double sign = c.surface() == Surface.BORE ? -1 : 1;
        String how = sign < 0 ? "− fitted a" : "fitted a";
        double up = w.line("up", how, sign * s.up(), Kind.LENGTH, FIT);
        double right = w.line("right", sign < 0 ? "− fitted b" : "fitted b", sign * s.right(), Kind.LENGTH, FIT);
        double offset = w.line("offset", "√(up² + right²)", Math.hypot(up, right), Kind.LENGTH, HALF);
        double towards = (s.highest() + (sign < 0 ? Math.PI : 0)) % (2 * Math.PI);
        w.line("furthest", "largest |reading − fitted|", s.furthest(), Kind.LENGTH, FIT);
        if (s.furthest() > 0.25 * s.amplitude() && s.furthest() > 2.5e-5) {
            w.caution(
                    "The readings do not lie on a circle: misread, out of round, or a burr. Opposite pairs must have one sum.");
        }
        return new Off(offset, offset == 0 ? 0 : towards, up, right, s.range(), s.furthest());
    }

    private static Tilt tilt(Case c, Working w) {
        Sweep s = Sweep.of(c.face());
        double runout = w.line("face runout from tilt", "2 √(a² + b²)", 2 * s.amplitude(), Kind.LENGTH, FIT);
        Double radius = c.faceRadius();
        Double tilt = radius == null
                ? null
                : w.line("tilt", "runout/(2 radius)", runout / (2 * radius), Kind.ANGLE, "geometry");
        if (s.furthest() > 0.25 * s.amplitude() && s.furthest() > 2.5e-5) {
            w.caution(
                    "The face is not plane or was misread: dirt, a burr at a bolt hole, or the crankshaft moved endwise.");
        }
        return new Tilt(s.range(), runout, s.highest(), tilt, s.furthest());
    }

    private static @Nullable Double nearest(List<Double> dowels, double offset) {
        Double best = null;
        for (double dowel : dowels) {
            if (Math.abs(dowel - offset) < (best == null ? offset : Math.abs(best - offset))) {
                best = dowel;
            }
        }
        return best;
    }
}
