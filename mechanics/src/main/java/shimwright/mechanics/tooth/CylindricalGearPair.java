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

/** The worksheet {@code gear-pair}: how two outside gears work together on parallel shafts. */
public final class CylindricalGearPair {
    private static final double LOWEST_SHARE = 1.1;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "gear-pair",
            "Gear pair",
            "Working angle, profile shifts, diameters and contact ratio of two gears from their centre distance.",
            List.of(ToothingPair.SOURCE),
            Case.class,
            Result.class,
            CylindricalGearPair::work);

    private CylindricalGearPair() {}

    /** Lengths in metres, angles in radians; tip circles are diameters. */
    public record Case(
            @Input(meaning = "teeth of gear 1", min = 4, max = 1000, example = "12")
            int teeth1,

            @Input(meaning = "teeth of gear 2", min = 4, max = 1000, example = "24")
            int teeth2,

            @Input(kind = Kind.LENGTH, meaning = "module", min = 5e-5, max = 0.1, example = "3 mm") @Nullable
            Double module,

            @Input(meaning = "diametral pitch, teeth per inch", min = 0.2, max = 500) @Nullable
            Double diametralPitch,

            @Input(
                    kind = Kind.ANGLE,
                    meaning = "pressure angle",
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

            @Input(meaning = "plane in which module, pressure angle and shifts are given", orElse = "normal")
            Plane plane,

            @Input(kind = Kind.LENGTH, meaning = "centre distance at work", min = 1e-4, max = 5, example = "56.5 mm")
            @Nullable
            Double centreDistance,

            @Input(meaning = "profile shift of gear 1", min = -5, max = 5) @Nullable
            Double shift1,

            @Input(meaning = "profile shift of gear 2", min = -5, max = 5) @Nullable
            Double shift2,

            @Input(kind = Kind.LENGTH, meaning = "tip diameter of gear 1 as it is", min = 1e-4, max = 5) @Nullable
            Double tip1,

            @Input(kind = Kind.LENGTH, meaning = "tip diameter of gear 2 as it is", min = 1e-4, max = 5) @Nullable
            Double tip2,

            @Input(kind = Kind.LENGTH, meaning = "tooth width in contact", min = 1e-4, max = 2) @Nullable
            Double faceWidth) {}

    /** Lengths in metres, angles in radians. */
    public record Result(
            @Output(kind = Kind.LENGTH, meaning = "centre distance at work", decimals = 4)
            double centreDistance,

            @Output(kind = Kind.LENGTH, meaning = "reference centre distance", decimals = 4)
            double referenceDistance,

            @Output(kind = Kind.ANGLE, meaning = "transverse pressure angle", decimals = 4)
            double transverseAngle,

            @Output(kind = Kind.ANGLE, meaning = "working transverse pressure angle", decimals = 4)
            double workingAngle,

            @Output(meaning = "involute of the working angle", decimals = 7)
            double workingInvolute,

            @Output(meaning = "sum of profile shifts without backlash", decimals = 5)
            double shiftSum,

            @Output(meaning = "centre distance increment factor", decimals = 5)
            double increment,

            @Output(kind = Kind.LENGTH, meaning = "working diameter of gear 1")
            double working1,

            @Output(kind = Kind.LENGTH, meaning = "working diameter of gear 2")
            double working2,

            @Output(kind = Kind.LENGTH, meaning = "base diameter of gear 1", decimals = 4)
            double base1,

            @Output(kind = Kind.LENGTH, meaning = "base diameter of gear 2", decimals = 4)
            double base2,

            @Output(meaning = "transverse contact ratio", decimals = 3) @Nullable
            Double contactRatio,

            @Output(meaning = "overlap ratio", decimals = 3) @Nullable
            Double overlapRatio,

            @Output(meaning = "total contact ratio", decimals = 3) @Nullable
            Double totalRatio,

            @Output(kind = Kind.LENGTH, meaning = "gap between the tip circles, negative where they overlap") @Nullable
            Double tipGap,

            @Output(kind = Kind.ANGLE, meaning = "helix that fits the centre distance without shift", decimals = 4)
            @Nullable
            Double helixWithoutShift,

            @Output(meaning = "ratio, teeth 2 by teeth 1") double ratio,

            @Output(meaning = "common factor of the tooth counts")
            int commonFactor) {}

    /**
     * Working angle, diameters and contact of a pair, from its centre distance or its shifts.
     *
     * @param c the case; with centre distance and shifts both given the shifts are only compared
     * @return refused where neither is given, the shafts stand closer than the base circles allow, the shifts leave no
     *     angle, or a tip lies inside its base circle. Source: ISO 21771-1:2022, gear pairs; contact ratios
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> faults = new ArrayList<>();
        Optional<ToothingPair> pair = ToothingPair.read(
                c.teeth1(),
                c.teeth2(),
                c.module(),
                c.diametralPitch(),
                new ToothingPair.Basis(c.pressureAngle(), c.helix(), c.plane()),
                faults);
        boolean shifts = c.shift1() != null && c.shift2() != null;
        if (c.centreDistance() == null && !shifts) {
            faults.add(Refusal.of(
                    "centreDistance",
                    "neither centre distance nor both shifts given",
                    "Give centreDistance, or shift1" + " and shift2"));
        }
        if (pair.isEmpty() || !faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        Working w = new Working();
        ToothingPair p = pair.get();
        w.line("reference centre distance a0", "(d1 + d2) / 2", p.reference(), Kind.LENGTH, ToothingPair.SOURCE);
        w.line("transverse pressure angle at", "arctan(tan(pressure angle) / cos(helix))", p.at(), Kind.ANGLE);
        return distance(c, p, w).flatMap(distance -> finish(c, p, w, distance));
    }

    private static double sum(Case c, ToothingPair p) {
        Double one = c.shift1();
        Double two = c.shift2();
        double sum = (one == null ? 0 : one) + (two == null ? 0 : two);
        return c.plane() == Plane.NORMAL ? sum : sum / Math.cos(p.first().helix());
    }

    private static Outcome<Double> distance(Case c, ToothingPair p, Working w) {
        Double given = c.centreDistance();
        if (given != null) {
            if (!(given > p.reference() * Math.cos(p.at()))) {
                return Outcome.refused(Refusal.of(
                        "centreDistance",
                        PinMeasurement.mm(given) + " is less than the base circles allow, "
                                + PinMeasurement.mm(p.reference() * Math.cos(p.at())),
                        "Look at teeth, module and helix"));
            }
            return Outcome.ok(given);
        }
        double involute = p.involuteOf(sum(c, p));
        if (!(involute > 0)) {
            return Outcome.refused(Refusal.of(
                    "shift1", "these shifts bring the gears too close to run", "Look at the sign of the shifts"));
        }
        double angle = Involute.inverse(involute);
        w.line(
                "working angle from the shifts",
                "inv = 2 × (shift 1 + shift 2) × tan(pressure angle)/(teeth 1 + teeth 2) + inv(at)",
                angle,
                Kind.ANGLE,
                ToothingPair.SOURCE);
        return Outcome.ok(w.line(
                "centre distance",
                "a0 × cos(at) / cos(working angle)",
                p.distance(angle),
                Kind.LENGTH,
                ToothingPair.SOURCE));
    }

    private static Outcome<Worked<Result>> finish(Case c, ToothingPair p, Working w, double distance) {
        List<Refusal> faults = new ArrayList<>();
        tipFault(c.tip1(), p.first(), "tip1", faults);
        tipFault(c.tip2(), p.second(), "tip2", faults);
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        double angle = w.line(
                "working angle awt",
                "arccos(a0 × cos(at) / centre distance)",
                p.angle(distance),
                Kind.ANGLE,
                ToothingPair.SOURCE);
        double sum = w.line(
                "sum of shifts",
                "(teeth 1 + teeth 2) × (inv(awt) − inv(at)) / (2 × tan(pressure angle))",
                p.shiftSum(angle),
                Kind.NUMBER,
                ToothingPair.SOURCE);
        Double gap = c.tip1() == null || c.tip2() == null
                ? null
                : (Double) w.line(
                        "gap of the tip circles",
                        "centre distance − (tip 1 + tip 2) / 2",
                        distance - (c.tip1() + c.tip2()) / 2,
                        Kind.LENGTH);
        Double ratio = gap == null || gap >= 0 ? null : contact(c, p, w, distance, angle);
        Double overlap = overlap(c, p, w);
        int factor = ToothingPair.commonFactor(c.teeth1(), c.teeth2());
        cautions(c, p, w, sum, gap, ratio, factor);
        double fit = p.first().normalModule() * (c.teeth1() + c.teeth2()) / (2 * distance);
        int both = c.teeth1() + c.teeth2();
        return Outcome.ok(w.worked(new Result(
                distance,
                p.reference(),
                p.at(),
                angle,
                Involute.of(angle),
                sum,
                (distance - p.reference()) / p.first().normalModule(),
                2 * distance * c.teeth1() / both,
                2 * distance * c.teeth2() / both,
                p.first().base(),
                p.second().base(),
                ratio,
                overlap,
                ratio == null ? null : (Double) (ratio + (overlap == null ? 0 : overlap)),
                gap,
                fit <= 1 ? (Double) Math.acos(fit) : null,
                (double) c.teeth2() / c.teeth1(),
                factor)));
    }

    private static void tipFault(@Nullable Double tip, Toothing t, String place, List<Refusal> faults) {
        if (tip != null && tip <= t.base()) {
            faults.add(Refusal.of(
                    place,
                    PinMeasurement.mm(tip) + " lies inside the base circle of " + PinMeasurement.mm(t.base()),
                    "Is it a diameter?"));
        }
    }

    private static @Nullable Double contact(Case c, ToothingPair p, Working w, double distance, double angle) {
        Double tip1 = c.tip1();
        Double tip2 = c.tip2();
        if (tip1 == null || tip2 == null) {
            return null;
        }
        double leg1 = leg(tip1, p.first());
        double leg2 = leg(tip2, p.second());
        double line = distance * Math.sin(angle);
        if (leg1 > line || leg2 > line) {
            w.caution("A tip reaches below the base circle of its mate: tips and roots may touch. Look at the tip"
                    + " diameters.");
        }
        return w.line(
                "transverse contact ratio",
                "(√(tip1² − db1²)/2 + √(tip2² − db2²)/2 − a × sin(awt)) / (π × mt × cos(at))",
                (leg1 + leg2 - line) / (Math.PI * p.first().transverseModule() * Math.cos(p.at())),
                Kind.NUMBER,
                ToothingPair.SOURCE);
    }

    private static double leg(double tip, Toothing t) {
        return Math.sqrt((tip - t.base()) * (tip + t.base())) / 2;
    }

    private static @Nullable Double overlap(Case c, ToothingPair p, Working w) {
        Double face = c.faceWidth();
        if (face == null) {
            return null;
        }
        return w.line(
                "overlap ratio",
                "width × sin(helix) / (π × module)",
                face * Math.sin(p.first().helix()) / p.first().normalPitch(),
                Kind.NUMBER,
                ToothingPair.SOURCE);
    }

    private static void cautions(
            Case c, ToothingPair p, Working w, double sum, @Nullable Double gap, @Nullable Double ratio, int factor) {
        if (gap != null && gap >= 0) {
            w.caution("The tip circles do not reach each other: these two gears do not mesh.");
        }
        if (ratio != null && ratio < LOWEST_SHARE) {
            w.caution("Contact ratio under 1.1: the next tooth comes in late. Look at worn or chamfered tips.");
        }
        if (Math.abs(sum) > 2.5) {
            w.caution("The shifts would have to sum to more than any usual pair: probably a wrong gear.");
        }
        boolean compare = c.centreDistance() != null && c.shift1() != null && c.shift2() != null;
        if (compare && Math.abs(sum(c, p) - sum) > 0.02) {
            w.caution("The shifts given sum to " + Math.round(sum(c, p) * 1000) / 1000.0
                    + "; this centre distance asks for another sum, the rest is backlash or a wrong figure.");
        }
        if (factor > 1) {
            w.caution("Tooth counts share the factor " + factor
                    + ": the same teeth meet again soon. Mark worn pairs and mate them tooth to tooth.");
        }
    }
}
