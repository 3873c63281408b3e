package shimwright.rebuild.sendout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.job.Entry.Accept;

/** Sheets of work other than on splines: finished sizes against tables of fits, what is missing, and acceptance. */
class PlainSheetTest {
    private static final double MM = 1e-3;

    private static Map<String, String> typed(OtherWork work) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (OtherWork.Fact fact : work.facts()) {
            typed.put(
                    fact.name(),
                    switch (fact.typed()) {
                        case WORDS -> "as the trade does it";
                        case READINGS -> "60.000 mm";
                        case NUMBER -> "0.01";
                    });
        }
        Map.of("fitLeast", "-0.030", "fitMost", "-0.002", "mateU", "0", "length", "20", "thick", "31.2")
                .forEach((name, value) -> typed.computeIfPresent(name, (n, was) -> value));
        Map.of("shaft", "25", "bore", "40", "sizeLeast", "59.990", "sizeMost", "60.000", "hardLeast", "55")
                .forEach((name, value) -> typed.computeIfPresent(name, (n, was) -> value));
        typed.computeIfPresent("hardMost", (n, was) -> "62");
        typed.computeIfPresent("roughMost", (n, was) -> "0.8");
        return typed;
    }

    private static Outcome<PlainSheet> sheet(OtherWork work, Map<String, String> typed, double... mate) {
        List<Double> readings = Arrays.stream(mate).map(m -> m * MM).boxed().toList();
        boolean asked = work.facts().stream().anyMatch(fact -> fact.name().equals("mate"));
        return PlainSheet.of(work, typed, asked ? Map.of("mate", readings) : Map.of(), UnitSystem.METRIC);
    }

    private static Map<String, Double> size(OtherWork work, String least, String most, double... mate) {
        Map<String, String> typed = typed(work);
        typed.put("fitLeast", least);
        typed.put("fitMost", most);
        return sheet(work, typed, mate).orElseThrow().accept().get(0).limits();
    }

    /**
     * A bearing bore of 60 mm is 0 to −15 µm (ISO 492, normal) and its k5 seat +2 to +15 µm (ISO 286-2): together 2 to 30 µm tight, as
     * makers of bearings print it. From memory.
     */
    @Test
    void aSeatWithTheInterferenceOfAFitHasTheLimitsOfThatFit() {
        Map<String, Double> seat = size(OtherWork.GROUND_SEAT, "-0.030 mm", "-0.002 mm", 59.985, 60.000);
        assertThat(seat.get("lower")).isCloseTo(60.002 * MM, within(1e-9));
        assertThat(seat.get("upper")).isCloseTo(60.015 * MM, within(1e-9));
    }

    /** A bearing outside of 110 mm is 0 to −15 µm (ISO 492, normal) and H7 there 0 to +35 µm (ISO 286-2): 0 to 50 µm of play. From memory. */
    @Test
    void aBoreWithThePlayOfAFitHasTheLimitsOfThatFit() {
        Map<String, Double> bore = size(OtherWork.SLEEVED_BORE, "0 mm", "0.050 mm", 109.985, 110.000);
        assertThat(bore.get("lower")).isCloseTo(110.000 * MM, within(1e-9));
        assertThat(bore.get("upper")).isCloseTo(110.035 * MM, within(1e-9));
    }

    /** h11 of 25 mm is 0 to −130 µm (ISO 286-1:2010, table 1, IT11 over 18 to 30 mm), which ISO 6194-1 asks of a seal's track; from memory. */
    @Test
    void aSealTrackIsAskedForAsItsStandardHasIt() {
        PlainSheet sheet =
                sheet(OtherWork.SEAL_TRACK, typed(OtherWork.SEAL_TRACK)).orElseThrow();
        assertThat(sheet.accept().get(0).limits().get("lower")).isCloseTo(24.870 * MM, within(1e-9));
        assertThat(sheet.accept().get(0).limits().get("upper")).isCloseTo(25.000 * MM, within(1e-9));
        assertThat(sheet.accept()).extracting(Accept::id).contains("rough", "lead", "cracks");
        assertThat(sheet.work().get("Surface")).contains("0.2 to 0.8", "no lead");
    }

    @ParameterizedTest
    @EnumSource(OtherWork.class)
    void everySortIsWrittenAndSaysHowItIsAccepted(OtherWork work) {
        PlainSheet sheet = sheet(work, typed(work), 60).orElseThrow();
        assertThat(sheet.work()).containsKeys("Asked for", "Mind", "Cracks");
        assertThat(sheet.accept())
                .isNotEmpty()
                .allSatisfy(accept -> assertThat(accept.how()).isNotBlank());
        if (work != OtherWork.CRACK_CHECK) {
            assertThat(sheet.work()).containsKey("Keep cool");
            assertThat(sheet.accept().size()).isGreaterThan(2);
        }
    }

    @ParameterizedTest
    @EnumSource(OtherWork.class)
    void whatIsNeededIsAskedForAllAtOnce(OtherWork work) {
        List<String> needed = work.facts().stream()
                .filter(OtherWork.Fact::needed)
                .map(fact -> "more." + fact.name())
                .toList();
        assertThat(PlainSheet.of(work, Map.of(), Map.of(), UnitSystem.METRIC).refusals())
                .extracting(Refusal::key)
                .containsExactlyElementsOf(needed);
    }

    /** One thing missing hides none of what is wrong besides. */
    @Test
    void whatDoesNotFitIsSaidBesideWhatIsMissing() {
        Map<String, String> typed = typed(OtherWork.GROUND_SEAT);
        typed.put("keepCool", "");
        typed.put("runOut", "3 kg");
        typed.put("hardLeast", "60");
        typed.put("hardMost", "50");
        assertThat(sheet(OtherWork.GROUND_SEAT, typed, 59.960, 60.000).refusals())
                .extracting(Refusal::key)
                .containsExactlyInAnyOrder("more.keepCool", "more.runOut", "more.hardMost", "more.fitMost");
        Map<String, String> bore = typed(OtherWork.REGROUND_BORE);
        bore.put("sizeMost", "59.980");
        bore.put("datum", "");
        bore.remove("mateU");
        assertThat(sheet(OtherWork.REGROUND_BORE, bore, 60.000).refusals())
                .extracting(Refusal::key)
                .containsExactlyInAnyOrder("more.sizeMost", "more.datum", "more.mateU");
    }

    /** Every size within the limits has the play that is wanted to every size that the mate may truly have, two standard uncertainties round each reading. */
    @Property(tries = 300)
    void theFitHoldsWhateverTheMateTrulyIs(
            @ForAll @DoubleRange(min = 40, max = 80) double reading,
            @ForAll @IntRange(min = 0, max = 6) int micrometresApart,
            @ForAll @IntRange(min = -40, max = 20) int leastPlay,
            @ForAll @IntRange(min = 20, max = 60) int wide,
            @ForAll @IntRange(min = 0, max = 20) int tenthsOfDoubt) {
        double apart = micrometresApart / 1000.0;
        double least = leastPlay / 1000.0;
        double band = wide / 1000.0;
        double u = tenthsOfDoubt / 10_000.0;
        for (OtherWork work : List.of(OtherWork.GROUND_SEAT, OtherWork.SLEEVED_BORE)) {
            Map<String, String> typed = typed(work);
            typed.put("fitLeast", least + " mm");
            typed.put("fitMost", (least + band) + " mm");
            typed.put("mateU", u + " mm");
            Map<String, Double> limits = sheet(work, typed, reading, reading + apart)
                    .orElseThrow()
                    .accept()
                    .get(0)
                    .limits();
            boolean shaft = work == OtherWork.GROUND_SEAT;
            for (double part :
                    new double[] {limits.getOrDefault("lower", 0.0) / MM, limits.getOrDefault("upper", 0.0) / MM}) {
                for (double mate : new double[] {reading - 2 * u, reading + apart + 2 * u}) {
                    double play = shaft ? mate - part : part - mate;
                    assertThat(play).isBetween(least - 1e-9, least + band + 1e-9);
                }
            }
        }
    }

    @Test
    void aMateThatIsMeasuredTooRoughlyOrIsOutOfRoundIsRefused() {
        Map<String, String> typed = typed(OtherWork.GROUND_SEAT);
        assertThat(sheet(OtherWork.GROUND_SEAT, typed, 59.960, 60.000).refusals())
                .extracting(Refusal::key)
                .containsExactly("more.fitMost");
        typed.put("mateU", "0.010");
        assertThat(sheet(OtherWork.GROUND_SEAT, typed, 60.000).refusals())
                .extracting(Refusal::sentence)
                .allMatch(said -> said.contains("Measure the mate better"));
    }

    @ParameterizedTest
    @CsvSource({"60.010, 1, IN", "60.0145, 1, NOT_PROVEN", "60.020, 1, OUT", "60.0145, 0.1, IN", "60.001, 0.1, OUT"})
    void itComesBackToItsNumbersWithTheirDoubt(double read, double micrometres, Verdict verdict) {
        Accept size = sheet(OtherWork.GROUND_SEAT, typed(OtherWork.GROUND_SEAT), 59.985, 60.000)
                .orElseThrow()
                .accept()
                .get(0);
        assertThat(Acceptance.read(size, List.of(60.008 * MM, read * MM), micrometres * 1e-6, UnitSystem.METRIC)
                        .verdict())
                .isEqualTo(verdict);
    }
}
