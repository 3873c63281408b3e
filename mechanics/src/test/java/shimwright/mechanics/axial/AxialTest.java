package shimwright.mechanics.axial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.axial.bevel.BacklashShift;
import shimwright.mechanics.axial.reading.EndPlay;
import shimwright.mechanics.axial.reading.Seating;
import shimwright.mechanics.axial.stack.DepthStack;
import shimwright.mechanics.axial.stack.GaugeOffset;
import shimwright.mechanics.axial.stack.Growth;
import shimwright.mechanics.axial.stack.GrowthLeg;
import shimwright.mechanics.axial.stack.StackLength;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.decision.ConformitySheet;
import shimwright.mechanics.measure.Contribution;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.working.Worked;

/** The demo transaxle's expected results (own arithmetic beside each value in its file), and published rows. */
class AxialTest {
    private static final double HALF_UM = 0.0005e-3;

    private static Worked<EndPlay.Result> endPlay(List<List<Double>> rounds) {
        return EndPlay.work(new EndPlay.Case(rounds, DemoTransaxle.INDICATOR, 0.02e-3, 3, 0, 150.0, 0.04e-3))
                .orElseThrow();
    }

    @Test
    void twoIndicatorsCancelTiltAndOneAloneCarriesIt() {
        // demo E02: 0.24/0.32 0.25/0.31 0.24/0.31, mean 0.2783
        Worked<EndPlay.Result> both = endPlay(
                DemoTransaxle.rounds(new double[] {0.24, 0.32}, new double[] {0.25, 0.31}, new double[] {0.24, 0.31}));
        assertThat(both.result().value()).isCloseTo(0.2783e-3, within(0.00005e-3));
        assertThat(both.result().tilt()).isCloseTo(0.07e-3, within(1e-9));
        assertThat(both.result().seating()).isEqualTo(Seating.SETTLED);
        assertThat(both.cautions()).anyMatch(caution -> caution.contains("the shaft tilts"));
        Worked<EndPlay.Result> alone = endPlay(DemoTransaxle.series(0.24, 0.25, 0.24));
        assertThat(alone.result().u()).isGreaterThan(4 * both.result().u());
        assertThat(alone.cautions()).anyMatch(caution -> caution.contains("One indicator alone"));
        double truth = 0.2783e-3;
        assertThat(Math.abs(alone.result().value() - truth))
                .isLessThan(2 * alone.result().u());
    }

    @Test
    void aSlantingLeverReadsTooMuch() {
        // cos 30° = 0.8660 (a table printing 0.86 truncates)
        EndPlay.Case c = new EndPlay.Case(
                DemoTransaxle.series(0.3, 0.3, 0.3), DemoTransaxle.INDICATOR, 0.02e-3, 3, Math.PI / 6, null, 0);
        Worked<EndPlay.Result> slant = EndPlay.work(c).orElseThrow();
        assertThat(slant.result().value()).isCloseTo(0.3e-3 * 0.8660254, within(1e-10));
        assertThat(slant.cautions()).anyMatch(caution -> caution.contains("same force each way"));
    }

    @Test
    void anUnsettledEndPlayProvesNothing() {
        Worked<EndPlay.Result> climbing = endPlay(DemoTransaxle.series(0.10, 0.20, 0.30));
        assertThat(climbing.result().seating()).isEqualTo(Seating.CLIMBING);
        assertThat(climbing.result().moreRoundsWanted()).isEqualTo(2);
        assertThat(climbing.cautions()).anyMatch(caution -> caution.contains("proves nothing"));
    }

    private static DepthStack.Result stack(List<GaugeOffset> offsets, StackLength... terms) {
        return DepthStack.work(new DepthStack.Case(List.of(terms), offsets))
                .orElseThrow()
                .result();
    }

    private static StackLength term(String name, double millimetres, int sign) {
        return new StackLength(name, millimetres / 1000, sign, 4e-6, "DM");
    }

