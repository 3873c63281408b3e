package shimwright.rebuild.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.job.Entry.Accept;
import shimwright.rebuild.sendout.Acceptance;
import shimwright.rebuild.unit.model.UnitType.Check;
import shimwright.rebuild.unit.model.WearLimit;

/**
 * The slips of {@link SlipsTest} where several readings make one value, where limits lie below nothing or hang on an earlier reading, and at
 * the limits of work that comes back. Common practice, no source.
 */
class SlipsOfListsTest {
    /** Of a mean of several places one reading slips: a ring that is worn would pass by it, so it is asked about. */
    @ParameterizedTest
    @CsvSource({"3", "4", "6"})
    void oneReadingOfAMeanThatSlippedIsAskedAbout(int places) {
        WearLimit mean = ChecksFromFile.wear("kind: length, as_new: [0.12 mm, 0.20 mm], limit: 0.30 mm, direction: max,"
                + " judged_on: mean, places: " + places);
        for (Map.Entry<String, Double> slip : SlipsTest.SLIPS.entrySet()) {
            double factor = slip.getValue();
            if (factor == 2 || factor == 0.5) {
                continue;
            }
            List<Double> readings = new ArrayList<>();
            for (int i = 0; i < places; i++) {
                readings.add((0.31 + 0.004 * i) / 1000 * (i == 1 ? factor : 1));
            }
            assertThat(Magnitude.asked(mean, GaugeReadings.of(readings)))
                    .as("%s of %s", slip.getKey(), places)
                    .isNotEmpty();
        }
        List<Double> uneven = new ArrayList<>();
        for (int i = 0; i < places; i++) {
            uneven.add(i == 1 ? 0.06e-3 : 0.28e-3);
        }
        assertThat(Magnitude.asked(mean, GaugeReadings.of(uneven))).isEmpty();
    }

    /** A range is judged by its readings, so one of them slips and not the range itself; two places as well as more. */
    @ParameterizedTest
    @CsvSource({"2", "3", "5"})
    void oneReadingOfARangeThatSlippedIsAskedAbout(int places) {
        Check range = ChecksFromFile.check("kind: length, upper: 0.04 mm, judged_on: range, places: " + places);
        for (Map.Entry<String, Double> slip : SlipsTest.SLIPS.entrySet()) {
            List<Double> readings = new ArrayList<>();
            for (int i = 0; i < places; i++) {
                readings.add((50 + 0.05 * i / (places - 1)) / 1000 * (i == 1 ? slip.getValue() : 1));
            }
            assertThat(Magnitude.asked(range, GaugeReadings.of(readings)))
                    .as("%s of %s", slip.getKey(), places)
                    .isNotEmpty();
        }
    }

    /** A gap from two depths: either of them slips. */
    @Test
    void eitherDepthOfADifferenceThatSlippedIsAskedAbout() {
        Check gap = ChecksFromFile.check(
                "kind: length, lower: 0.10 mm, upper: 0.20 mm, judged_on: difference, pieces: [deep, shallow]");
        for (Map.Entry<String, Double> slip : SlipsTest.SLIPS.entrySet()) {
            for (int which = 0; which < 2; which++) {
                double deep = 25.30e-3 * (which == 0 ? slip.getValue() : 1);
                double shallow = 25.05e-3 * (which == 1 ? slip.getValue() : 1);
                assertThat(Magnitude.asked(gap, GaugeReadings.of(List.of(deep, shallow))))
                        .as("%s of %s", slip.getKey(), which)
                        .isNotEmpty();
            }
        }
        // changed for each other they make a gap of less than nothing
        assertThat(Magnitude.asked(gap, GaugeReadings.of(List.of(25.05e-3, 25.30e-3))))
                .isNotEmpty();
    }

