package shimwright.rebuild.inspect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static shimwright.rebuild.demo.DemoWorkbench.MM;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.working.Line;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.unit.model.UnitType.Check;
import shimwright.rebuild.unit.model.WearLimit;

/** What of several readings is judged, by piece, with the uncertainty of the gauge. */
class GaugeReadingsTest {
    private static final GaugeError COARSE = new GaugeError("the caliper", 0.02 * MM, 0.03 * MM, 0);

    private static GaugeReadings mm(double... values) {
        return GaugeReadings.of(Arrays.stream(values).map(v -> v * MM).boxed().toList());
    }

    private static Checks.Judged judge(Check check, GaugeReadings readings) {
        return Checks.judge(check, readings, UnitSystem.METRIC).orElseThrow();
    }

    @Test
    void aMeanIsJudgedOnTheMean() {
        // 0.28 0.31 0.27 0.28: mean 0.285, limit 0.30
        WearLimit mean = ChecksFromFile.wear(
                "kind: length, as_new: [0.12 mm, 0.20 mm], limit: 0.30 mm, direction: max, judged_on: mean, places: 4");
        WearJudgement judged = WearJudgement.of(mean, mm(0.28, 0.31, 0.27, 0.28), UnitSystem.METRIC)
                .orElseThrow();
        assertThat(judged.worst()).isCloseTo(0.285 * MM, within(1e-12));
        assertThat(judged.verdict()).isEqualTo(Verdict.IN);
        WearLimit each =
                ChecksFromFile.wear("kind: length, as_new: [0.12 mm, 0.20 mm], limit: 0.30 mm, direction: max");
        assertThat(WearJudgement.of(each, mm(0.28, 0.31, 0.27, 0.28), UnitSystem.METRIC)
                        .orElseThrow()
                        .verdict())
                .isEqualTo(Verdict.OUT);
        assertThat(WearJudgement.of(mean, mm(0.28), UnitSystem.METRIC).refusals())
                .singleElement()
                .satisfies(r -> assertThat(r.sentence()).contains("1 of 4 readings. Read 3 more places"));
    }

    @Test
    void aRangeIsLargestLessSmallest() {
        WearLimit range = ChecksFromFile.wear(
                "kind: length, as_new: [0 mm, 0.05 mm], limit: 0.08 mm, direction: max, judged_on: range, places: 4");
        assertThat(WearJudgement.of(range, mm(0.28, 0.31, 0.27, 0.28), UnitSystem.METRIC)
                        .orElseThrow()
                        .worst())
                .isCloseTo(0.04 * MM, within(1e-12));
    }

    @Test
    void aGapIsTheDifferenceOfTwoReadings() {
        Check gap = ChecksFromFile.check("kind: length, lower: 0.10 mm, upper: 0.20 mm, judged_on: difference,"
                + " pieces: [depth to the race, height of the bearing]");
        assertThat(gap.fields()).containsExactly("depth to the race", "height of the bearing");
        assertThat(judge(gap, mm(20.15, 20.00)).verdict()).isEqualTo(Verdict.IN);
        assertThat(judge(gap, mm(20.00, 20.15).confirmedBecause("so")).verdict())
                .isEqualTo(Verdict.OUT);
        Check two = ChecksFromFile.check("kind: length, lower: 0.10 mm, upper: 0.20 mm, judged_on: difference");
        assertThat(judge(two, mm(20.15, 20.00)).verdict()).isEqualTo(Verdict.IN);
        assertThat(Checks.judge(two, mm(20.15, 20.0, 20.1), UnitSystem.METRIC).refusals())
                .singleElement()
                .satisfies(r -> assertThat(r.hint()).contains("Read two"));
    }

    @Test
    void aReadingFactorTurnsTheReadingIntoTheValue() {
        // an indicator at radius 50 reads 2.5 times the backlash at radius 20
        WearLimit backlash = ChecksFromFile.wear(
                "kind: length, as_new: [0.08 mm, 0.20 mm], limit: 0.35 mm, direction: max," + " reading_factor: 0.4");
        WearJudgement judged =
                WearJudgement.of(backlash, mm(0.80), UnitSystem.METRIC).orElseThrow();
        assertThat(judged.worst()).isCloseTo(0.32 * MM, within(1e-12));
        assertThat(judged.verdict()).isNotEqualTo(Verdict.OUT);
        Check pins = ChecksFromFile.check(
                "kind: length, lower: 1.50 mm, upper: 1.60 mm, reading_factor: 0.632," + " reading_offset: -15.864 mm");
        assertThat(pins.value(pins.reading(0.0123))).isCloseTo(0.0123, within(1e-12));
        assertThat(judge(pins, mm(27.5)).verdict()).isEqualTo(Verdict.IN);
    }

    @Test
    void aLimitIsRelativeToTheReadingBefore() {
        Check same =
                ChecksFromFile.check("kind: length, lower: -0.01 mm, upper: 0.01 mm, relative_to: H1/y, places: 2");
        assertThat(judge(same, mm(8.015, 8.012).after(List.of(8.01 * MM, 8.012 * MM)))
                        .verdict())
                .isEqualTo(Verdict.IN);
        Checks.Judged moved = judge(same, mm(8.035, 8.012).after(List.of(8.01 * MM, 8.01 * MM)));
        assertThat(moved.verdict()).isEqualTo(Verdict.OUT);
        assertThat(moved.say()).contains("is above the limit of 0.01 mm from the reading of H1/y");
        assertThat(Checks.judge(same, mm(8.015, 8.012), UnitSystem.METRIC).refusals())
                .singleElement()
                .satisfies(r -> assertThat(r.sentence()).contains("which is not read. Read H1/y first"));
        assertThat(Checks.judge(same, mm(80.15, 8.012).after(List.of(8.01 * MM)), UnitSystem.METRIC)
                        .isOk())
                .isFalse();
    }

