package shimwright.mechanics.fit;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.fit.Interference.Result.Strength;
import shimwright.mechanics.measure.Budget;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.worksheet.Answer;

class InterferenceTest {
    private static Interference.Result changed(String... pairs) {
        return FitAnswers.result(Interference.SHEET, FitAnswers.changed(Interference.SHEET, pairs));
    }

    private static String mm(double mm) {
        return String.format(Locale.ROOT, "%.6f mm", mm);
    }

    /** Joint pressure, MPa, by solving u = A r + B/r of both parts with their boundary conditions, plane stress. */
    private static double boundaryValue(
            double bore,
            double joint,
            double outside,
            double interference,
            double eo,
            double no,
            double ei,
            double ni) {
        double a = bore / 2;
        double b = joint / 2;
        double c = outside / 2;
        // unknown: inner A, inner B, outer A, outer B; radial stress E/(1-n²) [(1+n) A − (1−n) B/r²]
        double si = ei / (1 - ni * ni);
        double so = eo / (1 - no * no);
        double[] free = a == 0 ? new double[] {0, 1, 0, 0} : new double[] {1 + ni, -(1 - ni) / (a * a), 0, 0};
        double[][] m = {
            free,
            {si * (1 + ni), -si * (1 - ni) / (b * b), -so * (1 + no), so * (1 - no) / (b * b)},
            {0, 0, 1 + no, -(1 - no) / (c * c)},
            {-b, -1 / b, b, 1 / b}
        };
        double[] x = new LUDecomposition(new Array2DRowRealMatrix(m))
                .getSolver()
                .solve(new ArrayRealVector(new double[] {0, 0, 0, interference / 2}))
                .toArray();
        return -so * ((1 + no) * x[2] - (1 - no) * x[3] / (b * b)) * 1e3;
    }

    // An independent solution of the same elastic problem: the displacement form with its boundary conditions.
    @Property(tries = 150)
    void thePressureSolvesTheBoundaryValueProblem(
            @ForAll @DoubleRange(min = 20, max = 120) double joint,
            @ForAll @DoubleRange(min = 1.1, max = 3) double outward,
            @ForAll @DoubleRange(min = 0, max = 0.9) double inward,
            @ForAll @DoubleRange(min = 45, max = 210) double eo,
            @ForAll @DoubleRange(min = 0.2, max = 0.35) double no) {
        double bore = inward < 0.2 ? 0 : inward * joint;
        double interference = 0.001 * joint;
        Interference.Result fit = FitAnswers.result(
                Interference.SHEET,
                "bore",
                FitAnswers.mm(joint),
                "diameter",
                FitAnswers.mm(joint + interference),
                "hubOutside",
                FitAnswers.mm(outward * joint),
                "shaftBore",
                FitAnswers.mm(bore),
                "length",
                "20 mm",
                "hub",
                "steel: " + eo + " GPa: " + no,
                "shaft",
                "steel: 206 GPa: 0.3");
        double expected = boundaryValue(bore, joint, outward * joint, interference, eo, no, 206, 0.3);
        assertThat(fit.pressure().highestPressure() / 1e6).isCloseTo(expected, within(1e-4 * expected));
    }

    @Property(tries = 100)
    void pressureIsProportionalAndForcesStandInOrder(
            @ForAll @DoubleRange(min = 0.01, max = 0.1) double interference,
            @ForAll @DoubleRange(min = 50, max = 120) double outside) {
        Interference.Result one =
                changed("bore", "40 mm", "diameter", mm(40 + interference), "hubOutside", mm(outside));
        Interference.Result two =
                changed("bore", "40 mm", "diameter", mm(40 + 2 * interference), "hubOutside", mm(outside));
        Interference.Result thicker =
                changed("bore", "40 mm", "diameter", mm(40 + interference), "hubOutside", mm(outside + 5));
        assertThat(two.pressure().highestPressure())
                .isCloseTo(
                        2 * one.pressure().highestPressure(),
                        within(1e-3 * two.pressure().highestPressure()));
        assertThat(thicker.pressure().highestPressure())
                .isGreaterThan(one.pressure().highestPressure());
        assertThat(one.press().pressForceLow()).isLessThan(one.press().pressForceHigh());
        assertThat(one.held().axialForce()).isLessThan(one.press().pressForceLow());
        assertThat(one.curve()).isSortedAccordingTo((p, q) -> Double.compare(p.high(), q.high()));
        assertThat(one.curve().get(5).high()).isCloseTo(one.press().pressForceHigh(), within(1e-9));
        assertThat(one.held().torque()).isCloseTo(one.held().axialForce() * 0.02, within(1e-9));
    }