    @Test
    void pinionDepthAndPreloadFollowFromTheirLoops() {
        // PD-3: 118.02 − 24.842 − 39.995 − 1.004 − 52.07 = 0.109
        DepthStack.Result depth = stack(
                List.of(),
                term("lip", 118.02, 1),
                term("bearing", 24.842, -1),
                term("pinion", 39.995, -1),
                term("shim", 1.004, -1),
                term("wanted", 52.07, -1));
        assertThat(depth.gap()).isCloseTo(0.109e-3, within(HALF_UM));
        // PB-2, truth: 17.290 + 1.098 − 18.341 = 0.0470
        DepthStack.Result preload =
                stack(List.of(), term("constant", 17.290, 1), term("sP", 1.098, 1), term("SP", 18.341, -1));
        assertThat(preload.gap()).isCloseTo(0.0470e-3, within(HALF_UM));
        // EP-3: 1.076 − (0.797 + 0.24 − 0.05) = 0.089 and with 0.32: 0.009
        assertThat(stack(
                                List.of(),
                                term("gap", 1.076, 1),
                                term("trial", 0.797, -1),
                                term("read", 0.24, -1),
                                term("aim", 0.05, 1))
                        .gap())
                .isCloseTo(0.089e-3, within(HALF_UM));
        assertThat(stack(
                                List.of(),
                                term("gap", 1.076, 1),
                                term("trial", 0.797, -1),
                                term("read", 0.32, -1),
                                term("aim", 0.05, 1))
                        .gap())
                .isCloseTo(0.009e-3, within(HALF_UM));
    }

    @Test
    void anOffsetOfOneGaugeCountsOnceAndCancelsInADifference() {
        // notes: common offset contributes |Σc|·u, not √n·u
        List<GaugeOffset> offset = List.of(new GaugeOffset("DM", 3e-6));
        StackLength a = new StackLength("a", 0.02, 1, 0, "DM");
        StackLength b = new StackLength("b", 0.01, -1, 0, "DM");
        StackLength more = new StackLength("c", 0.01, 1, 0, "DM");
        assertThat(stack(offset, a, b).u()).isZero();
        assertThat(stack(offset, a, more).u()).isCloseTo(6e-6, within(1e-15));
        DepthStack.Result mixed = stack(offset, new StackLength("a", 0.02, 1, 4e-6, "DM"), more, b);
        assertThat(mixed.u()).isCloseTo(5e-6, within(1e-15));
        assertThat(mixed.budget().contributions().stream()
                        .mapToDouble(Contribution::share)
                        .toArray())
                .containsExactly(new double[] {0.64, 0, 0, 0.36}, within(1e-12));
        assertThat(DepthStack.work(new DepthStack.Case(
                                List.of(new StackLength("a", 1, 0, 0, "X")), List.of(offset.get(0), offset.get(0))))
                        .refusals())
                .extracting(Refusal::place)
                .containsExactly("terms entry 1, sign", "offsets entry 1", "offsets entry 2", "offsets entry 2");
    }

    private static double growth(double millimetres, double caseAlpha, double shaftAlpha, double dCase, double dShaft) {
        GrowthLeg leg = new GrowthLeg("case", millimetres / 1000, caseAlpha, shaftAlpha);
        return Growth.work(new Growth.Case(List.of(leg), dCase, dShaft, null))
                .orElseThrow()
                .result()
                .change();
    }

    @Test
    void playGrowsWithTheCase() {
        // TH-1: 0.0004455 × 118.02, 14.01, 259.40, 152.01 with 21.8e-6 × 60 − 11.5e-6 × 75
        double[] lengths = {118.02, 14.01, 259.40, 152.01};
        double[] expected = {0.0526, 0.0062, 0.1156, 0.0677};
        for (int i = 0; i < lengths.length; i++) {
            assertThat(growth(lengths[i], 21.8e-6, 11.5e-6, 60, 75)).isCloseTo(expected[i] / 1000, within(0.0001e-3));
        }
        Worked<Growth.Result> tight = Growth.work(
                        new Growth.Case(List.of(new GrowthLeg("iron", 0.3, 11e-6, 11.5e-6)), 65, 80, 0.03e-3))
                .orElseThrow();
        assertThat(tight.result().warmPlay()).isNotNull().isNegative();
        assertThat(tight.cautions()).anyMatch(caution -> caution.contains("preloaded"));
    }

