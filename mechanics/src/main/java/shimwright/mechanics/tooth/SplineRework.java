package shimwright.mechanics.tooth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code spline-rework}: a worn spline built up and finished to suit its measured mate. */
public final class SplineRework {
    private static final String SHOP = "common practice, no source";
    private static final Pins.Keys SHAFT_KEYS = new Pins.Keys("shaftPin", "overPins", "overPins");
    private static final Pins.Keys HUB_KEYS = new Pins.Keys("hubPin", "betweenPins", "betweenPins");

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "spline-rework",
            "Spline rework",
            "Finished size over or between pins for a built-up spline from its measured mate, with tolerance and stock.",
            List.of("ISO 4156-1:2021, actual and effective size", "ANSI B92.1-1996", SHOP),
            Case.class,
            Result.class,
            SplineRework::work);

    private SplineRework() {}

    /** What the wanted clearance counts. */
    public enum Play {
        /** Space width less tooth thickness, as pins see it. */
        ACTUAL,
        /** What a hub can turn: less by the errors of form and position of all teeth. */
        EFFECTIVE
    }

    /** The part that is worked. */
    public enum Part {
        SHAFT,
        HUB
    }

    /** The flanks before the work. */
    public enum Flanks {
        SOFT,
        THROUGH_HARDENED,
        CASE_HARDENED,
        INDUCTION_HARDENED
    }

    /** Lengths in metres, angles in radians; clearances are along the pitch circle and positive for play. */
    public record Case(
            @Input(meaning = "number of teeth", min = 3, max = 500, example = "24")
            int teeth,

            @Input(kind = Kind.LENGTH, meaning = "module", min = 5e-5, max = 0.1, example = "2 mm") @Nullable
            Double module,

            @Input(meaning = "diametral pitch, teeth per inch", min = 0.2, max = 500) @Nullable
            Double diametralPitch,

            @Input(
                    kind = Kind.ANGLE,
                    meaning = "pressure angle",
                    min = Toothing.LEAST_ANGLE,
                    max = Toothing.MOST_ANGLE,
                    example = "30°")
            double pressureAngle,

            @Input(meaning = "the part that is built up and finished", orElse = "shaft")
            Part part,

            @Input(kind = Kind.LENGTH, meaning = "shaft, read over pins", min = 1e-4, max = 5, example = "54.050 mm")
            double overPins,

            @Input(kind = Kind.LENGTH, meaning = "measured pin for the shaft", min = 1e-5, max = 0.5, example = "4 mm")
            double shaftPin,

            @Input(kind = Kind.LENGTH, meaning = "hub, read between pins", min = 1e-4, max = 5, example = "42.72139 mm")
            double betweenPins,

            @Input(kind = Kind.LENGTH, meaning = "measured pin for the hub", min = 1e-5, max = 0.5, example = "3.5 mm")
            double hubPin,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "least clearance wanted when finished, negative for a tight fit",
                    min = -1e-3,
                    max = 5e-3,
                    example = "0.030 mm")
            double clearance,

            @Input(meaning = "what that clearance counts", orElse = "actual")
            Play counts,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "tolerance of the finished thickness or space, added on the loose side",
                    min = 0,
                    max = 1e-3,
                    example = "0.020 mm")
            double tolerance,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "form and position errors of both parts together, taken off the actual clearance",
                    min = 0,
                    max = 1e-3)
            @Nullable
            Double variations,

            @Input(kind = Kind.LENGTH, meaning = "play of the worn pair on a dial, hub held", min = 0, max = 2e-2)
            @Nullable
            Double dialPlay,

            @Input(kind = Kind.LENGTH, meaning = "radius at which the dial stood", min = 1e-3, max = 2) @Nullable
            Double dialRadius,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "nominal thickness of the tooth, or space of the hub",
                    min = 1e-5,
                    max = 0.5)
            @Nullable
            Double nominal,

            @Input(meaning = "the flanks before the work", example = "soft")
            Flanks flanks,

            @Input(meaning = "hardness and depth wanted after the work", orElse = "")
            String hardnessPlan) {}

    /** Lengths in metres, angles in radians. */
    public record Result(
            @Output(kind = Kind.LENGTH, meaning = "finished size at the tight limit", decimals = 4)
            double finished,

            @Output(kind = Kind.LENGTH, meaning = "finished size at the loose limit", decimals = 4)
            double finishedLoose,

            @Output(kind = Kind.LENGTH, meaning = "tolerance of that size", decimals = 4)
            double sizeTolerance,

            @Output(kind = Kind.LENGTH, meaning = "finished size over the worn size, signed", decimals = 4)
            double overWorn,

            @Output(kind = Kind.LENGTH, meaning = "material to put back on each flank", decimals = 4)
            double perFlank,

            @Output(kind = Kind.LENGTH, meaning = "finished thickness or space at the tight limit", decimals = 4)
            double target,

            @Output(kind = Kind.LENGTH, meaning = "shaft tooth thickness as worn", decimals = 4)
            double thickness,

            @Output(kind = Kind.LENGTH, meaning = "hub space width as it is", decimals = 4)
            double space,

            @Output(kind = Kind.LENGTH, meaning = "worn from the nominal, both flanks", decimals = 4) @Nullable
            Double wear,

            @Output(kind = Kind.LENGTH, meaning = "actual clearance now", decimals = 4)
            double actualNow,

            @Output(kind = Kind.ANGLE, meaning = "turning play now by the pins, an upper bound", decimals = 4)
            double turningPlay,

            @Output(kind = Kind.LENGTH, meaning = "effective clearance now by the dial", decimals = 4) @Nullable
            Double effectiveNow,

            @Output(kind = Kind.LENGTH, meaning = "form and position errors of both parts", decimals = 4) @Nullable
            Double variations,

            @Output(kind = Kind.LENGTH, meaning = "effective clearance when finished", decimals = 4) @Nullable
            Double effectiveFinished) {}

    private record Measured(Toothing t, double thickness, double space) {}

    /**
     * Finished size of the worked part from its measured mate.
     *
     * @param c the case, straight splines, both readings at 20 °C
     * @return refused where a reading leaves no tooth or space, the effective clearance is asked for without the
     *     errors, a hardened flank comes without a hardness plan, or the part needs no material. Source: involute
     *     geometry of ISO 4156-1 and ANSI B92.1; effective size of ISO 4156-1, definitions
     */
    public static Outcome<Worked<Result>> work(Case c) {
        Working w = new Working();
        List<Refusal> faults = new ArrayList<>();
        Optional<Toothing> read =
                Toothing.read(c.teeth(), c.module(), c.diametralPitch(), c.pressureAngle(), 0, Plane.NORMAL, faults);
        gates(c, faults);
        if (read.isEmpty()) {
            return Outcome.refused(faults);
        }
        Toothing t = read.get();
        t.show(w);
        Outcome<Double> thickness = Pins.arc(w, Side.EXTERNAL, t, c.overPins(), c.shaftPin(), SHAFT_KEYS);
        Outcome<Double> space = Pins.arc(w, Side.INTERNAL, t, c.betweenPins(), c.hubPin(), HUB_KEYS);
        faults.addAll(thickness.refusals());
        faults.addAll(space.refusals());
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        return finish(c, w, new Measured(t, thickness.orElseThrow(), space.orElseThrow()));
    }

    private static void gates(Case c, List<Refusal> faults) {
        boolean hard = c.flanks() == Flanks.CASE_HARDENED || c.flanks() == Flanks.INDUCTION_HARDENED;
        if (hard && c.hardnessPlan().isBlank()) {
            faults.add(Refusal.of(
                    "hardnessPlan",
                    "the heat of build-up takes the hardness out of these flanks, and no plan is given",
                    "Write the hardness and depth wanted after the work, and how they are got"));
        }
        if ((c.dialPlay() == null) != (c.dialRadius() == null)) {
            faults.add(Refusal.of("dialPlay", "reading and radius belong together", "Give both, or neither"));
        }
        if (c.counts() == Play.EFFECTIVE && c.variations() == null && c.dialPlay() == null) {
            faults.add(Refusal.of(
                    "variations",
                    "an effective clearance needs the errors of form and position",
                    "Give variations, or the play on a dial with its radius, or count the actual clearance"));
        }
    }

    private static Outcome<Worked<Result>> finish(Case c, Working w, Measured m) {
        double now = w.line("actual clearance now", "space − thickness", m.space() - m.thickness(), Kind.LENGTH);
        double turning =
                w.line("turning play now", "2 × clearance / d", 2 * now / m.t().reference(), Kind.ANGLE, "geometry");
        Double effective = effective(c, w, m);
        Double byDial = effective == null
                ? null
                : (Double) w.line("errors by the readings", "actual − effective", now - effective, Kind.LENGTH);
        Double given = c.variations();
        Double variations = given != null ? given : byDial;
        boolean effectiveCounts = c.counts() == Play.EFFECTIVE;
        double wanted = c.clearance() + (effectiveCounts && variations != null ? variations : 0);
        boolean shaft = c.part() == Part.SHAFT;
        double target = w.line(
                shaft ? "finished thickness, tight limit" : "finished space, tight limit",
                (shaft ? "space − clearance" : "thickness + clearance") + (effectiveCounts ? " and errors" : ""),
                shaft ? m.space() - wanted : m.thickness() + wanted,
                Kind.LENGTH,
                SHOP);
        double worn = shaft ? m.thickness() : m.space();
        double stock = (shaft ? target - worn : worn - target) / 2;
        if (!(stock > 0)) {
            return Outcome.refused(Refusal.of(
                    "clearance",
                    "the pair has " + PinMeasurement.mm(now) + " now, so the part would have to lose material",
                    "Nothing to build up: keep it, or ask for less clearance"));
        }
        w.line("each flank", shaft ? "(finished − worn) / 2" : "(worn − finished) / 2", stock, Kind.LENGTH);
        cautions(c, w, byDial);
        double loose = target + (shaft ? -c.tolerance() : c.tolerance());
        Side side = shaft ? Side.EXTERNAL : Side.INTERNAL;
        Pins.Keys keys = new Pins.Keys(shaft ? "shaftPin" : "hubPin", "clearance", "clearance");
        double pin = shaft ? c.shaftPin() : c.hubPin();
        double old = shaft ? c.overPins() : c.betweenPins();
        Double left =
                variations == null ? null : (Double) (effectiveCounts ? c.clearance() : c.clearance() - variations);
        Double nominal = c.nominal();
        Double wear = nominal == null ? null : (Double) (shaft ? nominal - worn : worn - nominal);
        Outcome<Pins.Seat> tight = Pins.seat(w, side, m.t(), target, pin, keys);
        return tight.flatMap(seat -> Pins.seat(w, side, m.t(), loose, pin, keys)
                .map(end -> w.worked(new Result(
                        seat.size(),
                        end.size(),
                        Math.abs(seat.size() - end.size()),
                        seat.size() - old,
                        stock,
                        target,
                        m.thickness(),
                        m.space(),
                        wear,
                        now,
                        turning,
                        effective,
                        variations,
                        left))));
    }

    private static @Nullable Double effective(Case c, Working w, Measured m) {
        Double dial = c.dialPlay();
        Double radius = c.dialRadius();
        if (dial == null || radius == null) {
            return null;
        }
        return w.line(
                "effective clearance now",
                "dial × d / (2 × radius)",
                dial * m.t().reference() / (2 * radius),
                Kind.LENGTH,
                "geometry");
    }

    private static void cautions(Case c, Working w, @Nullable Double byDial) {
        w.caution(
                "Pins show the actual size; a hub goes on by the effective size. Try the mate before the part leaves.");
        w.caution("Mind both ends: measure at three positions and along the length. Wear on one flank only needs a"
                + " reference on unworn spline.");
        if (byDial != null && byDial < 0) {
            w.caution("The dial shows more play than the pins allow: one of the two readings is wrong.");
        }
        Double given = c.variations();
        if (byDial != null && given != null && byDial > given) {
            w.caution("Pins and dial differ by more than the errors given: read both again.");
        }
        if (!c.hardnessPlan().isBlank()) {
            String plan = c.hardnessPlan().strip();
            w.caution("Hardness to be checked after the work: " + plan + (plan.endsWith(".") ? "" : "."));
        }
        w.caution("Build-up: preheat, relieve, finish the flanks last, then check run-out and look for cracks.");
    }
}
