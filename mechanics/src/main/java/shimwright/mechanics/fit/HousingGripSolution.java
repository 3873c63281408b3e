package shimwright.mechanics.fit;

import java.util.Collections;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.fit.CompoundCylinder.Pressures;
import shimwright.mechanics.fit.HousingGrip.Result.InHousing;
import shimwright.mechanics.fit.HousingGrip.Result.Verdict;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;

/** The sums of {@code housing-grip}, for a case without faults. */
final class HousingGripSolution {
    private static final double ROOM = PressFitSolution.ROOM;
    /** Magnesium die castings creep above about 120 °C (from memory). */
    private static final double MAGNESIUM_CREEPS = 393.15;

    private final Working w = new Working();
    private final HousingGrip.Case c;
    private final double seat;
    private final Material.Data around;
    private final CompoundCylinder nest;

    HousingGripSolution(HousingGrip.Case c) {
        this.c = c;
        seat = w.line(
                "seat diameter",
                "middle of the readings",
                (Collections.min(c.seat()) + Collections.max(c.seat())) / 2,
                Kind.LENGTH);
        Cylinder race = new Cylinder(c.cupBore(), seat, c.race().data());
        Double outside = c.sleeve().outside();
        Double bore = c.sleeve().housingBore();
        Material.Data housing = c.housing().data();
        if (outside == null || bore == null) {
            around = housing;
            nest = CompoundCylinder.plain(new Cylinder(seat, c.boss(), housing), race);
        } else {
            around = c.sleeve().data();
            nest = new CompoundCylinder(
                    new Cylinder(bore, c.boss(), housing), new Cylinder(seat, bore, around), race, outside - bore);
        }
    }

    Worked<HousingGrip.Result> worked() {
        double tight = w.line(
                "interference at 20 °C, tightest",
                "largest race − smallest seat",
                Collections.max(c.cup()) - Collections.min(c.seat()),
                Kind.LENGTH);
        double loose = w.line(
                "interference at 20 °C, loosest",
                "smallest race − largest seat",
                Collections.min(c.cup()) - Collections.max(c.seat()),
                Kind.LENGTH);
        double heat = heatLoss();
        double jointHot = nest.hasSleeve() ? jointHot() : 0;
        double relaxation = relaxation(jointHot);
        double hotTight =
                w.line("interference at work, tightest", "less both losses", tight - heat - relaxation, Kind.LENGTH);
        double hotLoose =
                w.line("interference at work, loosest", "less both losses", loose - heat - relaxation, Kind.LENGTH);
        Pressures cold = nest.pressures(nest.joint(), tight);
        Pressures hot = nest.pressures(jointHot, tight - heat);
        double eases = eases(cold, hot);
        Double axial = axial(eases);
        InHousing sleeve = nest.hasSleeve() ? sleeve(jointHot) : null;
        Verdict verdict = verdict(hotTight, hotLoose);
        cautions(verdict, sleeve, axial != null);
        return w.worked(new HousingGrip.Result(
                tight,
                loose,
                heat,
                relaxation,
                hotTight,
                hotLoose,
                w.line("seat pressure at 20 °C", "tightest", cold.seat(), Kind.PRESSURE, "Lamé"),
                w.line("seat pressure at work", "tightest", hot.seat(), Kind.PRESSURE, "Lamé"),
                Math.max(nest.bossHoop(cold), nest.bossHoop(hot)),
                Math.min(nest.raceHoop(cold), nest.raceHoop(hot)),
                eases,
                axial,
                gone(loose),
                gone(tight),
                verdict,
                sleeve));
    }

    private double heatLoss() {
        double seatGrowth = around.expansion() * (c.housingTemperature() - ROOM);
        double raceGrowth = c.race().data().expansion() * (c.raceTemperature() - ROOM);
        return w.line(
                "lost to heat",
                "d (α seat (T seat − 20 °C) − α race (T race − 20 °C))",
                seat * (seatGrowth - raceGrowth),
                Kind.LENGTH);
    }

    private double relaxation(double jointHot) {
        return w.line(
                "lost as the sleeve opens",
                "closure of its bore at 20 °C − at work",
                nest.opens(jointHot),
                Kind.LENGTH,
                "Lamé");
    }