    @Test
    void aShaftBoredOutToTheJointIsRefusedAlsoWhereTheShaftIsLarger() {
        Map<String, String> given = FitAnswers.changed(
                Interference.SHEET, "bore", mm(1), "diameter", mm(1.005), "hubOutside", mm(9), "shaftBore", mm(1));
        assertThat(Interference.SHEET.answer(given, UnitSystem.METRIC).refusals())
                .extracting(Refusal::key)
                .contains("shaftBore");
    }

    @Property(tries = 150)
    void everyInputInRangeIsRefusedOrGivesFiniteNumbers(
            @ForAll @DoubleRange(min = 1, max = 2000) double bore,
            @ForAll @DoubleRange(min = 1, max = 2000) double shaft,
            @ForAll @DoubleRange(min = 1, max = 10000) double outside,
            @ForAll @DoubleRange(min = 0, max = 2000) double inside,
            @ForAll @DoubleRange(min = -100, max = 300) double hot) {
        boolean near = Math.abs(shaft - bore) > 20;
        Map<String, String> given = FitAnswers.changed(
                Interference.SHEET,
                "bore",
                mm(bore),
                "diameter",
                mm(near ? bore * 1.001 : shaft),
                "hubOutside",
                mm(outside),
                "shaftBore",
                mm(inside),
                "hubTemperature",
                String.format(Locale.ROOT, "%.1f °C", hot));
        var outcome = Interference.SHEET.answer(given, UnitSystem.METRIC);
        if (outcome.isOk()) {
            Interference.Result fit =
                    (Interference.Result) outcome.orElseThrow().result();
            assertThat(List.of(
                            fit.pressure().highestPressure(),
                            fit.held().torque(),
                            fit.hub().equivalent(),
                            fit.press().pressForceHigh()))
                    .allMatch(Double::isFinite)
                    .allMatch(value -> value >= 0);
        } else {
            assertThat(outcome.refusals()).isNotEmpty().noneMatch(r -> r.fact().contains("no finite"));
        }
    }

    @Test
    void theTightestStressesAndTheLoosestHolds() {
        Interference.Result fit =
                changed("hubTemperature", "100 °C", "hub", "aluminum a380", "shaftTemperature", "100 °C");
        // 35 × (21.8 − 11.7)e-6 × 80, arithmetic
        assertThat(fit.losses().heatLoss()).isCloseTo(35.002e-3 * 10.1e-6 * 80, within(1e-12));
        assertThat(fit.left().tightest())
                .isCloseTo(fit.sizes().measuredTightest() - fit.losses().heatLoss(), within(1e-12));
        assertThat(fit.pressure().highestPressure())
                .isGreaterThan(fit.pressure().lowestPressure());
        Interference.Result cold =
                changed("hub", "aluminum a380", "hubTemperature", "-40 °C", "shaftTemperature", "-40 °C");
        assertThat(cold.pressure().highestPressure())
                .isGreaterThan(fit.pressure().highestPressure());
        Interference.Result gone =
                changed("hub", "aluminum a380", "hubTemperature", "150 °C", "shaftTemperature", "150 °C");
        assertThat(gone.held().torque()).isZero();
        assertThat(gone.pressure().lowestPressure()).isZero();
    }

    @Test
    void strengthIsJudgedByTheCriterionAsked() {
        Interference.Result mises = changed();
        Interference.Result tresca = changed("criterion", "tresca");
        Interference.Result modified = changed("criterion", "modified tresca");
        assertThat(tresca.hub().equivalent()).isGreaterThan(mises.hub().equivalent());
        assertThat(modified.hub().equivalent()).isLessThan(mises.hub().equivalent());
        assertThat(changed("diameter", "35.1 mm").hub().strength()).isEqualTo(Strength.YIELDS);
        assertThat(changed("hub", "steel: 206 GPa: 0.3: 160 MPa").hub().strength())
                .isIn(Strength.YIELDS, Strength.WITHOUT_MARGIN);
        assertThat(mises.hub().strength()).isEqualTo(Strength.HOLDS);
        assertThat(changed("shaftBore", "15 mm", "criterion", "modified tresca")
                        .shaft()
                        .equivalent())
                .isLessThan(changed("shaftBore", "15 mm").shaft().equivalent());
        assertThat(requireNonNull(changed("shaftBore", "15 mm").shaft().hoopBore()))
                .isNegative();
        assertThat(mises.shaft().hoopBore()).isNull();
    }

