package shimwright.mechanics.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.published.SheetAnswers;

/** Laws that hold whatever the sizes: one part of the answer against another, and there and back again. */
class PartLawsTest {
    private static final Percentage DUST = Percentage.withPercentage(1e-6);
    private static final double COARSE = 1e-9;

    private static double ask(String sheet, String path, String format, Object... values) {
        return SheetAnswers.number(sheet, SheetAnswers.typed(String.format(Locale.ROOT, format, values)), path);
    }

    /** Both pass frequencies add up to all elements once a turn; the cage knocks once for each element that passes. */
    @Property(tries = 100)
    void passFrequenciesAddUpToTheElements(
            @ForAll @IntRange(min = 6, max = 20) int z,
            @ForAll @DoubleRange(min = 0.2, max = 0.9) double fill,
            @ForAll @DoubleRange(min = 0, max = 60) double angle,
            @ForAll @DoubleRange(min = -3000, max = 3000) double outer) {
        String bearing = String.format(
                Locale.ROOT,
                "elements=%d; element=%.9f mm; pitchDiameter=50 mm; contactAngle=%.9f°; innerSpeed=3600 rpm; outerSpeed=%.9f rpm",
                z,
                fill * 50 * Math.sin(Math.PI / z),
                angle,
                outer);
        double turning = Math.abs(3600 - outer) / 60;
        double out = ask("bearing-frequencies", "outer.frequency", bearing);
        assertThat(out + ask("bearing-frequencies", "inner.frequency", bearing)).isCloseTo(z * turning, DUST);
        assertThat(ask("bearing-frequencies", "cage.frequency", bearing) * z).isCloseTo(out, DUST);
        double cage = ask("bearing-frequencies", "cageSpeed", bearing) / (2 * Math.PI);
        assertThat(Math.abs(cage - outer / 60)).isCloseTo(out / z, within(1e-7));
    }

    /** The same two teeth meet once in as many teeth as the least common multiple, counted out. */
    @Property(tries = 60)
    void theSameTeethMeetAsOftenAsCountingSays(
            @ForAll @IntRange(min = 5, max = 60) int z1, @ForAll @IntRange(min = 5, max = 60) int z2) {
        int meshes = 1;
        while (meshes % z1 != 0 || meshes % z2 != 0) {
            meshes++;
        }
        String pair = String.format("driving=%d; driven=%d; speed=600 rpm", z1, z2);
        double mesh = ask("mesh-frequencies", "mesh", pair);
        assertThat(mesh / ask("mesh-frequencies", "sameTeeth", pair)).isCloseTo(meshes, DUST);
        assertThat(ask("mesh-frequencies", "drivenTurn", pair) * z2).isCloseTo(mesh, DUST);
    }

    /** A pull that the sheet predicts, typed back, gives a range that holds the preload. */
    @Property(tries = 60)
    void thePreloadLiesInTheRangeThatItsOwnPullGives(
            @ForAll @DoubleRange(min = 200, max = 8000) double preload,
            @ForAll @DoubleRange(min = 20, max = 80) double bore,
            @ForAll @DoubleRange(min = 0, max = 0.5) double seals) {
        String rest = String.format(
                Locale.ROOT,
                "bearings=taper: %.6f mm: 1.5 mm; angular contact: 30 mm; radius=40 mm; sealDrag=%.9f N·m",
                bore,
                seals);
        double low = ask("preload-drag", "pullLow", "%s; preload=%.9f N", rest, preload);
        double high = ask("preload-drag", "pullHigh", "%s; preload=%.9f N", rest, preload);
        assertThat(low).isLessThan(high);
        assertThat(ask("preload-drag", "preloadHigh", "%s; pull=%.12f N", rest, low))
                .isCloseTo(preload, DUST);
        assertThat(ask("preload-drag", "preloadLow", "%s; pull=%.12f N", rest, high))
                .isCloseTo(preload, DUST);
    }

    /** The reading to aim for, typed back, is the pitch diameter aimed at, with any wire; the best wire touches there. */
    @Property(tries = 60)
    void theAimedReadingGivesTheAimedPitchDiameter(
            @ForAll @DoubleRange(min = 5, max = 60) double d,
            @ForAll @DoubleRange(min = 0.03, max = 0.15) double share,
            @ForAll @DoubleRange(min = 0.52, max = 1) double wire) {
        double p = share * d;
        String thread = String.format(Locale.ROOT, "diameter=%.9f mm; pitch=%.9f mm; wire=%.9f mm", d, p, wire * p);
        double reading = ask("thread-wires", "aimedReading", thread);
        double back = ask("thread-wires", "pitchDiameter", "%s; reading=%.12f mm", thread, reading * 1000);
        assertThat(back).isCloseTo(ask("thread-wires", "aimedPitch", thread), DUST);
        assertThat(ask("thread-wires", "bestWire", thread) * 1000 * Math.cos(Math.PI / 6))
                .isCloseTo(p / 2, DUST);
    }

