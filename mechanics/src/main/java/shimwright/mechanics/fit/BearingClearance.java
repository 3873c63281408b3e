package shimwright.mechanics.fit;

import java.util.ArrayList;
import java.util.Collections;
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

/** The worksheet {@code bearing-clearance}. */
public final class BearingClearance {
    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "bearing-clearance",
            "Bearing clearance after fitting",
            "What the fits and the heat leave of a ball or cylindrical roller bearing's radial clearance.",
            List.of(
                    "Lamé's thick-walled cylinder: Boresi and Schmidt ch. 11",
                    "bearing handbook, eq. 9.1: interference lost by load; effective interference of ground and turned seats"),
            Case.class,
            Result.class,
            BearingClearance::work);

    private BearingClearance() {}

    /**
     * Case of {@code bearing-clearance}; lengths in metres, diametral.
     *
     * @param bore bearing bore
     * @param outside bearing outside diameter
     * @param innerRaceway diameter of the inner raceway; null takes (4 d + D)/5
     * @param outerRaceway diameter of the outer raceway; null takes (d + 4 D)/5
     * @param clearance radial internal clearance before fitting: readings or the two limits
     * @param innerFit inner ring on shaft, interference (+) or clearance (−): readings or the two limits
     * @param outerFit outer ring in housing, likewise
     * @param finish whether the inner fit is taken as measured or corrected for its finish
     * @param shaftBore bore of the shaft, 0 when solid
     * @param shaft what the shaft is made of
     * @param housingOutside outside diameter of the housing around the seat
     * @param housing what the housing is made of
     * @param ring what the rings are made of
     * @param innerWarmer inner ring warmer than the outer by, K
     * @param radialLoad on the turning inner ring, N
     * @param width width of the inner ring; needed with a load
     */
    public record Case(
            @Input(kind = Kind.LENGTH, meaning = "bearing bore", min = 1e-3, max = 1, example = "40 mm")
            double bore,

            @Input(kind = Kind.LENGTH, meaning = "bearing outside diameter", min = 2e-3, max = 2, example = "80 mm")
            double outside,

            @Input(kind = Kind.LENGTH, meaning = "inner raceway diameter, else estimated", min = 1e-3, max = 2)
            @Nullable
            Double innerRaceway,

            @Input(kind = Kind.LENGTH, meaning = "outer raceway diameter, else estimated", min = 1e-3, max = 2)
            @Nullable
            Double outerRaceway,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "radial clearance before fitting, readings or the two limits",
                    min = -5e-4,
                    max = 2e-3,
                    most = 100,
                    example = "0.015, 0.033 mm")
            List<Double> clearance,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "inner ring on shaft, interference + or clearance −",
                    min = -1e-3,
                    max = 1e-3,
                    most = 100,
                    example = "0.002, 0.025 mm")
            List<Double> innerFit,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "outer ring in housing, interference + or clearance −",
                    min = -1e-3,
                    max = 1e-3,
                    most = 100,
                    example = "-0.012, 0.030 mm")
            List<Double> outerFit,

            @Input(meaning = "inner fit as measured, or corrected for ground or turned seats", orElse = "as measured")
            Finish finish,

            @Input(kind = Kind.LENGTH, meaning = "bore of the shaft", min = 0, max = 1, orElse = "0 mm")
            double shaftBore,

            @Input(meaning = "shaft, what it is made of") PartMaterial shaft,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "outside diameter of the housing around the seat",
                    min = 2e-3,
                    max = 10,
                    example = "110 mm")
            double housingOutside,

            @Input(meaning = "housing, what it is made of", example = "aluminum a380")
            PartMaterial housing,

            @Input(meaning = "rings, what they are made of", orElse = "bearing steel", example = "bearing steel")
            PartMaterial ring,

            @Input(
                    kind = Kind.TEMPERATURE_DIFFERENCE,
                    meaning = "inner ring warmer than the outer by",
                    min = -100,
                    max = 150,
                    example = "10 K")
            double innerWarmer,

            @Input(
                    kind = Kind.FORCE,
                    meaning = "radial load on the turning inner ring",
                    min = 0,
                    max = 1e6,
                    orElse = "0 N")
            double radialLoad,

            @Input(kind = Kind.LENGTH, meaning = "width of the inner ring, needed with a load", min = 1e-3, max = 1)
            @Nullable
            Double width) {

        /** How the seat of the inner ring was finished; a rough seat is pressed flat and grips less. */
        public enum Finish {
            AS_MEASURED(0),
            GROUND(2e-3),
            TURNED(3e-3);

            private final double added;

            Finish(double added) {
                this.added = added;
            }

            /** Share of the measured interference that counts, d/(d + 2 mm) or d/(d + 3 mm). */
            double share(double bore) {
                return bore / (bore + added);
            }
        }
    }

    /**
     * Result of {@code bearing-clearance}; lengths in metres, diametral; a negative clearance is preload.
     *
     * @param innerEffective greatest inner interference that counts, after finish and load
     * @param loadLoss interference the radial load takes from the inner ring
     * @param innerShare clearance lost per inner interference
     * @param outerShare clearance lost per outer interference
     * @param innerLoss clearance lost to the inner fit at its tightest
     * @param outerLoss clearance lost to the outer fit at its tightest
     * @param heatLoss clearance lost as the inner ring is warmer
     * @param least working clearance, everything at its tightest
     * @param most working clearance, everything at its loosest
     * @param probableLeast working clearance, half widths added by squares
     * @param probableMost the same at the loose end
     */
    public record Result(
            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "inner interference that counts, most")
            double innerEffective,

            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "inner interference taken by the load")
            double loadLoss,

            @Output(decimals = 3, meaning = "clearance lost per inner interference")
            double innerShare,

            @Output(decimals = 3, meaning = "clearance lost per outer interference")
            double outerShare,

            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "lost to the inner fit, most")
            double innerLoss,

            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "lost to the outer fit, most")
            double outerLoss,

            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "lost to heat")
            double heatLoss,

            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "working clearance, least")
            double least,

            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "working clearance, most")
            double most,

            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "working clearance, probably not less")
            double probableLeast,

            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "working clearance, probably not more")
            double probableMost) {}

    /** Lowest and highest of some readings. */
    private record Band(double low, double high) {
        static Band of(List<Double> readings) {
            return new Band(Collections.min(readings), Collections.max(readings));
        }

        double middle() {
            return (low + high) / 2;
        }

        double half() {
            return (high - low) / 2;
        }
    }

    /**
     * Rings taken as plain cylinders from seat to raceway.
     *
     * <p>Refused: raceways that do not lie between bore and outside in order, a hollow shaft or housing without a wall, a
     * load without the ring width.
     */
    static Outcome<Worked<Result>> work(Case c) {
        double inner = given(c.innerRaceway(), (4 * c.bore() + c.outside()) / 5);
        double outer = given(c.outerRaceway(), (c.bore() + 4 * c.outside()) / 5);
        List<Refusal> refusals = new ArrayList<>();
        if (!(c.bore() < inner && inner < outer && outer < c.outside())) {
            refusals.add(new Refusal(
                    "bore",
                    "bore, inner raceway, outer raceway and outside",
                    Interference.mm(c.bore()) + ", " + Interference.mm(inner) + ", " + Interference.mm(outer) + ", "
                            + Interference.mm(c.outside()) + " do not grow in this order",
                    "Look whether two of them are swapped"));
        }
        if (c.shaftBore() >= c.bore()) {
            refusals.add(Refusal.of(
                    "shaftBore",
                    Interference.mm(c.shaftBore()) + " leaves no wall in a shaft of " + Interference.mm(c.bore()),
                    "Measure the bore of the shaft, 0 when it is solid"));
        }
        if (c.housingOutside() <= c.outside()) {
            refusals.add(Refusal.of(
                    "housingOutside",
                    Interference.mm(c.housingOutside()) + " leaves no housing around a bearing of "
                            + Interference.mm(c.outside()),
                    "Measure the boss around the seat"));
        }
        if (c.radialLoad() > 0 && c.width() == null) {
            refusals.add(Refusal.of("width", "not given", "With a load the width of the inner ring is needed"));
        }
        return refusals.isEmpty() ? Outcome.ok(fitted(c, inner, outer)) : Outcome.refused(refusals);
    }

    private static double given(@Nullable Double own, double otherwise) {
        return own == null ? otherwise : own;
    }

    private static Worked<Result> fitted(Case c, double inner, double outer) {
        Working w = new Working();
        w.line("inner raceway", c.innerRaceway() == null ? "(4 d + D)/5" : "given", inner, Kind.LENGTH);
        w.line("outer raceway", c.outerRaceway() == null ? "(d + 4 D)/5" : "given", outer, Kind.LENGTH);
        double innerShare = innerShare(c, inner, w);
        double outerShare = outerShare(c, outer, w);
        double loadLoss = loadLoss(c, w);
        double share = c.finish().share(c.bore());
        Band measured = Band.of(c.innerFit());
        Band effective = new Band(
                Math.max(0, measured.low() * share - loadLoss), Math.max(0, measured.high() * share - loadLoss));
        w.line(
                "inner interference that counts, most",
                "measured × share of the finish − load",
                effective.high(),
                Kind.LENGTH);
        Band outerFit = Band.of(c.outerFit());
        Band innerLoss = new Band(innerShare * effective.low(), innerShare * effective.high());
        Band outerLoss = new Band(outerShare * Math.max(0, outerFit.low()), outerShare * Math.max(0, outerFit.high()));
        double heat = w.line(
                "lost to heat",
                "α × outer raceway × difference",
                c.ring().data().expansion() * outer * c.innerWarmer(),
                Kind.LENGTH,
                "bearing handbook");
        Band free = Band.of(c.clearance());
        double least = w.line(
                "working clearance, least",
                "smallest clearance − greatest losses",
                free.low() - innerLoss.high() - outerLoss.high() - heat,
                Kind.LENGTH);
        double most = w.line(
                "working clearance, most",
                "largest clearance − smallest losses",
                free.high() - innerLoss.low() - outerLoss.low() - heat,
                Kind.LENGTH);
        double middle = free.middle() - innerLoss.middle() - outerLoss.middle() - heat;
        double half = w.line(
                "probable half width",
                "half widths by squares",
                Math.hypot(free.half(), Math.hypot(innerLoss.half(), outerLoss.half())),
                Kind.LENGTH);
        cautions(c, w, least, middle - half);
        return w.worked(new Result(
                effective.high(),
                loadLoss,
                innerShare,
                outerShare,
                innerLoss.high(),
                outerLoss.high(),
                heat,
                least,
                most,
                middle - half,
                middle + half));
    }

    private static double innerShare(Case c, double raceway, Working w) {
        Cylinder ring = new Cylinder(c.bore(), raceway, c.ring().data());
        Cylinder shaft = new Cylinder(c.shaftBore(), c.bore(), c.shaft().data());
        return w.line(
                "clearance lost per inner interference",
                "growth of the raceway per interference",
                ring.outsideGrows() / (ring.boreOpens() + shaft.outsideShrinks()),
                Kind.NUMBER,
                "Lamé");
    }

    private static double outerShare(Case c, double raceway, Working w) {
        Cylinder ring = new Cylinder(raceway, c.outside(), c.ring().data());
        Cylinder housing =
                new Cylinder(c.outside(), c.housingOutside(), c.housing().data());
        return w.line(
                "clearance lost per outer interference",
                "closing of the raceway per interference",
                ring.boreCloses() / (housing.boreOpens() + ring.outsideShrinks()),
                Kind.NUMBER,
                "Lamé");
    }

    /** 0.08 √(d/B · Fr) µm with d, B in one unit and Fr in N. */
    private static double loadLoss(Case c, Working w) {
        Double width = c.width();
        double loss = width == null ? 0 : 0.08e-6 * Math.sqrt(c.bore() / width * c.radialLoad());
        return w.line(
                "inner interference taken by the load",
                "0.08 √(d Fr/B) µm",
                loss,
                Kind.LENGTH,
                "bearing handbook, eq. 9.1");
    }

    private static void cautions(Case c, Working w, double least, double probable) {
        w.caution("Check by hand after fitting: the ring must turn freely and rock a trace.");
        if (c.innerRaceway() == null || c.outerRaceway() == null) {
            w.caution("A raceway diameter is estimated from the bearing size; measure it if the result is close.");
        }
        if (probable < 0) {
            w.caution(
                    "Probably no clearance is left: it would run preloaded and hot. Take a larger clearance class or a "
                            + "looser fit.");
        } else if (least < 0) {
            w.caution("In the worst pairing no clearance is left. Measure these parts before fitting.");
        }
    }
}
