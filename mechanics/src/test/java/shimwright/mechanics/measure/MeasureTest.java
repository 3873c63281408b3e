package shimwright.mechanics.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class MeasureTest {
    @Property(tries = 60)
    void theExactTrendTestIsTheCountOfAllOrders(
            @ForAll @Size(min = 2, max = 7) List<@IntRange(max = 4) Integer> values) {
        List<Double> series = values.stream().map(Integer::doubleValue).toList();
        int s = Trend.s(series);
        int[] counts = new int[3];
        count(new ArrayList<>(series), 0, s, counts);
        assertThat(Trend.climbing(series)).isCloseTo(counts[0] / (double) counts[2], within(1e-12));
        assertThat(Trend.falling(series)).isCloseTo(counts[1] / (double) counts[2], within(1e-12));
    }

    private static void count(List<Double> series, int from, int s, int[] counts) {
        if (from == series.size()) {
            int here = Trend.s(series);
            counts[0] += here >= s ? 1 : 0;
            counts[1] += here <= s ? 1 : 0;
            counts[2]++;
        }
        for (int i = from; i < series.size(); i++) {
            Collections.swap(series, from, i);
            count(series, from + 1, s, counts);
            Collections.swap(series, from, i);
        }
    }

    @Test
    void threeReadingsCanNeverShowATrend() {
        assertThat(Trend.critical(3, 0.05)).isEqualTo(4);
        assertThat(Trend.climbing(List.of(1.0, 2.0, 3.0))).isCloseTo(1.0 / 6, within(1e-12));
        assertThat(Trend.climbing(List.of(1.0))).isEqualTo(1);
    }

    @Test
    void longSeriesUseTheNormalFormAndMeetTheExactOne() {
        Random random = new Random(3);
        List<Double> sixty = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            sixty.add((double) random.nextInt(8) + i / 40.0);
        }
        double exact = Trend.climbing(sixty);
        double normal = 1 - Student.cumulative(Trend.z(sixty), Double.POSITIVE_INFINITY);
        assertThat(normal).isCloseTo(exact, within(0.005));
        sixty.add(9.0);
        assertThat(Trend.climbing(sixty)).isBetween(0.0, 1.0);
        assertThat(Trend.climbing(Collections.nCopies(61, 1.0))).isEqualTo(1);
    }

    @Test
    void aStandingSeriesHasNoScatterDriftOrOutlier() {
        List<Double> still = List.of(2.0, 2.0, 2.0, 2.0, 2.0);
        assertThat(Statistics.deviation(still)).isZero();
        assertThat(Statistics.lag1(still)).isZero();
        assertThat(VonNeumann.ratio(still)).isEqualTo(2);
        assertThat(Outliers.grubbs(still)).isZero();
        assertThat(Outliers.dixon(still)).isZero();
        assertThat(Outliers.among(still, 0)).isEmpty();
        assertThat(Statistics.correlation(still, still)).isZero();
        assertThat(Statistics.median(List.of(4.0, 1.0))).isEqualTo(2.5);
    }

    @Test
    void fiftyCorrelatedReadingsMayBeWorthTwo() {
        // metrology notes: r = 0.938 leaves 1.6 of 50
        List<Double> drift = new ArrayList<>();
        for (int i = 0; i < 50; i++) {
            drift.add(i * 0.1);
        }
        assertThat(Statistics.effectiveCount(drift)).isLessThan(2);
    }

    @Test
    void theVonNeumannTailAgreesWithAnotherRoute() {
        // n = 4 to 10 stand in metrology.csv; here a seeded simulation of n = 6, 200 000 series
        Random random = new Random(11);
        double point = VonNeumann.quantile(6, 0.05);
        int below = 0;
        for (int i = 0; i < 200_000; i++) {
            List<Double> series = new ArrayList<>();
            for (int k = 0; k < 6; k++) {
                series.add(random.nextGaussian());
            }
            below += VonNeumann.ratio(series) <= point ? 1 : 0;
        }
        assertThat(below / 200_000.0).isCloseTo(0.05, within(0.0015));
        assertThatThrownBy(() -> VonNeumann.cumulative(3, 1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void oneReadingOffTheOthersIsNamedByPlace() {
        assertThat(Outliers.among(List.of(0.24, 0.25, 0.34), 0.02)).containsExactly(2);
        assertThat(Outliers.among(List.of(0.24, 0.25), 0.001)).isEmpty();
        assertThat(Outliers.among(List.of(0.1, 0.2, 0.3, 0.4), 0.02)).isEmpty();
        assertThat(Outliers.among(List.of(0.0, 0.03, 0.0, 0.03, 0.0, 0.03, 0.015, 0.3), 0.02))
                .containsExactly(7);
        assertThat(Outliers.dixon(List.of(1.0, 2.0, 7.0))).isCloseTo(5.0 / 6, within(1e-12));
        assertThat(Outliers.grubbsProbability(3, 1.2)).isZero();
    }

    @Test
    void formsWithoutAPublishedRowMeetTheirLimits() {
        assertThat(Uncertainties.trapezoid(2, 1)).isCloseTo(Uncertainties.rectangular(2), within(1e-15));
        assertThat(Uncertainties.trapezoid(2, 0)).isCloseTo(Uncertainties.triangular(2), within(1e-15));
        assertThat(Uncertainties.betweenBounds(2, 2)).isCloseTo(Uncertainties.rectangular(2), within(1e-15));
        assertThat(Uncertainties.expanded(0.01, 2)).isEqualTo(0.005);
        assertThat(Budget.NONE.u()).isZero();
        assertThat(Student.cumulative(Double.NEGATIVE_INFINITY, 3)).isZero();
        assertThat(Student.cumulative(Double.POSITIVE_INFINITY, 3)).isEqualTo(1);
        // Y = X² at 0: first order says 0, mean square of X² is 2u⁴ (JCGM 101:2008 9.4)
        double[] zero = {0};
        double[] u = {0.5};
        assertThat(Combination.firstOrder(x -> x[0] * x[0], zero, u)).isZero();
        assertThat(Combination.secondOrder(x -> x[0] * x[0], zero, u)).isCloseTo(Math.sqrt(2) * 0.25, within(1e-12));
    }

    @Test
    void impossibleArgumentsAreBugs() {
        assertThatThrownBy(() -> Uncertainties.rectangular(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Uncertainties.trapezoid(1, 2)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Uncertainties.expanded(1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Uncertainties.ofMean(1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Uncertainties.ofScaledT(1, 2)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Statistics.mean(List.of())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Statistics.covariance(List.of(1.0, 2.0), List.of(1.0, 2.0, 3.0)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Statistics.c4(1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Student.quantile(1, 3)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Contribution.of("x", Double.NaN, 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