    private double eases(Pressures cold, Pressures hot) {
        return w.line(
                "race opens",
                "closure of its bore at 20 °C − at work",
                nest.race().boreCloses() * (cold.seat() - hot.seat()),
                Kind.LENGTH,
                "Lamé");
    }

    private @Nullable Double axial(double eases) {
        Double angle = c.cupHalfAngle();
        return angle == null
                ? null
                : w.line(
                        "axial shift",
                        "half of that / tan(half cup angle)",
                        HousingGrip.axial(eases, angle),
                        Kind.LENGTH);
    }

    private static Verdict verdict(double hotTight, double hotLoose) {
        if (hotLoose > 0) {
            return Verdict.HOLDS;
        }
        return hotTight > 0 ? Verdict.HOLDS_ONLY_WHEN_TIGHT : Verdict.IS_LOOSE;
    }

    private double perKelvinOfSleeve() {
        return nest.boss().inner() * (c.housing().data().expansion() - around.expansion());
    }

    private double jointHot() {
        return w.line(
                "sleeve in the housing at work",
                "interference − d (α housing − α sleeve)(T housing − 20 °C)",
                nest.joint() - perKelvinOfSleeve() * (c.housingTemperature() - ROOM),
                Kind.LENGTH);
    }

    private InHousing sleeve(double jointHot) {
        double fallsOut = fallsOut();
        if (Double.isFinite(fallsOut)) {
            w.line(
                    "sleeve falls out at",
                    "20 °C + interference/(d (α housing − α sleeve))",
                    fallsOut,
                    Kind.TEMPERATURE);
        }
        return new InHousing(nest.joint(), jointHot, nest.jointPressure(nest.joint()), fallsOut);
    }

    private double fallsOut() {
        double perKelvin = perKelvinOfSleeve();
        return perKelvin > 0 ? ROOM + nest.joint() / perKelvin : Double.POSITIVE_INFINITY;
    }

    /** Temperature, all warming alike, at which an interference at 20 °C is gone. */
    private double gone(double interference) {
        if (interference <= 0) {
            return ROOM;
        }
        double plain = seat * (around.expansion() - c.race().data().expansion());
        if (!nest.hasSleeve()) {
            return plain > 0 ? ROOM + interference / plain : Double.POSITIVE_INFINITY;
        }
        double opening = nest.sleeve().boreCloses() * nest.jointPressure(1) * perKelvinOfSleeve();
        double both = plain + opening;
        double fallsOut = fallsOut();
        double first = both > 0 ? ROOM + interference / both : Double.POSITIVE_INFINITY;
        if (first <= fallsOut) {
            return first;
        }
        double left = interference - both * (fallsOut - ROOM);
        return plain > 0 ? fallsOut + left / plain : Double.POSITIVE_INFINITY;
    }

    private void cautions(Verdict verdict, @Nullable InHousing sleeve, boolean taper) {
        w.caution("Sizes count at 20 °C. A warm light-alloy bore reads large: 1 K is 1.6 µm on 72 mm.");
        if (verdict != Verdict.HOLDS) {
            w.caution(
                    "At working heat the race may turn in its seat and wear it. It needs a clamp plate, a snap ring or a "
                            + "tab, or a tighter seat.");
        }
        if (sleeve != null && Double.isFinite(sleeve.fallsOut())) {
            w.caution("The sleeve lets go at " + Quantities.print(sleeve.fallsOut(), Units.CELSIUS, 0)
                    + ". When the housing is heated to fit the race, stay at least 30 K below that.");
        }
        if (sleeve != null) {
            w.caution(
                    "Fit the sleeve hot into the housing and finish its bore afterwards; pressed in cold it scores the "
                            + "housing.");
        }
        if (taper) {
            w.caution("The axial shift comes on top of the growth of the housing: take both into the preload.");
        }
        if (c.housing().material() == Material.MAGNESIUM_AZ91D && c.housingTemperature() > MAGNESIUM_CREEPS) {
            w.caution("This alloy creeps above about 120 °C (from memory): grip is lost for good.");
        }
    }
}
