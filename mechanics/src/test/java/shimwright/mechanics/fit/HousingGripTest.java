package shimwright.mechanics.fit;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.fit.CompoundCylinder.Pressures;
import shimwright.mechanics.worksheet.Answer;

class HousingGripTest {
    private static HousingGrip.Result grip(String... pairs) {
        return FitAnswers.result(HousingGrip.SHEET, FitAnswers.changed(HousingGrip.SHEET, pairs));
    }

    // 72 P7 on a taper ring of class Normal is 5 to 51 tight; 9.3e-6 × 72 × 60 = 40.2 µm lost; recomputed by hand.
    @Test
    void aPressedRaceInAluminumIsNearlyLooseAtOilTemperature() {
        HousingGrip.Result grip = grip(
                "seat", "71.949, 71.979 mm",
                "cup", "71.984, 72.000 mm",
                "housing", "aluminum a380",
                "housingTemperature", "80 °C",
                "raceTemperature", "80 °C");
        assertThat(grip.heatLoss()).isCloseTo(40.2e-6, within(0.1e-6));
        assertThat(grip.verdict()).isEqualTo(HousingGrip.Result.Verdict.HOLDS_ONLY_WHEN_TIGHT);
        assertThat(grip.lettingGo()).isLessThan(grip.lettingGoTightest());
        assertThat(grip("housing", "magnesium az91d").verdict()).isEqualTo(HousingGrip.Result.Verdict.IS_LOOSE);
        assertThat(grip("housing", "steel").verdict()).isEqualTo(HousingGrip.Result.Verdict.HOLDS);
        assertThat(grip("housing", "steel").lettingGo()).isInfinite();
    }

    @Property(tries = 100)
    void atTheTemperatureOfLettingGoNothingIsLeft(
            @ForAll @IntRange(min = 5, max = 60) int interferenceUm, @ForAll boolean sleeved) {
        Map<String, String> given = FitAnswers.changed(
                HousingGrip.SHEET,
                "seat",
                "72.000 mm",
                "cup",
                String.format(Locale.ROOT, "72.%03d mm", interferenceUm),
                "race",
                "bearing steel: 206 GPa: 0.3: : 10.0");
        if (sleeved) {
            given.put("boss", "110 mm");
            given.put("sleeve.outside", "80.100 mm");
            given.put("sleeve.housingBore", "80.000 mm");
        }
        given.keySet().removeIf(key -> key.startsWith("race."));
        HousingGrip.Result cold = FitAnswers.result(HousingGrip.SHEET, given);
        double gone = cold.lettingGo();
        if (gone > 473) {
            return;
        }
        String there = String.format(Locale.ROOT, "%.9f °C", gone - 273.15);
        given.put("housingTemperature", there);
        given.put("raceTemperature", there);
        HousingGrip.Result hot = FitAnswers.result(HousingGrip.SHEET, given);
        assertThat(hot.hotLoosest()).isCloseTo(0, within(1e-9));
        assertThat(hot.pressureHot()).isCloseTo(0, within(1e3));
    }

    @Property(tries = 100)
    void atTwentyDegreesNothingIsLostAndHeatNeverTightensALightAlloy(
            @ForAll @IntRange(min = 20, max = 150) int celsius) {
        HousingGrip.Result cold = grip("housingTemperature", "20 °C", "raceTemperature", "20 °C");
        assertThat(cold.heatLoss()).isZero();
        assertThat(cold.pressureHot()).isEqualTo(cold.pressureCold());
        assertThat(cold.raceRelaxes()).isZero();
        HousingGrip.Result one = grip("housingTemperature", celsius + " °C", "raceTemperature", celsius + " °C");
        HousingGrip.Result two =
                grip("housingTemperature", celsius + 5 + " °C", "raceTemperature", celsius + 5 + " °C");
        assertThat(two.hotTightest()).isLessThan(one.hotTightest());
        assertThat(two.pressureHot()).isLessThanOrEqualTo(one.pressureHot());
    }

