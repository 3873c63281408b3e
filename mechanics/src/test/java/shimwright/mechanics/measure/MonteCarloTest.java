package shimwright.mechanics.measure;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.hipparchus.distribution.RealDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.distribution.continuous.TriangularDistribution;
import org.hipparchus.distribution.continuous.UniformRealDistribution;
import org.hipparchus.stat.inference.KolmogorovSmirnovTest;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.outcome.Refusal;

class MonteCarloTest {
    private static final int DRAWS = 20_000;

    private static double[] sample(Distribution distribution) {
        RandomStream stream = new RandomStream(5, 3);
        return IntStream.range(0, DRAWS)
                .mapToDouble(i -> distribution.draw(stream))
                .toArray();
    }

    private static void follows(Distribution ours, RealDistribution theirs) {
        double p = new KolmogorovSmirnovTest().kolmogorovSmirnovTest(theirs, sample(ours));
        assertThat(p).as("%s", ours).isGreaterThan(0.01);
    }

    /** Kolmogorov-Smirnov of the reference library against its own distributions. */
    @Test
    void everyShapeFollowsTheReferenceLibrary() {
        follows(new Distribution.Normal(2), new NormalDistribution(0, 2));
        follows(new Distribution.ScaledT(1, 4), new TDistribution(4));
        follows(new Distribution.ScaledT(1, 1.5), new TDistribution(1.5));
        follows(new Distribution.Rectangular(3), new UniformRealDistribution(-3, 3));
        follows(new Distribution.Triangular(3), new TriangularDistribution(-3, 0, 3));
    }

    /** Standard deviations of JCGM 101:2008 6.4 and of JCGM 100:2008 4.3.7, 4.3.9. */
    @Test
    void everyShapeHasItsStandardDeviation() {
        for (Distribution shape : List.of(
                new Distribution.Normal(2),
                new Distribution.ScaledT(1, 8),
                new Distribution.Rectangular(3),
                new Distribution.RoughRectangular(1, 0.5),
                new Distribution.Trapezoid(2, 0.3),
                new Distribution.Triangular(3),
                new Distribution.Cyclic(0.5))) {
            double[] drawn = sample(shape);
            double s = Statistics.deviation(Arrays.stream(drawn).boxed().toList());
            assertThat(s / shape.deviation()).as("%s", shape).isCloseTo(1, within(0.03));
        }
        assertThat(new Distribution.ScaledT(1, 2).deviation()).isInfinite();
    }

    /** NIST e-Handbook 1.3.6.6.2-like check: arcsine law P(x ≤ a/2) = 2/3. */
    @Test
    void aSwingIsMostlyNearItsEnds() {
        long below = Arrays.stream(sample(new Distribution.Cyclic(1)))
                .filter(x -> x <= 0.5)
                .count();
        assertThat(below / (double) DRAWS).isCloseTo(2.0 / 3, within(0.01));
    }

    @Property(tries = 20)
    void threadsDoNotMatterToTheBit(
            @ForAll long seed, @ForAll @IntRange(min = 2, max = 8) int threads, @ForAll boolean adaptive) {
        List<Distribution> inputs = List.of(new Distribution.Normal(1), new Distribution.Rectangular(2));
        MonteCarlo.Model model = (x, y) -> {
            y[0] = Math.exp(x[0] / 4) + x[1];
            y[1] = x[0] * x[1];
            return x[0] < 3.5;
        };
        Sampling one = new Sampling(45_000, seed, 0.95, 1, adaptive);
        MonteCarlo.Run alone = MonteCarlo.run(inputs, 2, model, one);
        MonteCarlo.Run together = MonteCarlo.run(inputs, 2, model, one.onThreads(threads));
        assertThat(together).isEqualTo(alone);
        assertThat(alone.draws() + alone.refused()).isLessThanOrEqualTo(45_000);
    }