    /** Limits that are added to an earlier reading: the later one slips. */
    @Test
    void aReadingAgainstAnEarlierOneThatSlippedIsAskedAbout() {
        Check after =
                ChecksFromFile.check("kind: length, lower: -0.01 mm, upper: 0.01 mm, relative_to: H1/y, places: 2");
        SlipsTest.SLIPS.forEach((slip, factor) -> {
            double later = 50.02e-3 * factor;
            GaugeReadings readings =
                    new GaugeReadings(List.of(later, later), Optional.empty(), List.of(50.00e-3, 50.00e-3), "");
            assertThat(Magnitude.asked(after, readings)).as(slip).isNotEmpty();
        });
    }

    /** Pieces of different sizes typed in each other's field. */
    @Test
    void piecesChangedForEachOtherAreAskedAbout() {
        Check sides = ChecksFromFile.check(
                "kind: length, places: 2, spread: 0.02 mm, pieces: [left, right], nominal: [8.01 mm, 11.30 mm]");
        assertThat(Magnitude.asked(sides, GaugeReadings.of(List.of(8.01e-3, 8.02e-3, 11.30e-3, 11.31e-3))))
                .isEmpty();
        assertThat(Magnitude.asked(sides, GaugeReadings.of(List.of(11.30e-3, 11.31e-3, 8.01e-3, 8.02e-3))))
                .isNotEmpty();
    }

    /** Preloads are below nothing, and limits may lie on both sides of it: a sign that slipped is told only where both signs cannot be. */
    @Test
    void limitsBelowNothingAndAcrossIt() {
        Check preload = ChecksFromFile.check("kind: length, lower: -0.06 mm, upper: -0.02 mm");
        Check across = ChecksFromFile.check("kind: length, lower: -0.02 mm, upper: 0.03 mm");
        Set<String> unseenBelow = new TreeSet<>();
        Set<String> unseenAcross = new TreeSet<>();
        SlipsTest.SLIPS.forEach((slip, factor) -> {
            if (SlipsTest.passes(preload, -0.066e-3 * factor) || SlipsTest.passes(preload, -0.018e-3 * factor)) {
                unseenBelow.add(slip);
            }
            if (SlipsTest.passes(across, -0.022e-3 * factor) || SlipsTest.passes(across, 0.033e-3 * factor)) {
                unseenAcross.add(slip);
            }
        });
        assertThat(unseenBelow).isEqualTo(Set.of("half", "twice"));
        assertThat(unseenAcross)
                .isEqualTo(Set.of(
                        "half", "a tenth", "a hundredth", "a thousandth", "millimeters for inches", "the other way"));
    }

    /** The limits of work that comes back: a diameter between two, a height of at least, a run-out of at most. */
    @Test
    void everySlipIsTriedAgainstTheLimitsOfWorkThatComesBack() {
        Map<String, Accept> limits = Map.of(
                "between",
                        new Accept("size", "diameter", Kind.LENGTH, Map.of("lower", 59.99e-3, "upper", 60.00e-3), ""),
                "least", new Accept("thick", "height", Kind.LENGTH, Map.of("lower", 31.2e-3), ""),
                "most", new Accept("runOut", "run-out", Kind.LENGTH, Map.of("upper", 0.03e-3), ""));
        Map<String, double[]> bad = Map.of(
                "between", new double[] {59.96e-3, 60.03e-3}, "least", new double[] {31.0e-3}, "most", new double[] {
                    0.04e-3
                });
        Map<String, Set<String>> unseen = new LinkedHashMap<>();
        limits.forEach((which, accept) -> {
            for (double value : bad.getOrDefault(which, new double[] {})) {
                SlipsTest.SLIPS.forEach((slip, factor) -> {
                    List<Double> read = List.of(value * factor);
                    boolean in =
                            Acceptance.read(accept, read, 0, UnitSystem.METRIC).verdict() == Verdict.IN;
                    if (in && Acceptance.asked(accept, read, UnitSystem.METRIC).isEmpty()) {
                        unseen.computeIfAbsent(which, w -> new TreeSet<>()).add(slip);
                    }
                });
            }
        });
        assertThat(unseen)
                .isEqualTo(Map.of(
                        "least",
                        Set.of("twice"),
                        "most",
                        Set.of("half", "a tenth", "a hundredth", "a thousandth", "millimeters for inches")));
    }
}
