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

/** The worksheet {@code backlash}: one backlash in all its meanings, read or computed from thickness. */
public final class Backlash {
    /** Nearer to the base circles than this the radial backlash would be beyond any size. */
    private static final double ROOM = 1.000001;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "backlash",
            "Backlash",
            "One backlash in all its meanings, from a reading or from tooth thickness and centre distance.",
            List.of("ISO 21771-1:2022, backlash"),
            Case.class,
            Result.class,
            Backlash::work);

    private Backlash() {}

    /** Which backlash a number is. */
    public enum Meaning {
        /** Arc in the plane of rotation at the working circle. */
        CIRCUMFERENTIAL,
        /** The same arc carried to the reference circle. */
        AT_REFERENCE,
        /** Arc square to the tooth at the reference circle. */
        NORMAL_ARC,
        /** Shortest distance between the flanks, as a feeler sees it. */
        NORMAL,
        /** Closing of the centre distance that takes up the play. */
        RADIAL,
        /** Turning of gear 1 with gear 2 held. */
        ANGULAR_1,
        /** Turning of gear 2 with gear 1 held. */
        ANGULAR_2,
        /** A dial square to the radius on gear 1, at a measuring radius. */
        DIAL_1,
        /** A dial square to the radius on gear 2, at a measuring radius. */
        DIAL_2
    }

    /** Lengths in metres, angles in radians. */
    public record Case(
            @Input(meaning = "teeth of gear 1", min = 4, max = 1000, example = "20")
            int teeth1,

            @Input(meaning = "teeth of gear 2", min = 4, max = 1000, example = "40")
            int teeth2,

            @Input(kind = Kind.LENGTH, meaning = "normal module", min = 5e-5, max = 0.1, example = "3 mm") @Nullable
            Double module,

            @Input(meaning = "diametral pitch, teeth per inch", min = 0.2, max = 500) @Nullable
            Double diametralPitch,

            @Input(
                    kind = Kind.ANGLE,
                    meaning = "normal pressure angle",
                    orElse = "20°",
                    min = Toothing.LEAST_ANGLE,
                    max = Toothing.MOST_ANGLE)
            double pressureAngle,

            @Input(
                    kind = Kind.ANGLE,
                    meaning = "helix angle at the reference circle",
                    orElse = "0°",
                    min = 0,
                    max = Toothing.MOST_HELIX)
            double helix,

            @Input(kind = Kind.LENGTH, meaning = "centre distance at work", min = 1e-4, max = 5, example = "90.1 mm")
            double centreDistance,

            @Input(kind = Kind.LENGTH, meaning = "backlash read", min = 0, max = 2e-2) @Nullable
            Double length,

            @Input(kind = Kind.ANGLE, meaning = "backlash read as an angle", min = 0, max = 0.5) @Nullable
            Double angle,

            @Input(meaning = "which backlash was read", orElse = "circumferential")
            Meaning meaning,

            @Input(kind = Kind.LENGTH, meaning = "measuring radius of the dial", min = 1e-3, max = 5) @Nullable
            Double radius,

            @Input(kind = Kind.LENGTH, meaning = "normal tooth thickness of gear 1", min = 1e-5, max = 0.3) @Nullable
            Double thickness1,

            @Input(kind = Kind.LENGTH, meaning = "normal tooth thickness of gear 2", min = 1e-5, max = 0.3) @Nullable
            Double thickness2,

            @Input(meaning = "profile shift of gear 1", min = -5, max = 5, example = "0") @Nullable
            Double shift1,

            @Input(meaning = "profile shift of gear 2", min = -5, max = 5, example = "0") @Nullable
            Double shift2,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "thinning of both teeth together, taken off the normal thickness of the shifts",
                    orElse = "0 mm",
                    min = 0,
                    max = 1e-2)
            double thinning) {}

    /** Lengths in metres, angles in radians. */
    public record Result(
            @Output(kind = Kind.LENGTH, meaning = "circumferential, at the working circle", decimals = 4)
            double circumferential,

            @Output(kind = Kind.LENGTH, meaning = "circumferential, at the reference circle", decimals = 4)
            double atReference,

            @Output(kind = Kind.LENGTH, meaning = "arc square to the tooth, at the reference circle", decimals = 4)
            double normalArc,

            @Output(kind = Kind.LENGTH, meaning = "normal, between the flanks", decimals = 4)
            double normal,

            @Output(kind = Kind.LENGTH, meaning = "radial, closing of the centres", decimals = 4)
            double radial,

            @Output(kind = Kind.ANGLE, meaning = "angular, gear 1 with gear 2 held", decimals = 4)
            double angular1,

            @Output(kind = Kind.ANGLE, meaning = "angular, gear 2 with gear 1 held", decimals = 4)
            double angular2,

            @Output(kind = Kind.LENGTH, meaning = "on a dial at the measuring radius, gear 1", decimals = 4) @Nullable
            Double dial1,

            @Output(kind = Kind.LENGTH, meaning = "on a dial at the measuring radius, gear 2", decimals = 4) @Nullable
            Double dial2,

            @Output(meaning = "change of centre distance per circumferential backlash, 1/(2 tan awt)")
            double distancePerBacklash,

            @Output(meaning = "sum of generating shifts", decimals = 6)
            double generatingShiftSum) {}

    /**
     * All meanings of one backlash.
     *
     * @param c the case: a reading with its meaning, or thicknesses, or shifts with thinning, of both gears
     * @return refused where none or several of these are given, a dial has no radius, the shafts stand closer than the
     *     base circles allow, or the teeth come out thicker than the space. Source: ISO 21771-1:2022, backlash
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> faults = new ArrayList<>();
        Optional<ToothingPair> pair = ToothingPair.read(
                c.teeth1(),
                c.teeth2(),
                c.module(),
                c.diametralPitch(),
                new ToothingPair.Basis(c.pressureAngle(), c.helix(), Plane.NORMAL),
                faults);
        gates(c, faults);
        if (pair.isPresent()) {
            double least = pair.get().reference() * Math.cos(pair.get().at());
            if (!(c.centreDistance() > ROOM * least)) {
                faults.add(Refusal.of(
                        "centreDistance",
                        PinMeasurement.mm(c.centreDistance()) + " is less than the base circles allow, "
                                + PinMeasurement.mm(least),
                        "Look at teeth, module and helix"));
            }
        }
        if (pair.isEmpty() || !faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        Working w = new Working();
        ToothingPair p = pair.get();
        double awt = w.line(
                "working angle awt",
                "arccos(a0 × cos(at) / a)",
                p.angle(c.centreDistance()),
                Kind.ANGLE,
                ToothingPair.SOURCE);
        return backlash(c, p, w, awt).map(arc -> finish(c, p, w, awt, arc));
    }

    private static void gates(Case c, List<Refusal> faults) {
        boolean turned = c.meaning() == Meaning.ANGULAR_1 || c.meaning() == Meaning.ANGULAR_2;
        boolean dial = c.meaning() == Meaning.DIAL_1 || c.meaning() == Meaning.DIAL_2;
        boolean read = c.length() != null || c.angle() != null;
        boolean thick = c.thickness1() != null || c.thickness2() != null;
        boolean shifts = c.shift1() != null || c.shift2() != null;
        if ((read ? 1 : 0) + (thick ? 1 : 0) + (shifts ? 1 : 0) != 1) {
            faults.add(Refusal.of(
                    "length",
                    read || thick || shifts
                            ? "more than one of reading, thicknesses and shifts given"
                            : "nothing given",
                    "Give a reading with its meaning, or thickness1 and thickness2, or shift1 and shift2"));
        }
        if (thick && (c.thickness1() == null || c.thickness2() == null)) {
            faults.add(Refusal.of("thickness1", "both gears are needed", "Give thickness1 and thickness2"));
        }
        if (shifts && (c.shift1() == null || c.shift2() == null)) {
            faults.add(Refusal.of("shift1", "both gears are needed", "Give shift1 and shift2"));
        }
        if (read && (turned != (c.angle() != null) || (c.length() != null && c.angle() != null))) {
            faults.add(Refusal.of(
                    "meaning",
                    turned ? "an angular backlash is an angle" : "this backlash is a length",
                    turned ? "Give angle, and no length" : "Give length, and no angle"));
        }
        if (read && dial && c.radius() == null) {
            faults.add(Refusal.of("radius", "a dial reading needs its radius", "Measure from the axis to the stylus"));
        }
    }

    private static Outcome<Double> backlash(Case c, ToothingPair p, Working w, double awt) {
        Double length = c.length();
        Double angle = c.angle();
        if (length != null || angle != null) {
            double read = length != null ? length : angle == null ? 0 : angle;
            return Outcome.ok(w.line(
                    "circumferential backlash",
                    "from the reading, "
                            + c.meaning()
                                    .name()
                                    .toLowerCase(java.util.Locale.ROOT)
                                    .replace('_', ' '),
                    read / per(c, p, awt, c.meaning()),
                    Kind.LENGTH,
                    ToothingPair.SOURCE));
        }
        double one = arc(c.thickness1(), c.shift1(), p.first());
        double two = arc(c.thickness2(), c.shift2(), p.second()) - (c.thickness1() == null ? c.thinning() : 0);
        double lean = Math.cos(p.first().helix());
        double opened = Involute.of(p.at()) - Involute.of(awt);
        double w1 = working(c, p, 1);
        double w2 = working(c, p, 2);
        double sw1 = w.line(
                "tooth 1 at the working circle",
                "dw1 × (thickness/d + inv(at) − inv(awt))",
                w1 * (one / lean / p.first().reference() + opened),
                Kind.LENGTH,
                ToothingPair.SOURCE);
        double sw2 = w.line(
                "tooth 2 at the working circle",
                "dw2 × (thickness/d + inv(at) − inv(awt))",
                w2 * (two / lean / p.second().reference() + opened),
                Kind.LENGTH,
                ToothingPair.SOURCE);
        double arc = Math.PI * w1 / c.teeth1() - sw1 - sw2;
        if (arc < -1e-12) {
            return Outcome.refused(Refusal.of(
                    "centreDistance",
                    "the teeth are " + PinMeasurement.mm(-arc) + " thicker than the space, so the pair would bind",
                    "Look at thickness, shifts and centre distance"));
        }
        return Outcome.ok(w.line(
                "circumferential backlash",
                "π × dw1/teeth 1 − tooth 1 − tooth 2",
                Math.max(0, arc),
                Kind.LENGTH,
                ToothingPair.SOURCE));
    }

    private static double arc(@Nullable Double thickness, @Nullable Double shift, Toothing t) {
        return thickness != null ? thickness : t.arc(shift == null ? 0 : shift);
    }

    private static double working(Case c, ToothingPair p, int gear) {
        int teeth = gear == 1 ? p.first().teeth() : p.second().teeth();
        return 2 * c.centreDistance() * teeth / (p.first().teeth() + p.second().teeth());
    }

    /** How much of a meaning one metre of circumferential backlash is. */
    private static double per(Case c, ToothingPair p, double awt, Meaning meaning) {
        Toothing t = p.first();
        double normal = Math.cos(awt) * Math.cos(t.baseHelix());
        Double radius = c.radius();
        double at = radius == null ? 0 : radius;
        return switch (meaning) {
            case CIRCUMFERENTIAL -> 1;
            case AT_REFERENCE -> t.reference() / working(c, p, 1);
            case NORMAL_ARC -> normal / Math.cos(t.normalAngle());
            case NORMAL -> normal;
            case RADIAL -> 1 / (2 * Math.tan(awt));
            case ANGULAR_1 -> 2 / working(c, p, 1);
            case ANGULAR_2 -> 2 / working(c, p, 2);
            case DIAL_1 -> 2 * at / working(c, p, 1);
            case DIAL_2 -> 2 * at / working(c, p, 2);
        };
    }

    private static Worked<Result> finish(Case c, ToothingPair p, Working w, double awt, double arc) {
        double normal = w.line(
                "normal backlash",
                "circumferential × cos(awt) × cos(bb)",
                arc * per(c, p, awt, Meaning.NORMAL),
                Kind.LENGTH,
                ToothingPair.SOURCE);
        double radial = w.line(
                "radial backlash",
                "circumferential / (2 × tan(awt))",
                arc * per(c, p, awt, Meaning.RADIAL),
                Kind.LENGTH,
                ToothingPair.SOURCE);
        double turn = w.line(
                "gear 1 turns", "2 × circumferential / dw1", arc * per(c, p, awt, Meaning.ANGULAR_1), Kind.ANGLE);
        double sum = p.shiftSum(awt)
                - normal / (2 * p.first().normalModule() * Math.sin(p.first().normalAngle()));
        boolean dial = c.radius() != null;
        w.caution("Measure at several places round the gear: the smallest decides binding, the spread is run-out.");
        w.caution(
                "Worn case bores or a loose shaft open the mesh as worn teeth do: push the shafts both ways to tell.");
        return w.worked(new Result(
                arc,
                arc * per(c, p, awt, Meaning.AT_REFERENCE),
                arc * per(c, p, awt, Meaning.NORMAL_ARC),
                normal,
                radial,
                turn,
                arc * per(c, p, awt, Meaning.ANGULAR_2),
                dial ? (Double) (arc * per(c, p, awt, Meaning.DIAL_1)) : null,
                dial ? (Double) (arc * per(c, p, awt, Meaning.DIAL_2)) : null,
                per(c, p, awt, Meaning.RADIAL),
                sum));
    }
}
