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
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code bearing-clearance}. */
final class BearingClearance {
    static final Worksheet<ClearanceCase, FittedClearance> SHEET = new Worksheet<>(
            "bearing-clearance",
            "Bearing clearance after fitting",
            "What the fits and the heat leave of a ball or cylindrical roller bearing's radial clearance.",
            List.of(
                    "Lamé's thick-walled cylinder: Boresi and Schmidt ch. 11",
                    "bearing handbook, eq. 9.1: interference lost by load; effective interference of ground and turned seats"),
            ClearanceCase.class,
            FittedClearance.class,
            BearingClearance::work);

    private BearingClearance() {}

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
    static Outcome<Worked<FittedClearance>> work(ClearanceCase c) {
        double inner = given(c.innerRaceway(), (4 * c.bore() + c.outside()) / 5);
        double outer = given(c.outerRaceway(), (c.bore() + 4 * c.outside()) / 5);
        List<Refusal> refusals = new ArrayList<>();
        if (!(c.bore() < inner && inner < outer && outer < c.outside())) {
            refusals.add(new Refusal(
                    "bore, innerRaceway, outerRaceway, outside",
                    Interference.mm(c.bore()) + ", " + Interference.mm(inner) + ", " + Interference.mm(outer) + ", "
                            + Interference.mm(c.outside()) + " do not grow in this order",
                    "Look whether two of them are swapped"));
        }
        if (c.shaftBore() >= c.bore()) {
            refusals.add(new Refusal(
                    "shaftBore",
                    Interference.mm(c.shaftBore()) + " leaves no wall in a shaft of " + Interference.mm(c.bore()),
                    "Measure the bore of the shaft, 0 when it is solid"));
        }
        if (c.housingOutside() <= c.outside()) {
            refusals.add(new Refusal(
                    "housingOutside",
                    Interference.mm(c.housingOutside()) + " leaves no housing around a bearing of "
                            + Interference.mm(c.outside()),
                    "Measure the boss around the seat"));
        }
        if (c.radialLoad() > 0 && c.width() == null) {
            refusals.add(new Refusal("width", "not given", "With a load the width of the inner ring is needed"));
        }
        return refusals.isEmpty() ? Outcome.ok(fitted(c, inner, outer)) : Outcome.refused(refusals);
    }

    private static double given(@Nullable Double own, double otherwise) {
        return own == null ? otherwise : own;
    }

    private static Worked<FittedClearance> fitted(ClearanceCase c, double inner, double outer) {
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
        return w.worked(new FittedClearance(
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

    private static double innerShare(ClearanceCase c, double raceway, Working w) {
        Cylinder ring = new Cylinder(c.bore(), raceway, c.ring().data());
        Cylinder shaft = new Cylinder(c.shaftBore(), c.bore(), c.shaft().data());
        return w.line(
                "clearance lost per inner interference",
                "growth of the raceway per interference",
                ring.outsideGrows() / (ring.boreOpens() + shaft.outsideShrinks()),
                Kind.NUMBER,
                "Lamé");
    }

    private static double outerShare(ClearanceCase c, double raceway, Working w) {
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
    private static double loadLoss(ClearanceCase c, Working w) {
        Double width = c.width();
        double loss = width == null ? 0 : 0.08e-6 * Math.sqrt(c.bore() / width * c.radialLoad());
        return w.line(
                "inner interference taken by the load",
                "0.08 √(d Fr/B) µm",
                loss,
                Kind.LENGTH,
                "bearing handbook, eq. 9.1");
    }

    private static void cautions(ClearanceCase c, Working w, double least, double probable) {
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
