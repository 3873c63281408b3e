package shimwright.mechanics.bearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Group;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code preload-drag}: preload, drag torque and the pull of a string, either way round. */
public final class PreloadDrag {
    private static final String FRICTION = "bearing makers' rule M = μ P d/2 with their range of μ, read";
    private static final String RIB = "bearing makers' rule M = e μ cos β Fa for rollers that slide on their rib, read";

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "preload-drag",
            "Preload and drag",
            "The drag torque and string pull that an axial preload gives, or the preload that a pull read stands for.",
            List.of(FRICTION, RIB, "pull × radius: army manuals for final drives, pinion bearing preload"),
            Case.class,
            Result.class,
            PreloadDrag::work);

    private PreloadDrag() {}

    /** Kind of bearing, with the printed range of its coefficient of friction on the bore's radius. */
    public enum Bearing {
        TAPER(0.0017, 0.0025),
        ANGULAR_CONTACT(0.0012, 0.0020),
        DEEP_GROOVE(0.0010, 0.0015),
        THRUST_BALL(0.0010, 0.0015);

        private final double low;
        private final double high;

        Bearing(double low, double high) {
            this.low = low;
            this.high = high;
        }
    }

    /** One bearing of the pair; length in metres. */
    public record One(
            @Input(meaning = "kind of bearing", example = "taper")
            Bearing bearing,

            @Input(kind = Kind.LENGTH, meaning = "bore of the bearing", min = 0.003, max = 0.5, example = "35 mm")
            double bore) {}

    /** Where a roller slides on the rib of its ring when it hardly turns. */
    public record Rib(
            @Input(
                    kind = Kind.LENGTH,
                    meaning = "taper turned by hand: mean radius at which the rollers slide on the rib",
                    min = 0.002,
                    max = 0.3)
            @Nullable
            Double ribRadius,

            @Input(meaning = "friction on the rib, oiled, at the start", orElse = "0.20", min = 0.02, max = 0.5)
            double ribFriction,

            @Input(
                    kind = Kind.ANGLE,
                    meaning = "half angle of the rollers' large ends, as of the cone",
                    orElse = "10°",
                    min = 0,
                    max = 0.6)
            double rollerAngle) {}

    /** The pair, the seals and what is known of preload and pull; force in newtons, lengths in metres, torque in N·m. */
    public record Case(
            @Input(
                    meaning = "bearings that share the preload: kind: bore",
                    most = 4,
                    example = "taper: 35 mm; taper: 30 mm")
            List<One> bearings,

            @Group Rib rib,

            @Input(kind = Kind.FORCE, meaning = "axial preload", min = 1, max = 1e6, example = "2000 N") @Nullable
            Double preload,

            @Input(kind = Kind.FORCE, meaning = "pull read on the string, steady", min = 0.01, max = 5000) @Nullable
            Double pull,

            @Input(kind = Kind.TORQUE, meaning = "torque read instead of a pull", min = 1e-4, max = 200) @Nullable
            Double torque,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "radius at which the string leaves, half its thickness included",
                    min = 0.003,
                    max = 1,
                    example = "40 mm")
            @Nullable
            Double radius,

            @Input(
                    kind = Kind.TORQUE,
                    meaning = "drag of lip seals, as read before the preload was there",
                    orElse = "0 N·m",
                    min = 0,
                    max = 50)
            double sealDrag) {}

    /** Forces in newtons, torques in N·m; a pair of figures is the lowest and the highest that the friction leaves open. */
    public record Result(
            @Output(kind = Kind.TORQUE, meaning = "drag of the bearings, least", decimals = 3) @Nullable
            Double dragLow,

            @Output(kind = Kind.TORQUE, meaning = "drag of the bearings, most", decimals = 3) @Nullable
            Double dragHigh,

            @Output(kind = Kind.TORQUE, meaning = "torque to turn it, seals and all, least", decimals = 3)
            double torqueLow,

            @Output(kind = Kind.TORQUE, meaning = "torque to turn it, seals and all, most", decimals = 3)
            double torqueHigh,

            @Output(kind = Kind.FORCE, meaning = "pull on the string, least", decimals = 1) @Nullable
            Double pullLow,

            @Output(kind = Kind.FORCE, meaning = "pull on the string, most", decimals = 1) @Nullable
            Double pullHigh,

            @Output(kind = Kind.FORCE, meaning = "preload, least")
            double preloadLow,

            @Output(kind = Kind.FORCE, meaning = "preload, most")
            double preloadHigh) {}

    /**
     * Drag = Σ μ d/2 × preload with the lowest and highest μ of each kind, or Σ e μr cos β × preload for tapers turned by hand
     * where the rib's radius is given; torque = drag + seals = pull × radius; a torque read is solved for the preload.
     *
     * @param c forces in N, lengths in m, torques in N·m
     * @return forces in N, torques in N·m; refused: not exactly one of preload, pull and torque; a pull without a radius;
     *     a torque no larger than the seals' share; a rib for bearings that have none
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = new ArrayList<>();
        long known = Stream.of(c.preload(), c.pull(), c.torque())
                .filter(Objects::nonNull)
                .count();
        if (known != 1) {
            refusals.add(Refusal.of(
                    "preload",
                    known == 0
                            ? "neither preload, pull nor torque is given"
                            : "more than one of preload, pull and torque given",
                    "Give exactly one of them; the others are worked out"));
        }
        if (c.pull() != null && c.radius() == null) {
            refusals.add(Refusal.of(
                    "radius",
                    "a pull says nothing without it",
                    "Measure the drum and add half the string's thickness"));
        }
        if (c.rib().ribRadius() != null && c.bearings().stream().anyMatch(one -> one.bearing() != Bearing.TAPER)) {
            refusals.add(Refusal.of(
                    "ribRadius", "only taper bearings slide on a rib", "Leave it out, or give tapers alone"));
        }
        Double read = read(c);
        if (read != null && read <= c.sealDrag()) {
            refusals.add(Refusal.of(
                    "sealDrag",
                    "the seals' " + Quantities.brief(c.sealDrag(), Units.NM) + " leave nothing of the "
                            + Quantities.brief(read, Units.NM) + " read",
                    "There is no preload, or one of the two was read otherwise; read both at the same slow speed"));
        }
        return refusals.isEmpty() ? Outcome.ok(turned(c, read)) : Outcome.refused(refusals);
    }

    private static @Nullable Double read(Case c) {
        Double pull = c.pull();
        Double radius = c.radius();
        return pull != null && radius != null ? Double.valueOf(pull * radius) : c.torque();
    }

    private static Worked<Result> turned(Case c, @Nullable Double read) {
        Working w = new Working();
        double[] levers = levers(c, w);
        Double radius = c.radius();
        double preloadLow;
        double preloadHigh;
        double torqueLow;
        double torqueHigh;
        Double preload = c.preload();
        if (preload != null) {
            preloadLow = preload;
            preloadHigh = preload;
            torqueLow =
                    w.line("torque, least", "preload × lever + seals", preload * levers[0] + c.sealDrag(), Kind.TORQUE);
            torqueHigh =
                    w.line("torque, most", "preload × lever + seals", preload * levers[1] + c.sealDrag(), Kind.TORQUE);
        } else {
            double torque = read == null ? Double.NaN : read;
            torqueLow = c.pull() == null ? torque : w.line("torque", "pull × radius", torque, Kind.TORQUE);
            torqueHigh = torqueLow;
            double drag = w.line("drag of the bearings", "torque − seals", torque - c.sealDrag(), Kind.TORQUE);
            preloadLow = w.line("preload, least", "drag/lever, most", drag / levers[1], Kind.FORCE);
            preloadHigh = w.line("preload, most", "drag/lever, least", drag / levers[0], Kind.FORCE);
        }
        Double pullLow = null;
        Double pullHigh = null;
        if (radius != null) {
            pullLow = w.line("pull, least", "torque/radius", torqueLow / radius, Kind.FORCE);
            pullHigh = w.line("pull, most", "torque/radius", torqueHigh / radius, Kind.FORCE);
        }
        cautions(c, w);
        return w.worked(new Result(
                torqueLow - c.sealDrag(),
                torqueHigh - c.sealDrag(),
                torqueLow,
                torqueHigh,
                pullLow,
                pullHigh,
                preloadLow,
                preloadHigh));
    }

    /** Torque per force of all bearings, least and most, in metres. */
    private static double[] levers(Case c, Working w) {
        Double rib = c.rib().ribRadius();
        if (rib != null) {
            double one = rib * c.rib().ribFriction() * Math.cos(c.rib().rollerAngle());
            double all = w.line("lever", "bearings × e μ cos β", c.bearings().size() * one, Kind.LENGTH, RIB);
            return new double[] {all, all};
        }
        double low = 0;
        double high = 0;
        for (One one : c.bearings()) {
            low += one.bearing().low * one.bore() / 2;
            high += one.bearing().high * one.bore() / 2;
        }
        return new double[] {
            w.line("lever, least", "Σ μ d/2", low, Kind.LENGTH, FRICTION),
            w.line("lever, most", "Σ μ d/2", high, Kind.LENGTH, FRICTION)
        };
    }

    private static void cautions(Case c, Working w) {
        if (c.rib().ribRadius() == null && c.bearings().stream().anyMatch(one -> one.bearing() == Bearing.TAPER)) {
            w.caution(
                    "These coefficients are for a running bearing. Turned slowly by hand a taper slides on its rib and drags "
                            + "two to several times as much: trust the book's drag before this preload, or give the rib.");
        }
        w.caution(
                "The book's drag for this very unit stands above any figure here; note whether it means new or used bearings, "
                        + "with or without seals, starting or turning.");
        w.caution(
                "Oil the bearings, turn ten times to seat the rollers, wind several turns of string, pull square and steadily, "
                        + "and read while it turns, not at the first jerk.");
        if (c.sealDrag() == 0) {
            w.caution(
                    "With seals in, read their drag first and give it; it is often as large as that of the bearings.");
        }
        w.caution("A collapsed spacer does not come back: when the drag is over its limit a new one is needed.");
    }
}