    /** A full thread of the hole is 1.2 times the height of the basic profile, so the minor diameter lies at 5/6. */
    @Property(tries = 40)
    void theHoleOfAShareHasThatShare(
            @ForAll @DoubleRange(min = 4, max = 40) double d, @ForAll @DoubleRange(min = 0.3, max = 0.8) double share) {
        String thread = String.format(Locale.ROOT, "diameter=%.9f mm; pitch=%.9f mm", d, d / 8);
        double hole = ask("tap-drill", "hole", "%s; share=%.9f %%", thread, 100 * share);
        assertThat(ask("tap-drill", "atHand", "%s; drill=%.12f mm", thread, hole * 1000))
                .isCloseTo(share, DUST);
        assertThat(ask("tap-drill", "hole", "%s; share=%.12f %%", thread, 500.0 / 6))
                .isCloseTo(ask("tap-drill", "minorDiameter", thread), DUST);
    }

    /** Readings made from an offset, a zero, a sag and any start come back as that offset. */
    @Property(tries = 60)
    void readingsMadeFromAnOffsetGiveItBack(
            @ForAll @DoubleRange(min = 0.01, max = 0.5) double offset,
            @ForAll @DoubleRange(min = 1, max = 359) double towards,
            @ForAll @DoubleRange(min = -0.3, max = 0.3) double zero,
            @ForAll @DoubleRange(min = -0.2, max = 0.2) double sag,
            @ForAll @IntRange(min = 4, max = 12) int places) {
        StringBuilder readings = new StringBuilder();
        for (int i = 0; i < places; i++) {
            double at = 17 + 360.0 * i / places;
            double value = zero
                    - offset * Math.cos(Math.toRadians(at - towards))
                    + sag * (1 - Math.cos(Math.toRadians(at))) / 2;
            readings.append(i == 0 ? "" : "; ").append(String.format(Locale.ROOT, "%.9f°: %.12f mm", at, value));
        }
        String typed = String.format(Locale.ROOT, "bore=%s; sag=%.12f mm", readings, sag);
        assertThat(ask("housing-alignment", "bore.offset", typed) * 1000).isCloseTo(offset, within(1e-7));
        assertThat(Math.toDegrees(ask("housing-alignment", "bore.towards", typed)))
                .isCloseTo(towards, within(1e-3));
        assertThat(ask("housing-alignment", "bore.furthest", typed)).isLessThan(COARSE);
    }

    /** A cone drawn with its rollers and balls is found again. */
    @Property(tries = 60)
    void aConeIsFoundAgain(
            @ForAll @DoubleRange(min = 3, max = 30) double half,
            @ForAll @DoubleRange(min = 20, max = 100) double plate,
            @ForAll @DoubleRange(min = 3, max = 15) double roller) {
        double a = Math.toRadians(half);
        // a roller beside a leaning flank touches where its centre lies a radius off the flank, whatever its height
        double low = plate + roller + roller * (1 / Math.cos(a) + Math.tan(a));
        double high = low + 2 * 20 * Math.tan(a);
        String cone = String.format(
                Locale.ROOT, "roller=%.9f mm; low=%.9f mm; high=%.9f mm; blocks=20 mm", roller, low, high);
        assertThat(ask("outside-taper", "halfAngle", cone)).isCloseTo(a, DUST);
        assertThat(ask("outside-taper", "plateDiameter", cone) * 1000).isCloseTo(plate, within(1e-5));

        // the middle of a ball of radius R lies where the cone's half width is R / cos a
        double large = roller + 4;
        String hole = String.format(
                Locale.ROOT,
                "large=%.9f mm; small=%.9f mm; largeDepth=%.9f mm; smallDepth=%.9f mm",
                large,
                roller,
                depth(plate, large, a),
                depth(plate, roller, a));
        assertThat(ask("inside-taper", "halfAngle", hole)).isCloseTo(a, Percentage.withPercentage(1e-4));
        assertThat(ask("inside-taper", "mouthDiameter", hole) * 1000).isCloseTo(plate, within(1e-4));
    }

