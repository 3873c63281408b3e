package shimwright.mechanics.fit;

import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import shimwright.mechanics.fit.Interference.Result.Hub;
import shimwright.mechanics.fit.Interference.Result.Point;
import shimwright.mechanics.fit.Interference.Result.Shaft;
import shimwright.mechanics.fit.Interference.Result.Strength;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;

/** The sums of {@code interference}, for a case without faults. */
final class PressFitSolution {
    static final double ROOM = 293.15;
    private static final String LAME = "Lamé";
    private static final String SHIGLEY = "Shigley, 9th ed., eqs. 7-48, 7-49";
    /** Hardened rings crack; from memory. */
    private static final double RING_HOOP = 120e6;

    private static final int STEPS = 5;

    private final Working w = new Working();
    private final Interference.Case c;
    private final double joint;
    private final Cylinder hub;
    private final Cylinder shaft;

    PressFitSolution(Interference.Case c) {
        this.c = c;
        joint = w.line(
                "joint diameter",
                "middle of the bore readings",
                (Collections.min(c.bore()) + Collections.max(c.bore())) / 2,
                Kind.LENGTH);
        hub = new Cylinder(joint, c.hubOutside(), c.hub().data());
        shaft = new Cylinder(c.shaftBore(), joint, c.shaft().data());
    }

    /** Interference by size and what is lost of it, metres. */
    private record Left(double tight, double loose, double smoothing, double heat, double speed) {
        double fittedTight() {
            return tight - smoothing;
        }

        double fittedLoose() {
            return loose - smoothing;
        }

        double workTight() {
            return tight - smoothing - heat - speed;
        }

        double workLoose() {
            return loose - smoothing - heat - speed;
        }
    }

    Worked<Interference.Result> worked() {
        Left left = left();
        double perMegapascal = perMegapascal();
        double most = Math.max(left.fittedTight(), left.workTight());
        double least = Math.min(left.fittedLoose(), left.workLoose());
        double highest = pressure("highest pressure", most, perMegapascal);
        double lowest = pressure("lowest pressure", least, perMegapascal);
        double area = w.line("joint area", "π d L", Math.PI * joint * c.length(), Kind.AREA);
        double forceHigh = w.line(
                "press force, most",
                "high friction × area × pressure as fitted",
                c.frictionHigh() * area * pressure("pressure as fitted, tightest", left.fittedTight(), perMegapascal),
                Kind.FORCE,
                SHIGLEY);
        double forceLow = w.line(
                "press force, least",
                "low friction × area × pressure as fitted",
                c.frictionLow() * area * pressure("pressure as fitted, loosest", left.fittedLoose(), perMegapascal),
                Kind.FORCE,
                SHIGLEY);
        double axial = w.line(
                "axial force held",
                "low friction × area × lowest pressure / slip factor",
                c.frictionLow() * area * lowest / c.slipFactor(),
                Kind.FORCE,
                SHIGLEY);
        Hub hubState = hub(highest);
        Shaft shaftState = shaft(highest);
        double stop = w.line(
                "stop force",
                "high friction × area × pressure at which the hub yields / yield factor",
                c.frictionHigh() * area * hubState.elasticPressure() / c.yieldFactor(),
                Kind.FORCE);
        cautions(left.fittedTight(), least, hubState, shaftState, stop);
        return w.worked(new Interference.Result(
                new Interference.Result.BySize(left.tight(), left.loose(), left.tight() / joint),
                new Interference.Result.Losses(left.smoothing(), left.heat(), left.speed()),
                new Interference.Result.AtWork(left.workTight(), left.workLoose()),
                new Interference.Result.JointPressure(highest, lowest),
                hubState,
                shaftState,
                new Interference.Result.Held(
                        w.line("torque held", "axial force × d/2", axial * joint / 2, Kind.TORQUE, SHIGLEY), axial),
                new Interference.Result.PressForce(forceLow, forceHigh, stop),
                new Interference.Result.Changes(hubGrowth(highest), boreShrink(highest)),
                curve(forceLow, forceHigh)));
    }

    private Left left() {
        double tight = w.line(
                "interference by size, tightest",
                "largest shaft − smallest bore",
                Collections.max(c.diameter()) - Collections.min(c.bore()),
                Kind.LENGTH);
        double loose = w.line(
                "interference by size, loosest",
                "smallest shaft − largest bore",
                Collections.min(c.diameter()) - Collections.max(c.bore()),
                Kind.LENGTH);
        double smoothing = smoothing();
        double heat = heatLoss();
        double speed = w.line(
                "lost to speed",
                "free growth of the bore − of the shaft",
                hub.boreGrowsBySpeed(c.speed()) - shaft.outsideGrowsBySpeed(c.speed()),
                Kind.LENGTH,
                "Ugural and Fenster 8.5");
        return new Left(tight, loose, smoothing, heat, speed);
    }

    private double perMegapascal() {
        return w.line(
                "interference per MPa",
                "d (Co/Eo + Ci/Ei)",
                (hub.boreOpens() + shaft.outsideShrinks()) * 1e6,
                Kind.LENGTH,
                LAME);
    }