    @Test
    void eachPieceIsAskedForAndNamed() {
        Check cups = ChecksFromFile.check(
                "kind: length, places: 2, spread: 0.02 mm, pieces: [left, right], nominal: [8.01 mm, 11.30 mm]");
        assertThat(judge(cups, mm(8.01, 8.02, 11.30, 11.31)).verdict()).isEqualTo(Verdict.IN);
        assertThat(judge(cups, mm(8.01, 8.02, 11.30, 11.35)).say())
                .startsWith("right: the readings spread over 0.050 mm");
        // changed over: each has its own nominal
        assertThat(Checks.judge(cups, mm(11.30, 11.31, 8.01, 8.02), UnitSystem.METRIC)
                        .refusals())
                .hasSize(4)
                .allSatisfy(r -> assertThat(r.place()).containsAnyOf("left", "right"));
        assertThat(Checks.judge(cups, mm(8.01, 8.02), UnitSystem.METRIC).refusals())
                .singleElement()
                .satisfies(r -> assertThat(r.sentence()).contains("2 of 4 readings. Read 2 of each: left, right"));
        WearLimit covers = ChecksFromFile.wear(
                "kind: length, as_new: [0 mm, 0.015 mm], limit: 0.03 mm, direction: max, pieces: [left, right]");
        assertThat(WearJudgement.of(covers, mm(0.04, 0.02), UnitSystem.METRIC)
                        .orElseThrow()
                        .say())
                .startsWith("left: 0.040 mm is above the limit");
        assertThat(WearJudgement.of(covers, mm(0.04, 0.05), UnitSystem.METRIC)
                        .orElseThrow()
                        .say())
                .contains("right: 0.050 mm is above")
                .endsWith("Beyond it as well: left 0.040 mm.");
        assertThat(WearJudgement.of(covers, mm(0.04, 0.05, 0.01), UnitSystem.METRIC)
                        .isOk())
                .isFalse();
    }

    @Test
    void theGaugeDecidesWhatIsProven() {
        // u = sqrt(0.02²/12 + 0.03²/3) = 0.0183; 1.645 u = 0.030: 1.02 is not proven above 1.00, 1.04 is
        Check gap = ChecksFromFile.check("kind: length, lower: 1.00 mm, upper: 1.60 mm");
        Checks.Judged near = judge(gap, mm(1.02).with(COARSE));
        assertThat(near.verdict()).isEqualTo(Verdict.NOT_PROVEN);
        assertThat(near.say()).contains("1.020 mm is within the limit of 1.00 mm, but the caliper cannot prove it");
        assertThat(near.working()).extracting(Line::symbol).contains("standard uncertainty");
        assertThat(judge(gap, mm(1.04).with(COARSE)).verdict()).isEqualTo(Verdict.IN);
        assertThat(judge(gap, mm(1.04).with(COARSE)).say()).isEqualTo("Within limits.");
        assertThat(judge(gap, mm(0.99).with(COARSE)).verdict()).isEqualTo(Verdict.OUT);
        assertThat(judge(gap, mm(1.02)).say()).contains("no gauge is named, so its uncertainty is not known");
        WearJudgement worn = WearJudgement.of(DemoUnit.A.wearLimit("C25"), mm(3.94).with(COARSE), UnitSystem.METRIC)
                .orElseThrow();
        assertThat(worn.verdict()).isEqualTo(Verdict.NOT_PROVEN);
        assertThat(worn.verdict()).isNotEqualTo(Verdict.OUT);
        assertThat(worn.say()).contains("but the caliper cannot prove it; about 66\u00a0700 km left");
    }

    @Test
    void theGaugeOfTheUnitFileIsLookedForInTheShop() {
        Check gap = ChecksFromFile.check("kind: length, lower: 1.00 mm, upper: 1.60 mm, gauge: DI");
        Shop.Gauge dial = new Shop.Gauge("DI", "the dial", Kind.LENGTH, 0.02 * MM, 0.03 * MM, 0, 0, 10 * MM, "");
        Shop shop = new Shop(
                Map.of(), Map.of("DI", dial, "TRQ", new Shop.Gauge("TRQ", "t", Kind.TORQUE, 1, 1, 0, 0, 9, "")));
        List<Double> read = List.of(1.02 * MM);
        assertThat(judge(gap, GaugeReadings.taken(read, gap, shop, "", "")).verdict())
                .isEqualTo(Verdict.NOT_PROVEN);
        assertThat(GaugeReadings.taken(read, gap, shop, "TRQ", "").gauge()).isEmpty();
        assertThat(GaugeReadings.taken(read, gap, new Shop(Map.of(), Map.of()), "", "")
                        .gauge())
                .isEmpty();
    }

    @Property
    void aFinerGaugeNeverProvesLess(
            @ForAll @DoubleRange(min = 0.7, max = 1.7) double reading,
            @ForAll @DoubleRange(min = 0, max = 0.1) double error) {
        Check gap = ChecksFromFile.check("kind: length, lower: 0.8 mm, upper: 1.6 mm");
        GaugeReadings read = mm(reading);
        Verdict coarse = judge(gap, read.with(new GaugeError("c", error * MM, error * MM, 0)))
                .verdict();
        Verdict fine = judge(gap, read.with(new GaugeError("f", error * MM / 2, error * MM / 3, 0)))
                .verdict();
        if (coarse != Verdict.NOT_PROVEN) {
            assertThat(fine).isEqualTo(coarse);
        }
        assertThat(judge(gap, read.with(new GaugeError("exact", 0, 0, 0))).verdict())
                .isEqualTo(reading >= 0.8 && reading <= 1.6 ? Verdict.IN : Verdict.OUT);
    }
}