    private static double depth(double mouth, double ball, double half) {
        return (mouth / 2 - ball / 2 / Math.cos(half)) / Math.tan(half) - ball / 2;
    }

    /** Any point of the law through two of its own points lies on it; heat thins. */
    @Property(tries = 60)
    void twoPointsOfAnOilGiveTheThird(
            @ForAll @DoubleRange(min = 20, max = 700) double forty,
            @ForAll @DoubleRange(min = 0.05, max = 0.15) double share,
            @ForAll @DoubleRange(min = 50, max = 90) double wanted) {
        double hundred = Math.max(2.5, share * forty);
        String oil = String.format(Locale.ROOT, "viscosity=%.9f mm²/s; secondViscosity=%.9f mm²/s", forty, hundred);
        double between = ask("oil-viscosity", "viscosity", "%s; wanted=%.9f °C", oil, wanted);
        assertThat(between * 1e6).isBetween(hundred, forty);
        double back = ask(
                "oil-viscosity",
                "viscosity",
                "viscosity=%.12f mm²/s; first=%.9f °C; secondViscosity=%.12f mm²/s; wanted=40 °C",
                between * 1e6,
                wanted,
                hundred);
        assertThat(back * 1e6).isCloseTo(forty, Percentage.withPercentage(1e-4));
    }

    /** There and back again between two scales of hardness, and harder on one is harder on the other. */
    @Property(tries = 60)
    void hardnessConvertsBack(@ForAll @DoubleRange(min = 21, max = 67) double hrc) {
        double hv = ask("hardness", "vickers", "hrc=%.9f", hrc);
        assertThat(ask("hardness", "rockwellC", "hv=%.12f", hv)).isCloseTo(hrc, within(1e-6));
        assertThat(ask("hardness", "vickers", "hrc=%.9f", hrc + 0.5)).isGreaterThan(hv);
        assertThat(ask("hardness", "vickersAstm", "hrc=%.9f", hrc)).isCloseTo(hv, Percentage.withPercentage(3));
    }

    /** A key of the needed length has just the stress allowed. */
    @Property(tries = 40)
    void aKeyOfTheNeededLengthIsJustLoaded(
            @ForAll @DoubleRange(min = 10, max = 100) double d,
            @ForAll @DoubleRange(min = 50, max = 200) double allowed) {
        String key = String.format(
                Locale.ROOT,
                "diameter=%.9f mm; torque=%.9f N·m; pressureAllowed=%.9f MPa",
                d,
                d * d * d / 1000,
                allowed);
        double needed = ask("key", "needed", key);
        assertThat(ask("key", "pressure", "%s; length=%.12f mm", key, needed * 1000) / 1e6)
                .isCloseTo(allowed, DUST);
    }

    /** Twice the yield and twice the reserve; the deeper groove holds more. */
    @Property(tries = 40)
    void aDeeperGrooveHoldsMore(@ForAll @DoubleRange(min = 0.3, max = 1.5) double depth) {
        String ring = String.format(Locale.ROOT, "diameter=30 mm; groove=%.9f mm; shoulder=6 mm", 30 - 2 * depth);
        double here = ask("ring-groove", "grooveLoad", "%s; yield=200 MPa", ring);
        assertThat(ask("ring-groove", "grooveLoad", "%s; yield=400 MPa", ring)).isCloseTo(2 * here, DUST);
        assertThat(ask("ring-groove", "grooveLoad", "%s; yield=200 MPa; lost=0.1 mm", ring))
                .isLessThan(here);
    }

    /** A new clutch carries at least as much as a run-in one, and a thin ring the same. */
    @Property(tries = 40)
    void aNewClutchCarriesAtLeastAsMuch(@ForAll @DoubleRange(min = 20, max = 199) double inner) {
        String clutch = String.format(Locale.ROOT, "outer=200 mm; inner=%.9f mm; clamp=4000 N", inner);
        double wear = ask("clutch-torque", "torqueWear", clutch);
        double fresh = ask("clutch-torque", "torquePressure", clutch);
        assertThat(fresh).isGreaterThanOrEqualTo(wear * (1 - 1e-12));
        if (inner > 190) {
            assertThat(fresh).isCloseTo(wear, Percentage.withPercentage(0.1));
        }
    }