    @Test
    void cautionsSayWhatTheNumbersDoNot() {
        List<String> yields = FitAnswers.answer(
                        Interference.SHEET,
                        FitAnswers.changed(
                                Interference.SHEET,
                                "diameter",
                                "35.3 mm",
                                "hub",
                                "bearing steel",
                                "shaft",
                                "bronze",
                                "hubOutside",
                                "42 mm"))
                .cautions();
        assertThat(yields)
                .anyMatch(c -> c.startsWith("Press square"))
                .anyMatch(c -> c.startsWith("Roughness not given"))
                .anyMatch(c -> c.startsWith("A part yields"))
                .anyMatch(c -> c.startsWith("A hardened ring cracks"))
                .anyMatch(c -> c.startsWith("Thin hub"));
        List<String> rough = FitAnswers.answer(
                        Interference.SHEET,
                        FitAnswers.changed(Interference.SHEET, "hubRoughness", "30 µm", "shaftRoughness", "30"))
                .cautions();
        assertThat(rough)
                .anyMatch(c -> c.startsWith("Smoothing takes the whole"))
                .anyMatch(c -> c.startsWith("At the loosest nothing"))
                .anyMatch(c -> c.startsWith("Each pressing"));
    }

    @Test
    void impossiblePairsAreRefusedAllAtOnce() {
        assertThat(FitAnswers.refusalsOfChanged(
                        Interference.SHEET, "hubOutside", "34 mm", "shaftBore", "36 mm", "frictionLow", "0.5"))
                .containsExactly(
                        "hubOutside: 34 mm leaves no hub around a bore of 35.004 mm. Measure the outside of the hub, for "
                                + "a gear at the root of the teeth.",
                        "shaftBore: 36 mm leaves no wall in a shaft of 35.03 mm. Measure the bore of the shaft, 0 when "
                                + "it is solid.",
                        "frictionLow: the low friction is above the high one. Give the smaller value as frictionLow.");
        assertThat(FitAnswers.refusalsOfChanged(Interference.SHEET, "diameter", "34.9 mm"))
                .singleElement()
                .asString()
                .contains("no interference");
        assertThat(FitAnswers.refusalsOfChanged(Interference.SHEET, "diameter", "36.03 mm"))
                .singleElement()
                .asString()
                .contains("misread digit");
        for (Map.Entry<String, String> bad : Map.of(
                        "bore",
                        "0",
                        "diameter",
                        "-35 mm",
                        "length",
                        "0 mm",
                        "hub",
                        "cheese",
                        "frictionHigh",
                        "0",
                        "hubTemperature",
                        "900 °C",
                        "shaftBore",
                        "-1",
                        "slipFactor",
                        "0.5")
                .entrySet()) {
            assertThat(FitAnswers.refusalsOfChanged(Interference.SHEET, bad.getKey(), bad.getValue()))
                    .as(bad.toString())
                    .isNotEmpty();
        }
    }

    @Test
    void uncertaintyOfAReadingReachesTheTorqueAndNoneGivesNone() {
        Answer answer = FitAnswers.answer(
                Interference.SHEET,
                FitAnswers.changed(Interference.SHEET, "bore", "35.000 mm", "diameter", "35.030 ± 0.003 mm"));
        Interference.Result fit = (Interference.Result) answer.result();
        Budget torque = requireNonNull(answer.budgets().get("torque"));
        // proportional to the interference: 3 of 30 µm are 10 %
        assertThat(torque.u()).isCloseTo(0.1 * fit.held().torque(), within(1e-6));
        Answer sure = FitAnswers.answer(
                Interference.SHEET, FitAnswers.changed(Interference.SHEET, "diameter", "35.030 ± 0 mm"));
        assertThat(sure.budgets().values()).allMatch(budget -> budget.u() == 0);
    }

    @Test
    void inchAndMillimetreAgree() {
        Interference.Result metric =
                changed("bore", "25.4 mm", "diameter", "25.4254 mm", "hubOutside", "50.8 mm", "length", "25.4");
        Interference.Result inch =
                changed("bore", "1 in", "diameter", "1.001 in", "hubOutside", "2 in", "length", "1 in");
        assertThat(inch.held().torque())
                .isCloseTo(metric.held().torque(), within(1e-6 * metric.held().torque()));
        assertThat(inch.hub().hoop())
                .isCloseTo(metric.hub().hoop(), within(1e-6 * metric.hub().hoop()));
    }
}