    private double hubGrowth(double p) {
        return w.line("growth of the hub", "outside under inside pressure", p * hub.outsideGrows(), Kind.LENGTH, LAME);
    }

    private double boreShrink(double p) {
        return w.line(
                "shrink of the shaft bore", "bore under outside pressure", p * shaft.boreCloses(), Kind.LENGTH, LAME);
    }

    private double smoothing() {
        Double bore = c.hubRoughness();
        Double outside = c.shaftRoughness();
        if (bore == null || outside == null) {
            w.caution("Roughness not given for both parts: nothing is taken off for it. Real grip is less, on turned "
                    + "surfaces by 10 µm and more.");
        }
        return w.line(
                "lost to roughness",
                "0.8 (Rz bore + Rz shaft)",
                0.8 * ((bore == null ? 0 : bore) + (outside == null ? 0 : outside)),
                Kind.LENGTH,
                "DIN 7190, from memory; less for a shrink fit");
    }

    private double heatLoss() {
        return w.line(
                "lost to heat",
                "d (α hub (T hub − 20 °C) − α shaft (T shaft − 20 °C))",
                joint
                        * (hub.material().expansion() * (c.hubTemperature() - ROOM)
                                - shaft.material().expansion() * (c.shaftTemperature() - ROOM)),
                Kind.LENGTH);
    }

    private double pressure(String symbol, double interference, double perMegapascal) {
        return w.line(
                symbol,
                "interference left / interference per MPa, not below 0",
                Math.max(0, interference) / perMegapascal * 1e6,
                Kind.PRESSURE,
                LAME);
    }

    private Hub hub(double p) {
        double q = joint / c.hubOutside();
        double equivalent = w.line(
                "equivalent stress of the hub",
                c.criterion().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                c.criterion().hub(p, q),
                Kind.PRESSURE);
        double elastic = w.line(
                "pressure at which the hub yields",
                "yield / equivalent stress per pressure",
                hub.material().yield() / c.criterion().hub(1, q),
                Kind.PRESSURE);
        return new Hub(
                w.line(
                        "hoop stress of the hub",
                        "p (D² + d²)/(D² − d²)",
                        Cylinder.hoopUnderInside(p, joint, c.hubOutside(), joint),
                        Kind.PRESSURE,
                        LAME),
                Cylinder.hoopUnderInside(p, joint, c.hubOutside(), c.hubOutside()),
                equivalent,
                elastic,
                strength(equivalent, hub.material().yield()));
    }

    private Shaft shaft(double p) {
        double bore = c.shaftBore();
        double equivalent = c.criterion().shaft(p, bore / joint);
        Double hoopBore = bore > 0
                ? w.line(
                        "hoop stress at the shaft bore",
                        "−2 p d²/(d² − di²)",
                        Cylinder.hoopUnderOutside(p, bore, joint, bore),
                        Kind.PRESSURE,
                        LAME)
                : null;
        return new Shaft(
                Cylinder.hoopUnderOutside(p, bore, joint, joint),
                hoopBore,
                equivalent,
                strength(equivalent, shaft.material().yield()));
    }

    private Strength strength(double equivalent, double yield) {
        if (equivalent > yield) {
            return Strength.YIELDS;
        }
        return equivalent * c.yieldFactor() > yield ? Strength.WITHOUT_MARGIN : Strength.HOLDS;
    }

    private List<Point> curve(double low, double high) {
        return IntStream.rangeClosed(0, STEPS)
                .mapToObj(i -> new Point(c.length() * i / STEPS, low * i / STEPS, high * i / STEPS))
                .toList();
    }

    private void cautions(double fitted, double least, Hub hubState, Shaft shaftState, double stop) {
        w.caution("Press square and slowly, on the ring that carries the fit, behind a guard, out of the line of the "
                + "ram. Stop and look at " + Quantities.print(stop, Units.KILONEWTON, 1)
                + " or at any sag or step in the force.");
        w.caution("Full round contact is counted. On splines or with a keyway only the lands touch: less grip, more "
                + "stress.");
        if (fitted <= 0) {
            w.caution("Smoothing takes the whole interference: as fitted there is no grip to count on.");
        }
        if (least <= 0) {
            w.caution("At the loosest nothing is held. Measure both parts, or choose a tighter pair.");
        }
        if (hubState.strength() == Strength.YIELDS || shaftState.strength() == Strength.YIELDS) {
            w.caution("A part yields: the pressure and the torque shown cannot be relied on.");
        }
        if (c.hub().material().cracks() && hubState.hoop() > RING_HOOP) {
            w.caution("A hardened ring cracks rather than yields: keep its hoop stress below about 120 MPa (from "
                    + "memory).");
        }
        if (c.hubOutside() < 1.3 * joint) {
            w.caution("Thin hub: it yields first at the bore, and its outside grows with it. Check what runs on it.");
        }
        if (c.shaftRoughness() != null) {
            w.caution("Each pressing smooths the seats. Measure again before a second pressing.");
        }
    }
}