    @Test
    void backlashAnswersToAShiftAndAMisreadPlaceIsFlagged() {
        List<Double> before = DemoTransaxle.metres(0.355, 0.360, 0.365, 0.365, 0.355, 0.350, 0.345, 0.350);
        List<Double> after = DemoTransaxle.metres(0.270, 0.275, 0.280, 0.275, 0.270, 0.260, 0.255, 0.260);
        BacklashShift.Result good = shift(before, after).result();
        // BL-1: 0.3556, 0.2681, 0.8578; theory 0.8647, 0.8 % low
        assertThat(good.meanBefore()).isCloseTo(0.3556e-3, within(0.0001e-3));
        assertThat(good.meanAfter()).isCloseTo(0.2681e-3, within(0.0001e-3));
        assertThat(good.slope()).isCloseTo(0.8578, within(0.0005));
        assertThat(good.offTheory()).isCloseTo(-0.008, within(0.0005));
        assertThat(good.outliersAfter()).isEmpty();
        assertThat(good.further()).isCloseTo((0.268125e-3 - 0.15e-3) / 0.857843, within(1e-9));
        // BL-2: place 6 misread by one tenth: 0.2806, 0.7353, 15 % low; 0.090 from the median 0.270 of the others
        List<Double> misread = new ArrayList<>(after);
        misread.set(5, 0.360e-3);
        Worked<BacklashShift.Result> bad = shift(before, misread);
        assertThat(bad.result().meanAfter()).isCloseTo(0.2806e-3, within(0.0001e-3));
        assertThat(bad.result().slope()).isCloseTo(0.7353, within(0.0005));
        assertThat(bad.result().outliersAfter()).containsExactly(6);
        assertThat(bad.result().further()).isNull();
        assertThat(bad.cautions()).anyMatch(c -> c.contains("Place 6 after")).anyMatch(c -> c.contains("5 % off"));
        assertThat(shift(after, before).cautions()).anyMatch(c -> c.contains("direction of the shift"));
    }

    private static Worked<BacklashShift.Result> shift(List<Double> before, List<Double> after) {
        return BacklashShift.work(new BacklashShift.Case(before, after, 0.102e-3, 0.8647, 0.15e-3, 0.05e-3))
                .orElseThrow();
    }

    private static ConformitySheet.Result judged(double mm, double u, @Nullable Double lower, @Nullable Double upper) {
        return ConformitySheet.work(
                        new ConformitySheet.Case(mm / 1000, u / 1000, null, scaled(lower), scaled(upper), 0.95))
                .orElseThrow()
                .result();
    }

    private static @Nullable Double scaled(@Nullable Double mm) {
        return mm == null ? null : (Double) (mm / 1000);
    }

    @Test
    void aValueIsInOutOrNotProven() {
        // CA-24: 0.9065; rule 95 %
        ConformitySheet.Result open = judged(0.084, 0.012, 0.05, 0.10);
        assertThat(open.probability()).isCloseTo(0.9065, within(0.00005));
        assertThat(open.verdict()).isEqualTo(Verdict.NOT_PROVEN);
        assertThat(open.advice()).contains("90 % sure", "± 0.00");
        assertThat(judged(0.075, 0.006, 0.05, 0.10).verdict()).isEqualTo(Verdict.IN);
        assertThat(judged(0.1001, 0.02, 0.05, 0.10).verdict()).isEqualTo(Verdict.OUT);
        assertThat(judged(0.1001, 0.02, 0.05, 0.10).advice()).contains("however near");
        assertThat(judged(0.09, 0.02, null, 0.10).verdict()).isEqualTo(Verdict.NOT_PROVEN);
        ConformitySheet.Result hopeless = judged(0.075, 0.02, 0.05, 0.10);
        assertThat(hopeless.capability()).isLessThan(0.98);
        assertThat(hopeless.advice()).contains("no value could be");
        assertThat(ConformitySheet.work(new ConformitySheet.Case(0, 0, null, null, null, 0.95))
                        .refusals())
                .hasSize(1);
        assertThat(ConformitySheet.work(new ConformitySheet.Case(0, 0, null, 1.0, 0.5, 0.95))
                        .refusals())
                .hasSize(1);
    }
}
