package shimwright.mechanics.synchro;

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

/** The worksheet {@code synchro-capacity}: does the ring lock, how long does it slip, what does it suffer. */
public final class SynchroCapacity {
    static final String SOURCE = "cone and chamfer statics, common practice, no source";

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
                    "synchro-capacity",
                    "Synchronizer capacity",
                    "Cone torque against index torque, whether the ring locks, and slip time, work and power of a shift.",
                    List.of(SOURCE),
                    Case.class,
                    Result.class,
                    SynchroCapacity::work)
            .drawn(SynchroPictures::capacity);

    private SynchroCapacity() {}

    /** One friction cone; lengths in metres. */
    public record Cone(
            @Input(kind = Kind.LENGTH, meaning = "mean diameter", min = 5e-3, max = 1, example = "65 mm")
            double diameter,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "width of contact along the cone",
                    orElse = "10 mm",
                    min = 5e-4,
                    max = 0.2)
            double width) {}

    /** A part that is brought to speed with the gear. */
    public record Mass(
            @Input(meaning = "part", example = "input shaft and disc")
            String name,

            @Input(meaning = "its inertia, kg·m²", min = 1e-8, max = 100, example = "0.008")
            double inertia,

            @Input(meaning = "its speed by that of the gear", orElse = "1", min = 1e-3, max = 100)
            double ratio) {}

    /** What the cones are lined with; guide values by {@code synchro-guide/linings.csv}. */
    public enum Lining {
        NOT_SAID,
        BRASS,
        MOLYBDENUM
    }

    /** Lengths in metres, angles in radians, force in N, torque in N·m, inertia in kg·m², rotation in rad/s. */
    public record Case(
            @Input(kind = Kind.FORCE, meaning = "axial force at the sleeve", min = 1, max = 2e4, example = "800 N")
            double force,

            @Input(meaning = "friction of the cone", min = 0.01, max = 0.6, example = "0.10")
            double friction,

            @Input(meaning = "lowest friction of the cone, for the worst case", min = 0.01, max = 0.6) @Nullable
            Double frictionLow,

            @Input(meaning = "cones: mean diameter: width", most = 4, example = "65 mm: 10 mm")
            List<Cone> cones,

            @Input(kind = Kind.ANGLE, meaning = "cone half angle", min = 0.02, max = 0.6, example = "6.5°")
            double coneHalfAngle,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "mean radius of the chamfers",
                    min = 5e-3,
                    max = 0.5,
                    example = "38 mm")
            double chamferRadius,

            @Input(
                    kind = Kind.ANGLE,
                    meaning = "chamfer half angle, from the shaft axis",
                    min = 0.2,
                    max = 1.5,
                    example = "52.5°")
            double chamferHalfAngle,

            @Input(meaning = "friction of the chamfers", orElse = "0", min = 0, max = 0.5)
            double chamferFriction,

            @Input(meaning = "inertia to be synchronized, kg·m², reduced to this gear", min = 1e-7, max = 100) @Nullable
            Double inertia,

            @Input(
                    meaning = "or the parts that turn with this gear: part: kg·m²: speed by that of the gear",
                    fewest = 0,
                    most = 30)
            List<Mass> masses,

            @Input(meaning = "lining of the cones, for guide values", orElse = "not said")
            Lining lining,

            @Input(kind = Kind.ROTATION, meaning = "speed difference", min = 0, max = 2100) @Nullable
            Double speedDifference,

            @Input(kind = Kind.ROTATION, meaning = "input speed before the shift", min = 0, max = 2100) @Nullable
            Double inputSpeed,

            @Input(meaning = "ratio before the shift", min = 0.1, max = 50) @Nullable
            Double ratioFrom,

            @Input(meaning = "ratio after the shift", min = 0.1, max = 50) @Nullable
            Double ratioTo,

            @Input(
                    kind = Kind.TORQUE,
                    meaning = "drag of oil and bearings at this gear",
                    orElse = "0 N·m",
                    min = 0,
                    max = 1e3)
            double drag,

            @Input(meaning = "up or down", orElse = "up") Shift shift) {
        /** Given, or that of the parts, each by its speed squared; null where there is neither. */
        @Nullable
        Double reduced() {
            return masses.isEmpty()
                    ? inertia
                    : (Double) masses.stream()
                            .mapToDouble(mass -> mass.inertia() * mass.ratio() * mass.ratio())
                            .sum();
        }
    }

    /** Direction of the shift: drag helps upward and hinders downward. */
    public enum Shift {
        UP,
        DOWN
    }

    /** Torque in N·m, time in s, work in J, power in W, areas in m². */
    public record Result(
            @Output(kind = Kind.TORQUE, meaning = "cone torque", decimals = 3)
            double coneTorque,

            @Output(kind = Kind.TORQUE, meaning = "index torque with chamfer friction", decimals = 3)
            double indexTorque,

            @Output(kind = Kind.TORQUE, meaning = "index torque without chamfer friction, the worst case", decimals = 3)
            double indexTorqueWorst,

            @Output(meaning = "blocking reserve, worst case, to be over 1", decimals = 4)
            double reserve,

            @Output(meaning = "blocking reserve with chamfer friction", decimals = 4)
            double reserveWithFriction,

            @Output(meaning = "locks in the worst case") boolean locks,

            @Output(kind = Kind.ANGLE, meaning = "smallest chamfer half angle that locks in the worst case")
            double leastChamfer,

            @Output(kind = Kind.ANGLE, meaning = "smallest cone half angle that lets go by itself")
            double leastCone,

            @Output(meaning = "the cone lets go by itself") boolean releases,

            @Output(kind = Kind.PRESSURE, meaning = "mean pressure on the cones", decimals = 2)
            double pressure,

            @Output(kind = Kind.ROTATION, meaning = "speed difference") @Nullable
            Double speedDifference,

            @Output(kind = Kind.SPEED, meaning = "sliding speed at the start", unit = "m/s", decimals = 2) @Nullable
            Double slidingSpeed,

            @Output(kind = Kind.TIME, meaning = "slip time", decimals = 4) @Nullable
            Double slipTime,

            @Output(kind = Kind.ENERGY, meaning = "friction work in the cones", decimals = 3) @Nullable
            Double work,

            @Output(meaning = "specific work, J/mm²", decimals = 5) @Nullable
            Double specificWork,

            @Output(meaning = "mean specific friction power, W/mm²", decimals = 5) @Nullable
            Double specificPower) {}

    /**
     * Locking and load of a synchronizer.
     *
     * @param c the case; a speed difference, or input speed with both ratios, and the inertia give the slip
     * @return refused where drag stops the down-shift from finishing, or the speed difference is given twice or half.
     *     Source: cone and chamfer statics
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> faults = new ArrayList<>();
        Working w = new Working();
        Torques t = torques(c, w);
        int ratios = (c.inputSpeed() == null ? 0 : 1) + (c.ratioFrom() == null ? 0 : 1) + (c.ratioTo() == null ? 0 : 1);
        if (c.speedDifference() != null && ratios > 0) {
            faults.add(Refusal.of(
                    "speedDifference",
                    "given together with speed and ratios",
                    "Give the difference, or inputSpeed," + " ratioFrom and ratioTo"));
        } else if (ratios != 0 && ratios != 3) {
            faults.add(Refusal.of(
                    "inputSpeed", "speed and ratios are not complete", "Give inputSpeed, ratioFrom and" + " ratioTo"));
        }
        if (c.inertia() != null && !c.masses().isEmpty()) {
            faults.add(Refusal.of("inertia", "given together with masses", "Give the whole, or its parts"));
        }
        if (c.reduced() != null && c.speedDifference() == null && ratios == 0) {
            faults.add(Refusal.of(
                    "speedDifference",
                    "not given, so no slip can be found",
                    "Give it, or inputSpeed," + " ratioFrom and ratioTo"));
        }
        double left = t.cone() + (c.shift() == Shift.UP ? c.drag() : -c.drag());
        if (c.reduced() != null && !(left > 0)) {
            faults.add(Refusal.of(
                    "drag",
                    "is as large as the cone torque, so this down-shift never finishes",
                    "Warmer or thinner oil," + " more force, or a better ring"));
        }
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        return Outcome.ok(finish(c, w, t, left));
    }

    private record Torques(double cone, double index, double worst, double reserve, double arm) {}

    private static Torques torques(Case c, Working w) {
        double sum = c.cones().stream().mapToDouble(Cone::diameter).sum();
        double arm = sum / (2 * Math.sin(c.coneHalfAngle()));
        double cone = w.line(
                "cone torque",
                "friction × force × Σ diameter / (2 × sin(half angle))",
                c.friction() * c.force() * arm,
                Kind.TORQUE,
                SOURCE);
        double index = w.line(
                "index torque",
                "force × radius / tan(chamfer + arctan(friction))",
                Math.max(
                        0,
                        c.force()
                                * c.chamferRadius()
                                * Math.cos(c.chamferHalfAngle() + Math.atan(c.chamferFriction()))
                                / Math.sin(c.chamferHalfAngle() + Math.atan(c.chamferFriction()))),
                Kind.TORQUE,
                SOURCE);
        double worst = w.line(
                "index torque, worst case",
                "force × radius / tan(chamfer)",
                c.force() * c.chamferRadius() / Math.tan(c.chamferHalfAngle()),
                Kind.TORQUE,
                SOURCE);
        Double low = c.frictionLow();
        double least = low == null ? cone : low * c.force() * arm;
        double reserve = w.line(
                "blocking reserve, worst case",
                "cone torque" + (low == null ? "" : " at the lowest friction") + " / index torque, worst case",
                least / worst,
                Kind.NUMBER,
                SOURCE);
        return new Torques(cone, index, worst, reserve, arm);
    }

    private static Worked<Result> finish(Case c, Working w, Torques t, double left) {
        Double low = c.frictionLow();
        double mu = low == null ? c.friction() : low;
        double chamfer = Math.atan(c.chamferRadius() / (mu * t.arm()));
        double release = Math.atan(c.friction());
        double area = c.cones().stream()
                .mapToDouble(cone -> Math.PI * cone.diameter() * cone.width())
                .sum();
        double pressure = c.cones().size() * c.force() / Math.sin(c.coneHalfAngle()) / area;
        Double difference = difference(c, w);
        double widest = c.cones().stream().mapToDouble(Cone::diameter).max().orElseThrow();
        Double sliding = difference == null ? null : (Double) (difference * widest / 2);
        Double inertia = inertia(c, w);
        Double time = null;
        Double work = null;
        Double specificWork = null;
        Double power = null;
        if (inertia != null && difference != null) {
            double slip = w.line(
                    "slip time",
                    c.shift() == Shift.UP
                            ? "inertia × difference / (cone torque + drag)"
                            : "inertia × difference / (cone torque − drag)",
                    inertia * difference / left,
                    Kind.TIME,
                    SOURCE);
            double joule = w.line(
                    "friction work",
                    "cone torque × difference × time / 2",
                    t.cone() * difference * slip / 2,
                    Kind.ENERGY,
                    SOURCE);
            time = slip;
            work = joule;
            specificWork = joule / area * 1e-6;
            power = slip > 0 ? (Double) (joule / slip / area * 1e-6) : null;
        }
        cautions(c, w, t, release);
        LiningLimits.cautions(w, c.lining(), sliding, pressure, specificWork, power);
        return w.worked(new Result(
                t.cone(),
                t.index(),
                t.worst(),
                t.reserve(),
                t.index() > 0 ? Math.min(1e6, t.cone() / t.index()) : 1e6,
                t.reserve() > 1,
                chamfer,
                release,
                c.coneHalfAngle() > release,
                pressure,
                difference,
                sliding,
                time,
                work,
                specificWork,
                power));
    }

    private static @Nullable Double inertia(Case c, Working w) {
        Double reduced = c.reduced();
        return reduced == null || c.masses().isEmpty()
                ? reduced
                : (Double) w.line(
                        "inertia at this gear, kg·m²",
                        "Σ inertia × (speed by that of the gear)²",
                        reduced,
                        Kind.NUMBER,
                        SOURCE);
    }

    private static @Nullable Double difference(Case c, Working w) {
        Double speed = c.inputSpeed();
        Double from = c.ratioFrom();
        Double to = c.ratioTo();
        if (speed == null || from == null || to == null) {
            return c.speedDifference();
        }
        return w.line(
                "speed difference",
                "output speed × |ratio before / ratio after − 1|",
                speed / from * Math.abs(from / to - 1),
                Kind.ROTATION,
                SOURCE);
    }

    private static void cautions(Case c, Working w, Torques t, double release) {
        if (!(t.reserve() > 1)) {
            w.caution(
                    c.friction() * t.arm() * c.force() > t.index()
                            ? "Locks only with the help of chamfer friction: with oiled, polished chamfers the sleeve can"
                                    + " go through early and crunch."
                            : "Does not lock: the sleeve goes through before the speeds are equal.");
        }
        if (!(c.coneHalfAngle() > release)) {
            w.caution("The cone holds itself: it will not let go freely after the shift.");
        }
        if (c.frictionLow() == null) {
            w.caution("No lowest friction given: the worst case takes the friction as given. New oil can lower it.");
        }
        w.caution("Angles are half angles: the cone from the axis, the chamfer from the axis.");
        if (c.shift() == Shift.DOWN && c.drag() > 0) {
            w.caution("Cold oil and a down-shift into the lowest gear is the case that fails.");
        }
    }
}