    // Law: surfaces meet. After solving, the diameters of the touching surfaces agree.
    @Property(tries = 200)
    void theThreeRingsMeet(
            @ForAll @DoubleRange(min = 0.01, max = 0.2) double jointMm,
            @ForAll @DoubleRange(min = -0.05, max = 0.1) double seatMm,
            @ForAll @DoubleRange(min = 0, max = 0.15) double lostMm) {
        Material.Data steel = Material.STEEL.data();
        Cylinder boss = new Cylinder(0.088, 0.112, Material.ALUMINUM_383.data());
        Cylinder sleeve = new Cylinder(0.080, 0.088, steel);
        Cylinder race = new Cylinder(0.072, 0.080, steel);
        CompoundCylinder nest = new CompoundCylinder(boss, sleeve, race, jointMm / 1e3);
        double jointNow = (jointMm - lostMm) / 1e3;
        Pressures p = nest.pressures(jointNow, seatMm / 1e3);
        assertThat(p.joint()).isGreaterThanOrEqualTo(0);
        assertThat(p.seat()).isGreaterThanOrEqualTo(0);
        double gapJoint = boss.boreOpens() * p.joint()
                + sleeve.outsideShrinks() * p.joint()
                - sleeve.outsideGrows() * p.seat()
                - jointNow;
        double gapSeat = sleeve.boreOpens() * p.seat()
                - sleeve.boreCloses() * p.joint()
                + race.outsideShrinks() * p.seat()
                - (seatMm / 1e3 - sleeve.boreCloses() * nest.jointPressure(nest.joint()));
        assertThat(p.joint() > 0 ? Math.abs(gapJoint) : Math.max(0, -gapJoint)).isLessThan(1e-12);
        assertThat(p.seat() > 0 ? Math.abs(gapSeat) : Math.max(0, -gapSeat)).isLessThan(1e-12);
    }

    @Test
    void aTaperCupMovesAlongTheAxisAsItEases() {
        HousingGrip.Result grip = grip("cupHalfAngle", "20 deg");
        assertThat(requireNonNull(grip.axialShift()))
                .isCloseTo(grip.raceRelaxes() / 2 / Math.tan(Math.toRadians(20)), within(1e-12));
        assertThat(grip.raceRelaxes()).isPositive();
        assertThat(grip().axialShift()).isNull();
        assertThat(grip.raceHoop()).isNegative();
    }

    @Test
    void badInputIsRefused() {
        for (Map.Entry<String, String> bad : Map.of(
                        "seat",
                        "0",
                        "cup",
                        "71.9 mm",
                        "cupBore",
                        "73 mm",
                        "boss",
                        "70 mm",
                        "housing",
                        "wood",
                        "housingTemperature",
                        "400 °C",
                        "cupHalfAngle",
                        "-5 deg",
                        "sleeve.outside",
                        "80 mm")
                .entrySet()) {
            assertThat(FitAnswers.refusalsOfChanged(HousingGrip.SHEET, bad.getKey(), bad.getValue()))
                    .as(bad.toString())
                    .isNotEmpty();
        }
        assertThat(FitAnswers.refusalsOfChanged(
                        HousingGrip.SHEET, "sleeve.outside", "79.9 mm", "sleeve.housingBore", "80 mm", "boss", "79 mm"))
                .containsExactly(
                        "sleeve.outside: the sleeve is loose in the housing: 79.9 mm in 80 mm. A sleeve must be an "
                                + "interference fit; measure both at 20 °C.",
                        "boss: a bore of 80 mm leaves no wall in a boss of 79 mm. Measure both again.");
        assertThat(FitAnswers.refusalsOfChanged(
                        HousingGrip.SHEET, "sleeve.outside", "71 mm", "sleeve.housingBore", "70 mm"))
                .hasSize(2);
        assertThat(FitAnswers.refusalsOfChanged(HousingGrip.SHEET, "cup", "74 mm"))
                .singleElement()
                .asString()
                .contains("1 %");
    }

    @Test
    void cautionsAndUncertainty() {
        Answer loose = FitAnswers.answer(
                HousingGrip.SHEET,
                FitAnswers.changed(
                        HousingGrip.SHEET,
                        "housing",
                        "magnesium az91d",
                        "housingTemperature",
                        "130 °C",
                        "cupHalfAngle",
                        "20 deg",
                        "sleeve.outside",
                        "80.1 mm",
                        "sleeve.housingBore",
                        "80 mm"));
        assertThat(loose.cautions())
                .anyMatch(c -> c.contains("creeps above"))
                .anyMatch(c -> c.startsWith("The sleeve lets go at"))
                .anyMatch(c -> c.contains("preload"));
        Answer sure = FitAnswers.answer(HousingGrip.SHEET, FitAnswers.changed(HousingGrip.SHEET, "boss", "92 ± 0 mm"));
        assertThat(sure.budgets().values()).allMatch(budget -> budget.u() == 0);
        Answer doubted = FitAnswers.answer(
                HousingGrip.SHEET, FitAnswers.changed(HousingGrip.SHEET, "cup", "71.994 ± 0.002 mm", "seat", "71.96"));
        assertThat(requireNonNull(doubted.budgets().get("hotTightest")).u()).isCloseTo(2e-6, within(1e-9));
    }
}
