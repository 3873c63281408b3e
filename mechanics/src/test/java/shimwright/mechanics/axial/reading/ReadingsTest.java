package shimwright.mechanics.axial.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shimwright.mechanics.axial.DemoTransaxle;
import shimwright.mechanics.measure.Statistics;
import shimwright.mechanics.outcome.Refusal;

class ReadingsTest {
    private static Readings.Result read(double withinMillimetres, List<List<Double>> rounds) {
        return Readings.work(new Readings.Case(rounds, DemoTransaxle.INDICATOR, withinMillimetres / 1000, 3))
                .orElseThrow()
                .result();
    }

    @Test
    void aSeriesThatClimbedIsReadFromWhereItSettled() {
        // demo T06_nose: the setting cup stood off and came home by taps
        Readings.Result nose = read(0.01, DemoTransaxle.series(32.07, 32.11, 32.15, 32.17, 32.18, 32.18, 32.18));
        assertThat(nose.seating()).isEqualTo(Seating.SETTLED);
        assertThat(nose.value()).isCloseTo(32.18e-3, within(1e-12));
        assertThat(nose.firstRoundUsed()).isEqualTo(5);
        assertThat(nose.roundsUsed()).isEqualTo(3);
        assertThat(nose.moreRoundsWanted()).isZero();
        assertThat(nose.outliers()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "'0.24', TOO_FEW, 2",
        "'0.24 0.24', TOO_FEW, 1",
        "'0.24 0.24 0.24', SETTLED, 0",
        "'0.20 0.24 0.28', CLIMBING, 2",
        "'0.20 0.28 0.28', CLIMBING, 1",
        "'0.28 0.24 0.20', FALLING, 2",
        "'0.28 0.20 0.26', SCATTERED, 2",
        "'0.20 0.21 0.22 0.23 0.24 0.25', CLIMBING, 1",
        "'0.24 0.25 0.34 0.24 0.25', SCATTERED, 1",
        "'0.24 0.25 0.34 0.24 0.25 0.24', SETTLED, 0"
    })
    void theSeriesSaysWhetherItHasComeToRest(String series, Seating seating, int more) {
        double[] values = List.of(series.split(" ")).stream()
                .mapToDouble(Double::parseDouble)
                .toArray();
        Readings.Result result = read(0.02, DemoTransaxle.series(values));
        assertThat(result.seating()).isEqualTo(seating);
        assertThat(result.moreRoundsWanted()).isEqualTo(more);
        assertThat(result.advice()).isNotBlank();
    }

    @Test
    void anOutlierIsNamedAndNotAveragedIn() {
        Readings.Result result = read(0.02, DemoTransaxle.series(0.24, 0.25, 0.34, 0.24, 0.25, 0.24));
        assertThat(result.outliers()).containsExactly(3);
        assertThat(result.firstRoundUsed()).isEqualTo(4);
        assertThat(result.advice()).contains("Round 3 stands 0.100 mm (0.0039 in) off the others");
    }

    @Test
    void theBudgetIsThatOfTheWorkedExample() {
        // metrology.csv BUD-01, BUD-02: s 4 µm of 5, step 10, error limit 5, retrace 3 µm: 5.586 µm, ν 380
        double s = 4e-6 / Math.sqrt(1.5); // five values 0, ±a, ±b with s = 4 µm
        List<List<Double>> rounds = new ArrayList<>();
        for (double z : new double[] {-1.5, 1.5, 0, 1, -1}) {
            rounds.add(List.of(0.25e-3 + z * s * Math.sqrt(6 / 6.5)));
        }
        assertThat(Statistics.deviation(rounds.stream().map(r -> r.get(0)).toList()))
                .isCloseTo(4e-6, within(1e-15));
        Readings.Result result = read(0.02, rounds);
        assertThat(result.roundsUsed()).isEqualTo(5);
        assertThat(result.u()).isCloseTo(5.586e-6, within(0.001e-6));
        assertThat(result.nu()).isCloseTo(380, within(1.0));
        assertThat(result.budget().contributions()).hasSize(4);
    }

    @Test
    void twoIndicatorsHalveTheirVarianceAndAPooledScatterStandsIn() {
        GaugeData pooled = new GaugeData(0, 5e-6, 0, 4e-6);
        Readings.Case one = new Readings.Case(DemoTransaxle.series(0.24, 0.24, 0.24, 0.24), pooled, 2e-5, 3);
        Readings.Case two = new Readings.Case(
                DemoTransaxle.rounds(
                        new double[] {0.24, 0.24}, new double[] {0.24, 0.24}, new double[] {0.24, 0.24}, new double[] {
                            0.24, 0.24
                        }),
                pooled,
                2e-5,
                3);
        double single = Math.hypot(4e-6 / 2, 5e-6 / Math.sqrt(3));
        assertThat(Readings.work(one).orElseThrow().result().u()).isCloseTo(single, within(1e-12));
        assertThat(Readings.work(two).orElseThrow().result().u()).isCloseTo(single / Math.sqrt(2), within(1e-12));
    }

    @Test
    void roundsOfUnlikeOrWrongSizeAreRefusedTogether() {
        List<List<Double>> rounds = List.of(List.of(1e-4, 1e-4), List.of(1e-4), List.of(1e-4, 1e-4, 1e-4));
        assertThat(Readings.work(new Readings.Case(rounds, DemoTransaxle.INDICATOR, 2e-5, 3))
                        .refusals())
                .extracting(Refusal::sentence)
                .containsExactly(
                        "round 2: 1 value, 2 in round 1. Read the same indicators in every round.",
                        "round 3: 3 values given. A round has one value, or one per indicator of two.");
    }

    @Property
    void anUnseatedReadingIsTooSmallNeverTooLarge(
            @ForAll @Size(min = 1, max = 8) List<@DoubleRange(min = 0, max = 0.2) Double> shortfalls) {
        // common practice, no source: what is not yet home takes up the travel that is being measured
        List<Double> climb = new ArrayList<>();
        shortfalls.stream().sorted(Collections.reverseOrder()).forEach(gap -> climb.add(0.3e-3 - gap / 1000));
        climb.addAll(List.of(0.3e-3, 0.3e-3, 0.3e-3));
        List<List<Double>> rounds = climb.stream().map(List::of).toList();
        Readings.Result result = read(0.01, rounds);
        assertThat(result.seating()).isEqualTo(Seating.SETTLED);
        for (int n = 1; n <= climb.size(); n++) {
            assertThat(Statistics.mean(climb.subList(0, n))).isLessThanOrEqualTo(0.3e-3 + 1e-15);
            Readings.Result early = read(0.01, rounds.subList(0, n));
            assertThat(early.value()).isLessThanOrEqualTo(0.3e-3 + 1e-12);
        }
    }

    @Property
    void theOrderOfTheIndicatorsDoesNotMatter(
            @ForAll @Size(min = 3, max = 7) List<@DoubleRange(min = 0, max = 0.4) Double> first,
            @ForAll @DoubleRange(min = -0.1, max = 0.1) double tilt) {
        List<List<Double>> rounds =
                first.stream().map(x -> List.of(x / 1000, (x + tilt) / 1000)).toList();
        List<List<Double>> swapped =
                rounds.stream().map(r -> List.of(r.get(1), r.get(0))).toList();
        Readings.Result one = read(0.02, rounds);
        Readings.Result two = read(0.02, swapped);
        assertThat(two.value()).isCloseTo(one.value(), within(1e-15));
        assertThat(two.seating()).isEqualTo(one.seating());
        assertThat(one.u()).isFinite().isPositive();
    }
}