    /** Maxwell: the deflection at one place from a force at another is that at the other from the same force at the one. */
    @Property(tries = 60)
    void deflectionsAreMutual(
            @ForAll @DoubleRange(min = 0, max = 400) double one,
            @ForAll @DoubleRange(min = 0, max = 400) double two,
            @ForAll @DoubleRange(min = 20, max = 40) double thick) {
        String shaft = String.format(
                Locale.ROOT,
                "stretches=150 mm: 25 mm; 260 mm: %.9f mm: 10 mm; 400 mm: 22 mm; bearingA=30 mm; bearingB=330 mm",
                thick);
        double first = ask(
                "shaft-bend", "places[1].deflection", "%s; loads=a: %.9f mm: 1000 N; b: %.9f mm: 0 N", shaft, one, two);
        double second = ask(
                "shaft-bend", "places[1].deflection", "%s; loads=a: %.9f mm: 1000 N; b: %.9f mm: 0 N", shaft, two, one);
        assertThat(first).isCloseTo(second, within(1e-12));
    }

    /** Two equal forces at a right angle bend √2 as far, and bearings do not move. */
    @Test
    void planesGoTogetherBySquares() {
        String shaft = "stretches=300 mm: 30 mm; bearingA=20 mm; bearingB=280 mm; loads=";
        double one = ask("shaft-bend", "places[0].deflection", shaft + "a: 100 mm: 2000 N: 0°");
        double two = ask("shaft-bend", "places[0].deflection", shaft + "a: 100 mm: 2000 N: 0°; b: 100 mm: 2000 N: 90°");
        assertThat(two).isCloseTo(Math.sqrt(2) * one, DUST);
        assertThat(ask("shaft-bend", "left.deflection", shaft + "a: 100 mm: 2000 N: 40°"))
                .isLessThan(1e-15);
        assertThat(ask("shaft-bend", "loadA", shaft + "a: 150 mm: 2000 N: 40°")).isCloseTo(1000, DUST);
    }

    /** Bending goes with the torque, contact with its root, apart from the speed; a wider face takes both down. */
    @Property(tries = 40)
    void contactGoesWithTheRootOfTheTorque(
            @ForAll @DoubleRange(min = 1, max = 9) double times, @ForAll @DoubleRange(min = 0, max = 30) double helix) {
        String pair = String.format(
                Locale.ROOT,
                "pinionTeeth=17; gearTeeth=52; module=2.5 mm; face=30 mm; helix=%.9f°; speed=900 rpm; geometryPinion=0.3; "
                        + "geometryGear=0.4; distribution=1.2",
                helix);
        double bending = ask("tooth-strength", "pinion", "%s; torque=20 N·m", pair);
        double contact = ask("tooth-strength", "contact", "%s; torque=20 N·m", pair);
        assertThat(ask("tooth-strength", "pinion", "%s; torque=%.9f N·m", pair, 20 * times))
                .isCloseTo(bending * times, DUST);
        assertThat(ask("tooth-strength", "contact", "%s; torque=%.9f N·m", pair, 20 * times))
                .isCloseTo(contact * Math.sqrt(times), DUST);
    }

    /** The blocks for an angle, laid under the bar, give the angle back. */
    @Property(tries = 60)
    void aSineBarGivesItsAngleBack(
            @ForAll @DoubleRange(min = 0.5, max = 60) double angle,
            @ForAll @DoubleRange(min = 50, max = 300) double bar) {
        double blocks = ask("sine-bar", "blocks", "bar=%.9f mm; angle=%.9f°", bar, angle);
        double back = ask("sine-bar", "angle", "bar=%.9f mm; blocks=%.12f mm", bar, blocks * 1000);
        assertThat(Math.toDegrees(back)).isCloseTo(angle, within(1e-6));
    }

    /** Twice the torque, twice the shear; the pin that would do for the shear found is the pin itself. */
    @Property(tries = 60)
    void aCrossPinIsItsOwnAnswer(
            @ForAll @DoubleRange(min = 6, max = 20) double pin,
            @ForAll @DoubleRange(min = 50, max = 3000) double torque) {
        String case1 = "use=differential; pin=%.9f mm; across=60 mm; torque=%.9f N·m";
        double shear = ask("cross-pin", "shear", case1, pin, torque);
        assertThat(ask("cross-pin", "shear", case1, pin, 2 * torque)).isCloseTo(2 * shear, DUST);
        assertThat(ask("cross-pin", "needed", case1 + "; shearAllowed=%.6f Pa", pin, torque, shear) * 1000)
                .isCloseTo(pin, within(1e-6));
    }

