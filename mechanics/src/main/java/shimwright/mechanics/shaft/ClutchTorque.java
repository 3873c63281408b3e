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

/** The worksheet {@code clutch-torque}: what a plate clutch carries, by uniform wear and by uniform pressure. */
public final class ClutchTorque {
    private static final String BOOK = "Shigley 9th ed., 16-5, frictional-contact axial clutches";

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "clutch-torque",
            "Clutch torque",
            "Torque a plate clutch carries from its clamp load or lining pressure, run in and new.",
            List.of(BOOK),
            Case.class,
            Result.class,
            ClutchTorque::work);

    private ClutchTorque() {}

    /** Lengths in metres, force in newtons, pressure in pascal, torque in N·m. */
    public record Case(
            @Input(kind = Kind.LENGTH, meaning = "outside of the lining", min = 0.01, max = 1.5, example = "215 mm")
            double outer,

            @Input(kind = Kind.LENGTH, meaning = "inside of the lining", min = 0, max = 1.4, example = "145 mm")
            double inner,

            @Input(meaning = "rubbing faces: two for one plate", orElse = "2", min = 1, max = 40)
            int faces,

            @Input(meaning = "coefficient of friction, the lowest to expect", orElse = "0.25", min = 0.02, max = 0.8)
            double friction,

            @Input(kind = Kind.FORCE, meaning = "clamp load", min = 1, max = 1e6, example = "5500 N") @Nullable
            Double clamp,

            @Input(kind = Kind.PRESSURE, meaning = "highest lining pressure instead", min = 100, max = 1e8) @Nullable
            Double pressure,

            @Input(kind = Kind.TORQUE, meaning = "torque of the engine", min = 0.1, max = 1e5) @Nullable
            Double engine) {}

    /** Lengths in metres, forces in newtons, pressures in pascal, torques in N·m. */
    public record Result(
            @Output(kind = Kind.FORCE, meaning = "clamp load, run in", decimals = 0)
            double clampWear,

            @Output(kind = Kind.TORQUE, meaning = "torque run in, by uniform wear", decimals = 1)
            double torqueWear,

            @Output(kind = Kind.TORQUE, meaning = "torque new, by uniform pressure", decimals = 1)
            double torquePressure,

            @Output(kind = Kind.LENGTH, meaning = "mean radius, uniform wear")
            double radiusWear,

            @Output(kind = Kind.LENGTH, meaning = "mean radius, uniform pressure")
            double radiusPressure,

            @Output(
                    kind = Kind.PRESSURE,
                    meaning = "highest pressure, at the inside, run in",
                    decimals = 4,
                    infinite = "no bound")
            double most,

            @Output(kind = Kind.PRESSURE, meaning = "lowest pressure, at the outside, run in", decimals = 4)
            double fewest,

            @Output(kind = Kind.PRESSURE, meaning = "mean pressure", decimals = 4)
            double mean,

            @Output(meaning = "how many times the engine's torque, run in", decimals = 2) @Nullable
            Double reserve,

            @Output(kind = Kind.FORCE, meaning = "clamp load that the engine's torque needs, run in") @Nullable
            Double clampNeeded) {}

    /**
     * Uniform wear: T = z μ F (D + d)/4, F = π p d (D − d)/2, p highest at the inside; uniform pressure: T = z μ F (D³ − d³)/(3 (D²
     * − d²)).
     *
     * @param c lengths in m, force in N, pressure in Pa, torque in N·m
     * @return the same units; refused: an inside not within the outside, not exactly one of clamp load and pressure, a
     *     pressure with an inside of 0, where uniform wear has no bound
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = new ArrayList<>();
        if (c.inner() >= c.outer()) {
            refusals.add(Refusal.of("inner", "the lining has no width", "Look at both diameters"));
        }
        if ((c.clamp() == null) == (c.pressure() == null)) {
            refusals.add(Refusal.of(
                    "clamp",
                    c.clamp() == null
                            ? "neither clamp load nor pressure is given"
                            : "clamp load and pressure are both given",
                    "Give one of them"));
        }
        if (c.pressure() != null && c.inner() == 0) {
            refusals.add(Refusal.of("inner", "a lining to the very middle has no highest pressure", "Give its inside"));
        }
        return refusals.isEmpty() ? Outcome.ok(carried(c)) : Outcome.refused(refusals);
    }

    private static Worked<Result> carried(Case c) {
        Working w = new Working();
        double d = c.inner();
        double width = c.outer() - d;
        Double pressure = c.pressure();
        Double given = c.clamp();
        double clamp = given != null
                ? given
                : w.line(
                        "F",
                        "π p d (D − d)/2",
                        Math.PI * (pressure == null ? Double.NaN : pressure) * d * width / 2,
                        Kind.FORCE,
                        BOOK + ", Eq. 16-23");
        double wear = w.line("radius, wear", "(D + d)/4", (c.outer() + d) / 4, Kind.LENGTH, BOOK + ", Eq. 16-25");
        double even = w.line(
                "radius, pressure",
                "(D³ − d³)/(3 (D² − d²))",
                (Math.pow(c.outer(), 3) - Math.pow(d, 3)) / (3 * (c.outer() * c.outer() - d * d)),
                Kind.LENGTH,
                BOOK + ", Eq. 16-28");
        double perRadius = c.faces() * c.friction() * clamp;
        double torque = w.line("T, wear", "z μ F × radius", perRadius * wear, Kind.TORQUE, BOOK);
        double fresh = w.line("T, pressure", "z μ F × radius", perRadius * even, Kind.TORQUE, BOOK);
        double most = d == 0 ? Double.POSITIVE_INFINITY : 2 * clamp / (Math.PI * d * width);
        if (d > 0) {
            w.line("p inside", "2 F/(π d (D − d))", most, Kind.PRESSURE, BOOK);
        }
        double fewest = w.line(
                "p outside", "2 F/(π D (D − d))", 2 * clamp / (Math.PI * c.outer() * width), Kind.PRESSURE, BOOK);
        double mean = w.line(
                "p mean", "4 F/(π (D² − d²))", 4 * clamp / (Math.PI * (c.outer() * c.outer() - d * d)), Kind.PRESSURE);
        Double engine = c.engine();
        Double reserve = engine == null ? null : w.line("reserve", "T, wear / engine", torque / engine, Kind.NUMBER);
        Double needed = engine == null
                ? null
                : w.line("F needed", "engine/(z μ × radius)", engine / (c.faces() * c.friction() * wear), Kind.FORCE);
        if (reserve != null && reserve < 1.2) {
            w.caution(
                    "Under 1.2 times the engine's torque a clutch slips when hot, oiled or worn; 1.2 to 1.5 is usual practice.");
        }
        w.caution(
                "Oil, glaze and heat take friction away; new linings on a used flywheel carry little until they have run in.");
        w.caution("A diaphragm's clamp load changes with wear: measure it at the height it works at.");
        w.caution("Old linings may hold asbestos: no air gun, no dry brush; wipe wet, bag the dust.");
        return w.worked(new Result(clamp, torque, fresh, wear, even, most, fewest, mean, reserve, needed));
    }
}