    /** A straight line needs no draws: mean and u are those of the first order within chance. */
    @Property(tries = 40)
    void aStraightLineMeetsTheFirstOrder(
            @ForAll @Size(min = 1, max = 5) List<@DoubleRange(min = -3, max = 3) Double> slopes, @ForAll long seed) {
        List<Distribution> inputs = Collections.nCopies(slopes.size(), new Distribution.Triangular(1));
        MonteCarlo.Model model = (x, y) -> {
            for (int i = 0; i < x.length; i++) {
                y[0] = (i == 0 ? 7 : y[0]) + slopes.get(i) * x[i];
            }
            return true;
        };
        DrawSummary drawn = requireNonNull(MonteCarlo.run(inputs, 1, model, Sampling.of(30_000, seed))
                .results()
                .get(0));
        double u = slopes.stream().mapToDouble(c -> c / Math.sqrt(6)).reduce(0, Math::hypot);
        assertThat(drawn.mean()).isCloseTo(7, within(6 * u / Math.sqrt(30_000) + 1e-9));
        assertThat(drawn.u()).isCloseTo(u, within(0.04 * u + 1e-9));
    }

    @Test
    void anExactSumOfRectanglesAgreesWithDrawsAndWithOtherForms() {
        RectangularSum sum = new RectangularSum(1, 2, 5);
        MonteCarlo.Model model = (x, y) -> {
            y[0] = x[0] + x[1] + x[2];
            return true;
        };
        List<Distribution> inputs = List.of(
                new Distribution.Rectangular(1), new Distribution.Rectangular(2), new Distribution.Rectangular(5));
        DrawSummary drawn = requireNonNull(MonteCarlo.run(inputs, 1, model, Sampling.of(400_000, 2))
                .results()
                .get(0));
        assertThat(drawn.symmetric().high()).isCloseTo(sum.halfWidth(0.95), within(0.03));
        assertThat(new RectangularSum(2).cumulative(1)).isCloseTo(0.75, within(1e-15));
        // two alike are triangular: P(x ≤ −a) = 1/8 for half-widths a each
        assertThat(new RectangularSum(1, 1).cumulative(-1)).isCloseTo(0.125, within(1e-15));
        assertThatThrownBy(() -> new RectangularSum()).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theAdaptiveRuleStopsOnceTheResultsStand() {
        MonteCarlo.Model model = (x, y) -> {
            y[0] = x[0];
            return true;
        };
        MonteCarlo.Run run = MonteCarlo.run(
                List.of(new Distribution.Normal(2.0)),
                1,
                model,
                Sampling.of(2_000_000, 1).adapting());
        DrawSummary found = requireNonNull(run.results().get(0));
        assertThat(run.settled()).isTrue();
        assertThat(run.draws()).isBetween(20_000, 1_000_000);
        assertThat(found.u()).isCloseTo(2, within(0.02));
        MonteCarlo.Run hurried = MonteCarlo.run(
                List.of(new Distribution.Normal(2.0)),
                1,
                model,
                Sampling.of(10_000, 1).adapting());
        assertThat(hurried.settled()).isFalse();
    }

    /** JCGM 101:2008 7.9.2: u = 0.00035 with two digits is 35·10⁻⁵, δ = 0.5·10⁻⁵; with one digit 4·10⁻⁴. */
    @Test
    void theNumericalToleranceIsHalfTheLastDigit() {
        assertThat(DrawSummary.tolerance(0.00035, 2)).isCloseTo(0.5e-5, within(1e-18));
        assertThat(DrawSummary.tolerance(0.00035, 1)).isCloseTo(0.5e-4, within(1e-18));
        assertThat(DrawSummary.tolerance(0.999, 1)).isCloseTo(0.5, within(1e-15));
        assertThat(DrawSummary.tolerance(0, 2)).isZero();
    }

    @Test
    void wishesOutOfReachAreRefusedInSentences() {
        assertThat(new Sampling(10, 1, 2, 0, false).checked().refusals())
                .extracting(Refusal::sentence)
                .hasSize(3)
                .allMatch(sentence -> sentence.contains("Take"));
        assertThat(Sampling.of(1_000, 1).covering(0.999).checked().refusals()).hasSize(1);
        assertThatThrownBy(() -> Interval.shortest(new double[] {1}, 0.5)).isInstanceOf(IllegalArgumentException.class);
    }
}
