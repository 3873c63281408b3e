package shimwright.mechanics.shaft;

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

/** The worksheet {@code cross-pin}: a pin across a shaft or a differential, its shear, bending and pressures. */
public final class CrossPin {
    private static final String STATICS =
            "statics of a pin in double shear; Beer and Johnston, Mechanics of Materials, ch. 1";
    private static final String BENT =
            "Khurmi and Gupta, Machine Design, knuckle joint: M = P/2 (t1/3 + t/4), σ = 32 M/(π d³); from memory";

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "cross-pin",
            "Cross pin",
            "Shear, bending and pressure of a pin across a shaft, in an eye, or carrying the pinions of a differential.",
            List.of(STATICS, BENT),
            Case.class,
            Result.class,
            CrossPin::work);

    private CrossPin() {}

    /** What the pin does. */
    public enum Use {
        /** Carries a pull between an eye and the two sides of a fork. */
        EYE,
        /** Carries a torque from a hub through a shaft. */
        ACROSS_A_SHAFT,
        /** Carries the pinions of a differential: half of the torque on each end. */
        DIFFERENTIAL
    }

    /** Lengths in metres, force in newtons, torque in N·m, stresses in Pa. */
    public record Case(
            @Input(meaning = "what the pin does", example = "differential")
            Use use,

            @Input(kind = Kind.LENGTH, meaning = "diameter of the pin", min = 5e-4, max = 0.3, example = "16 mm")
            double pin,

            @Input(kind = Kind.LENGTH, meaning = "bore through a hollow pin", min = 0, max = 0.3, orElse = "0 mm")
            double hollow,

            @Input(kind = Kind.FORCE, meaning = "pull on an eye", min = 0.1, max = 1e8) @Nullable
            Double pull,

            @Input(
                    kind = Kind.TORQUE,
                    meaning = "torque through the pin, for a differential that of the crown wheel",
                    min = 1e-3,
                    max = 1e6,
                    example = "1200 N·m")
            @Nullable
            Double torque,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "diameter of the shaft, or across the pinions' middles in a differential",
                    min = 0.002,
                    max = 1,
                    example = "54 mm")
            @Nullable
            Double across,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "length of the eye, of the seat in the shaft, or of a pinion's bore",
                    min = 5e-4,
                    max = 0.5,
                    example = "18 mm")
            @Nullable
            Double eye,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "length that bears in each side of the fork, hub or carrier",
                    min = 5e-4,
                    max = 0.5,
                    example = "12 mm")
            @Nullable
            Double side,

            @Input(kind = Kind.PRESSURE, meaning = "shear stress allowed", min = 1e5, max = 2e9) @Nullable
            Double shearAllowed) {}

    /** Force in newtons, stresses in pascal, length in metres. */
    public record Result(
            @Output(kind = Kind.FORCE, meaning = "force on one section of the pin")
            double force,

            @Output(kind = Kind.PRESSURE, meaning = "shear stress, mean over the section", decimals = 2)
            double shear,

            @Output(kind = Kind.PRESSURE, meaning = "bending stress", decimals = 1) @Nullable
            Double bending,

            @Output(kind = Kind.PRESSURE, meaning = "pressure in the eye, shaft or pinion", decimals = 1) @Nullable
            Double eyePressure,

            @Output(kind = Kind.PRESSURE, meaning = "pressure in each side", decimals = 1) @Nullable
            Double sidePressure,

            @Output(kind = Kind.LENGTH, meaning = "solid pin that would do for shear") @Nullable
            Double needed) {}

    /**
     * Two sections carry: each half a pull, or torque over the distance between them. Shear = F/A; bending of an eye
     * M = F (side/3 + eye/4), of a pinion beside its carrier M = F × half of its bore.
     *
     * @param c lengths in m, force in N, torque in N·m, stress in Pa
     * @return force in N, stresses in Pa, length in m; refused: an eye without its pull, a shaft or differential without its torque
     *     and what lies across, a pin without a wall, a pin no thinner than the shaft
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = new ArrayList<>();
        if (c.hollow() >= c.pin()) {
            refusals.add(Refusal.of("hollow", "nothing is left of the pin", "Measure both again"));
        }
        if (c.use() == Use.EYE && c.pull() == null) {
            refusals.add(Refusal.of("pull", "an eye is loaded by a pull", "Give it"));
        }
        if (c.use() != Use.EYE) {
            if (c.torque() == null) {
                refusals.add(Refusal.of("torque", "it carries a torque", "Give it"));
            }
            Double across = c.across();
            if (across == null) {
                refusals.add(Refusal.of(
                        "across", "the torque acts at a distance that is not given", "Measure it and give it"));
            } else if (across <= c.pin()) {
                refusals.add(Refusal.of("across", "the pin is no thinner than what it crosses", "Look at both units"));
            }
        }
        return refusals.isEmpty() ? Outcome.ok(carried(c)) : Outcome.refused(refusals);
    }

    private static double given(@Nullable Double value) {
        return value == null ? 0 : value;
    }

    private static Worked<Result> carried(Case c) {
        Working w = new Working();
        double d = c.pin();
        double h = c.hollow();
        double area = w.line("A", "π/4 (d² − h²)", Math.PI / 4 * (d * d - h * h), Kind.AREA);
        double force = c.use() == Use.EYE
                ? w.line("F", "pull/2: two sections", given(c.pull()) / 2, Kind.FORCE, STATICS)
                : w.line(
                        "F", "torque/across: two sections", given(c.torque()) / given(c.across()), Kind.FORCE, STATICS);
        double shear = w.line("τ", "F/A", force / area, Kind.PRESSURE, STATICS);
        Double eye = c.eye();
        Double side = c.side();
        Double bending = bending(c, force, w);
        boolean pinions = c.use() == Use.DIFFERENTIAL;
        Double eyePressure = eye == null
                ? null
                : w.line(
                        "p",
                        pinions ? "F/(d × bore of a pinion)" : "2 F/(d × length)",
                        (pinions ? 1 : 2) * force / (d * eye),
                        Kind.PRESSURE,
                        STATICS);
        Double sidePressure =
                side == null ? null : w.line("p, side", "F/(d × side)", force / (d * side), Kind.PRESSURE, STATICS);
        Double allowed = c.shearAllowed();
        Double needed = allowed == null
                ? null
                : w.line(
                        "d for shear",
                        "√(4 F/(π τ))",
                        Math.sqrt(4 * force / (Math.PI * allowed)),
                        Kind.LENGTH,
                        STATICS);
        if (allowed != null && shear > allowed) {
            w.caution("The pin shears more than is allowed: a thicker one, a second one, or better steel.");
        }
        if (pinions) {
            w.caution(
                    "The pinions run on the pin when the wheels turn unlike: pressure and oil decide there, not shear. "
                            + "A blued or scored track is replaced with its pinions.");
            w.caution("The lock pin holds the cross pin in and carries nothing else; it is renewed.");
        }
        w.caution(
                "Mean shear; at the middle of the section it is 4/3 of it. Shock and reversal ask for far less than static "
                        + "strength.");
        return w.worked(new Result(force, shear, bending, eyePressure, sidePressure, needed));
    }

    private static @Nullable Double bending(Case c, double force, Working w) {
        Double eye = c.eye();
        Double side = c.side();
        if (eye == null || (c.use() == Use.EYE && side == null)) {
            return null;
        }
        double moment = c.use() == Use.EYE
                ? w.line("M", "F (side/3 + eye/4)", force * (given(side) / 3 + eye / 4), Kind.TORQUE, BENT)
                : w.line("M", "F × half of the length", force * eye / 2, Kind.TORQUE, "statics, load in the middle");
        double d = c.pin();
        double section = Math.PI / 32 * (Math.pow(d, 4) - Math.pow(c.hollow(), 4)) / d;
        return w.line("σ", "32 M d/(π (d⁴ − h⁴))", moment / section, Kind.PRESSURE, BENT);
    }
}