    /** What a spline carries at a pressure makes that pressure. */
    @Property(tries = 60)
    void aSplineCarriesWhatItsPressureSays(
            @ForAll @DoubleRange(min = 1, max = 80) double pressure,
            @ForAll @DoubleRange(min = 5, max = 60) double length) {
        String spline = "teeth=8; minor=46 mm; major=54 mm; length=%.9f mm";
        double torque = ask("straight-spline", "capacity", spline + "; pressureAllowed=%.9f MPa", length, pressure);
        assertThat(ask("straight-spline", "pressure", spline + "; torque=%.9f N·m", length, torque) / 1e6)
                .isCloseTo(pressure, within(1e-6));
    }

    /**
     * What is read over a wire after a flank lost some is found again as that loss, with any wire that touches the flanks; and both
     * losses together are what the hub turns by.
     */
    @Property(tries = 60)
    void aSerrationFindsWhatItsFlanksLost(
            @ForAll @IntRange(min = 20, max = 60) int teeth,
            @ForAll @DoubleRange(min = 0.7, max = 1.3) double wire,
            @ForAll @DoubleRange(min = 0, max = 0.05) double shaft,
            @ForAll @DoubleRange(min = 0, max = 0.05) double hub) {
        String profile = "series=din 5481; teeth=%d; pitchDiameter=22 mm";
        double over = ask("serration", "shaftPitchWire", profile, teeth) * 1000 * wire;
        double between = ask("serration", "hubPitchWire", profile, teeth) * 1000 * wire;
        double space = ask("serration", "spaceAngle", profile, teeth) / 2;
        double tooth = ask("serration", "toothAngle", profile, teeth) / 2;
        double across = teeth % 2 == 0 ? 2 : 2 * Math.cos(Math.PI / teeth / 2);
        double inner = ask("serration", "underPoints", profile, teeth) * 500;
        double outer = ask("serration", "overPoints", profile, teeth) * 500;
        double readOver = across * (inner + (over / 2 - shaft) / Math.sin(space)) + over;
        double readBetween = across * (outer - (between / 2 - hub) / Math.sin(tooth)) - between;
        String wires = profile + "; shaftWire=%.9f mm; overWires=%.9f mm; hubWire=%.9f mm; betweenWires=%.9f mm";
        assertThat(ask("serration", "shaftWorn", wires, teeth, over, readOver, between, readBetween) * 1000)
                .isCloseTo(shaft, within(1e-6));
        assertThat(ask("serration", "hubWorn", wires, teeth, over, readOver, between, readBetween) * 1000)
                .isCloseTo(hub, within(1e-6));
        double play = ask("serration", "play", wires, teeth, over, readOver, between, readBetween);
        assertThat(play * 11)
                .isBetween(2 * (shaft + hub) - 1e-6, 2 * (shaft + hub) / Math.cos(Math.toRadians(36)) + 1e-6);
    }

    /** What a serration carries at a pressure makes that pressure. */
    @Property(tries = 30)
    void aSerrationCarriesWhatItsPressureSays(
            @ForAll @DoubleRange(min = 1, max = 80) double pressure,
            @ForAll @DoubleRange(min = 5, max = 60) double length) {
        String serration =
                "series=sae j500; teeth=48; pitchDiameter=1.464 in; outside=38 mm; bore=36.5 mm; length=%.9f mm";
        double torque = ask("serration", "capacity", serration + "; pressureAllowed=%.9f MPa", length, pressure);
        assertThat(ask("serration", "pressure", serration + "; torque=%.9f N·m", length, torque) / 1e6)
                .isCloseTo(pressure, within(1e-6));
    }

    /** A bush closes by no more than its interference, and by more the thicker the housing. */
    @Property(tries = 60)
    void aBushClosesByNoMoreThanItsInterference(
            @ForAll @DoubleRange(min = 26, max = 60) double boss,
            @ForAll @DoubleRange(min = 0.01, max = 0.06) double tight) {
        String bush =
                "housing=22 mm; outside=%.9f mm; bore=18 mm; boss=%.9f mm; housingMaterial=aluminum a380; bushMaterial=bronze";
        double share = ask("bush-fit", "share", bush, 22 + tight, boss);
        assertThat(share).isBetween(0.0, 1.0);
        assertThat(ask("bush-fit", "share", bush, 22 + tight, boss + 5)).isGreaterThan(share);
        assertThat(ask("bush-fit", "smallestBore", bush, 22 + tight, boss) * 1000)
                .isCloseTo(18 - share * tight, within(1e-6));
    }
}
