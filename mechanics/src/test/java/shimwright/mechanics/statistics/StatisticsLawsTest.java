package shimwright.mechanics.statistics;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.WeibullDistribution;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.history.DrawerStock;
import shimwright.mechanics.history.PastJobs;
import shimwright.mechanics.history.Weibull;
import shimwright.mechanics.measure.Quadrature;
import shimwright.mechanics.measure.RangeConstants;
import shimwright.mechanics.measure.RunLength;
import shimwright.mechanics.published.AiagData;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.reference.Table;
import shimwright.mechanics.study.GaugeStudy;
import shimwright.mechanics.study.ToleranceLoop;
import shimwright.mechanics.worksheet.Answer;

/** Laws of the statistics sheets, and values from the literature beyond metrology.csv. */
class StatisticsLawsTest {
    private static GaugeStudy.Result study(String rounds, String form) {
        Answer answer = GaugeStudy.SHEET
                .answer(Map.of("rounds", rounds, "form", form), UnitSystem.METRIC)
                .orElseThrow();
        return (GaugeStudy.Result) answer.result();
    }

    /** Neither the order of the rounds nor who is named first matters. */
    @Property(tries = 20)
    void theOrderOfAStudyDoesNotMatter(@ForAll long seed) {
        List<String> rounds = new ArrayList<>(List.of(AiagData.ROUNDS.split("; ", -1)));
        Collections.shuffle(rounds, new Random(seed));
        for (String form : List.of("anova", "average and range")) {
            GaugeStudy.Result kept = study(AiagData.ROUNDS, form);
            GaugeStudy.Result mixed = study(String.join("; ", rounds), form);
            assertThat(mixed.gauge()).isCloseTo(kept.gauge(), within(1e-12));
            assertThat(requireNonNull(mixed.parts())).isCloseTo(requireNonNull(kept.parts()), within(1e-12));
        }
    }

    /** AIAG MSA 4th ed.: the interaction of the printed study is chance (F 0.434), and is pooled. */
    @Test
    void theInteractionIsPooledAndTheIntervalHoldsTheGauge() {
        GaugeStudy.Result result = study(AiagData.ROUNDS, "anova");
        assertThat(result.pooled()).isTrue();
        assertThat(requireNonNull(result.table().get(2).f())).isCloseTo(0.434, within(0.0005));
        assertThat(result.gauge()).isBetween(requireNonNull(result.gaugeLow()), requireNonNull(result.gaugeHigh()));
        assertThat(result.over()).containsExactly("B, part 4");
        GaugeStudy.Result alone = study("A: 1 2 3; A: 1.1 2.1 2.9", "anova");
        assertThat(alone.reproducibility()).isNull();
    }

    /** Printed factors against integration: to one unit of their last digit. */
    @Test
    void printedFactorsAgreeWithIntegration() {
        for (Table.Row row : Table.read("iso-7870-2-2013/factors.csv").rows()) {
            int n = (int) row.number("n");
            assertThat(RangeConstants.d2(n)).isCloseTo(row.number("d2"), within(0.0006));
            assertThat(RangeConstants.d3(n)).isCloseTo(row.number("d3"), within(0.0006));
            assertThat(RangeConstants.meanLimit(n)).isCloseTo(row.number("A2"), within(0.001));
            assertThat(RangeConstants.lowerRange(n)).isCloseTo(row.number("D3"), within(0.001));
            assertThat(RangeConstants.upperRange(n)).isCloseTo(row.number("D4"), within(0.001));
        }
    }

    /** Run lengths: Shewhart 370.4; Lucas and Saccucci 1990 (500 each); Montgomery, cusum k = ½ (from memory). */
    @Test
    void runLengthsAgreeWithTheLiterature() {
        assertThat(RunLength.ewma(1, 3, 0)).isCloseTo(370.4, within(0.05));
        assertThat(RunLength.ewma(0.5, 3.071, 0)).isCloseTo(500, within(2.0));
        assertThat(RunLength.ewma(0.25, 2.998, 0)).isCloseTo(500, within(2.0));
        assertThat(RunLength.ewma(0.1, 2.814, 0)).isCloseTo(500, within(2.0));
        assertThat(RunLength.ewma(0.1, 2.814, 1)).isCloseTo(10.3, within(0.1));
        assertThat(RunLength.cusum(0.5, 5, 0)).isCloseTo(465, within(0.5));
        assertThat(RunLength.cusum(0.5, 4, 0)).isCloseTo(168, within(0.5));
        assertThat(RunLength.cusum(0.5, 4, 1)).isCloseTo(8.38, within(0.005));
        assertThat(RunLength.cusum(0.5, 5, 1)).isCloseTo(10.4, within(0.05));
    }

    @Property(tries = 60)
    void rootSumOfSquaresIsNeverWorseThanTheWorstCase(
            @ForAll @IntRange(min = 1, max = 6) int links,
            @ForAll @DoubleRange(min = 0.01, max = 0.2) double tolerance) {
        List<String> list = new ArrayList<>();
        for (int i = 0; i < links; i++) {
            list.add("l" + i + ": 10 mm: " + tolerance * (i + 1) + " mm: " + (i % 2 == 0 ? 1 : -1) + ": rectangular");
        }
        ToleranceLoop.Result loop = (ToleranceLoop.Result) ToleranceLoop.SHEET
                .answer(Map.of("links", String.join("; ", list), "most", "10.1 mm"), UnitSystem.METRIC)
                .orElseThrow()
                .result();
        assertThat(loop.squares()).isLessThanOrEqualTo(loop.worst() * (1 + 1e-12));
        assertThat(loop.drawnHigh() - loop.middle()).isLessThanOrEqualTo(loop.worst() * (1 + 1e-12));
        assertThat(requireNonNull(loop.outsideDrawn())).isCloseTo(requireNonNull(loop.outsideExact()), within(0.012));
        assertThat(loop.links().stream()
                        .mapToDouble(ToleranceLoop.Result.LinkShare::share)
                        .sum())
                .isCloseTo(1, within(1e-9));
    }

    private static Weibull.Result weibull(List<Double> failures, List<Double> unfailed) {
        return Weibull.work(new Weibull.Case(failures, unfailed, 0.1, 0.9, null))
                .orElseThrow()
                .result();
    }

    /** In thousands of km or in km, the same shape and the same life. */
    @Property(tries = 40)
    void livesScale(@ForAll long seed, @ForAll @DoubleRange(min = 1e-2, max = 1e3) double unit) {
        Random random = new Random(seed);
        List<Double> failed = random.doubles(5, 1, 9).boxed().toList();
        List<Double> running = random.doubles(3, 1, 9).boxed().toList();
        Weibull.Result one = weibull(failed, running);
        Weibull.Result two = weibull(
                failed.stream().map(t -> t * unit).toList(),
                running.stream().map(t -> t * unit).toList());
        assertThat(two.shape() / one.shape()).isCloseTo(1, within(1e-8));
        assertThat(requireNonNull(two.life()) / requireNonNull(one.life())).isCloseTo(unit, within(1e-7 * unit));
        assertThat(two.lifeLow() / one.lifeLow()).isCloseTo(unit, within(1e-4 * unit));
        assertThat(one.life()).isBetween(one.lifeLow(), requireNonNull(one.lifeHigh()));
        assertThat(one.shape()).isBetween(requireNonNull(one.shapeLow()), requireNonNull(one.shapeHigh()));
    }

    /** Readings all so many times as large: the gauge is so many times as wide, shares stay. */
    @Property(tries = 20)
    void aStudyScales(@ForAll @DoubleRange(min = 1e-2, max = 1e2) double times) {
        StringBuilder scaled = new StringBuilder();
        for (String round : AiagData.ROUNDS.split("; ", -1)) {
            String[] parts = round.split(":", -1);
            scaled.append(scaled.isEmpty() ? "" : "; ").append(parts[0]).append(':');
            for (String value : parts[1].replace(" mm", "").strip().split("\\s+", -1)) {
                scaled.append(' ').append(Double.parseDouble(value) * times);
            }
        }
        for (String form : List.of("anova", "average and range")) {
            GaugeStudy.Result one = study(AiagData.ROUNDS, form);
            GaugeStudy.Result two = study(scaled.toString(), form);
            assertThat(two.gauge() / one.gauge()).isCloseTo(times, within(1e-9 * times));
            assertThat(requireNonNull(two.parts()) / requireNonNull(one.parts()))
                    .isCloseTo(times, within(1e-9 * times));
            assertThat(two.pooled()).isEqualTo(one.pooled());
        }
    }

    /** Every length of a drawer so many times as large: the same pieces of sizes so many times as thick. */
    @Property(tries = 40)
    void aDrawerScales(
            @ForAll @DoubleRange(min = 0.1, max = 10) double times,
            @ForAll @DoubleRange(min = 2.03, max = 2.07) double mean,
            @ForAll @IntRange(min = 1, max = 12) int jobs) {
        // with the mean on a size its two neighbours are equally good, and the last digit decides between them
        Assume.that(Math.abs(mean - 2.05) > 1e-6);
        DrawerStock.Result one = stock(mean, 1, jobs);
        DrawerStock.Result two = stock(mean, times, jobs);
        assertThat(two.sizes()).hasSameSizeAs(one.sizes());
        for (int i = 0; i < one.sizes().size(); i++) {
            assertThat(two.sizes().get(i).pieces()).isEqualTo(one.sizes().get(i).pieces());
            assertThat(two.sizes().get(i).thickness() / one.sizes().get(i).thickness())
                    .isCloseTo(times, within(1e-12 * times));
        }
        assertThat(two.served()).isCloseTo(one.served(), within(1e-9));
    }

    private static DrawerStock.Result stock(double mean, double times, int jobs) {
        return DrawerStock.work(new DrawerStock.Case(
                        mean * 1e-3 * times, 0.06e-3 * times, 2e-3 * times, 0.05e-3 * times, jobs, 1, 0.9))
                .orElseThrow()
                .result();
    }

    /** More draws, closer to the exact share; the answer says how many and from which seed, and repeats. */
    @Test
    void theDrawsOfALoopAreAsked() {
        String links = "a: 10 mm: 0.1 mm: 1: rectangular; b: 5 mm: 0.07 mm: -1: rectangular";
        Map<String, String> few = Map.of("links", links, "most", "5.12 mm", "draws", "10000", "seed", "7");
        Map<String, String> many = Map.of("links", links, "most", "5.12 mm", "draws", "1000000", "seed", "7");
        ToleranceLoop.Result first = loop(few);
        assertThat(loop(few)).isEqualTo(first);
        assertThat(first.draws()).isEqualTo(10_000);
        assertThat(first.seed()).isEqualTo(7);
        ToleranceLoop.Result second = loop(many);
        double exact = requireNonNull(second.outsideExact());
        // four standard deviations of a share among a million
        assertThat(requireNonNull(second.outsideDrawn()))
                .isCloseTo(exact, within(4 * Math.sqrt(exact * (1 - exact) / 1e6)));
        assertThat(loop(Map.of("links", links)).draws()).isEqualTo(50_000);
    }

    private static ToleranceLoop.Result loop(Map<String, String> given) {
        return (ToleranceLoop.Result) ToleranceLoop.SHEET
                .answer(given, UnitSystem.METRIC)
                .orElseThrow()
                .result();
    }

    /** Many lives drawn by the reference library give back what they were drawn with; bounds hold it. */
    @Test
    void aLargeSampleGivesBackItsWeibull() {
        WeibullDistribution truth = new WeibullDistribution(2, 100);
        List<Double> failed = new ArrayList<>();
        List<Double> running = new ArrayList<>();
        for (int i = 0; i < 300; i++) {
            double life = truth.inverseCumulativeProbability((i + 0.5) / 300);
            if (life < 120) {
                failed.add(life);
            } else {
                running.add(120.0);
            }
        }
        Weibull.Result fit = weibull(failed, running);
        assertThat(fit.shape()).isCloseTo(2, within(0.02));
        assertThat(requireNonNull(fit.scale())).isCloseTo(100, within(0.5));
        assertThat(truth.inverseCumulativeProbability(0.1)).isBetween(fit.lifeLow(), requireNonNull(fit.lifeHigh()));
    }

    /** No failure: (Σt^b/−ln(1−C))^(1/b), by hand for ten parts of 100 and b = 2 at 90 %. */
    @Test
    void withoutFailuresAKnownShapeGivesABound() {
        Weibull.Result bound = Weibull.work(new Weibull.Case(List.of(), Collections.nCopies(10, 100.0), 0.1, 0.9, 2.0))
                .orElseThrow()
                .result();
        assertThat(bound.scaleLow()).isCloseTo(100 * Math.sqrt(10 / -Math.log(0.1)), within(1e-6));
        assertThat(bound.scale()).isNull();
    }

    private static PastJobs.Result jobs(List<Double> values, double between) {
        return PastJobs.work(new PastJobs.Case(List.of(new PastJobs.Group("one", values)), 0.01, between, 0.005, 0.95))
                .orElseThrow()
                .result();
    }

    /** The shrunk mean is that of prior × likelihood integrated by quadrature; its ends are all models and own mean. */
    @Test
    void aFewJobsLeanOnAllModelsAsBayesSays() {
        List<Double> values = List.of(0.013, 0.017, 0.021);
        double between = 0.004;
        PastJobs.Next next = jobs(values, between).models().get(0);
        NormalDistribution prior = new NormalDistribution(0.01, between);
        double[] moments = new double[3];
        for (int power = 0; power < 3; power++) {
            int p = power;
            moments[power] = Quadrature.integral(
                    mu -> {
                        double weight = prior.density(mu);
                        for (double value : values) {
                            weight *= new NormalDistribution(mu, 0.005).density(value);
                        }
                        return weight * Math.pow(mu, p);
                    },
                    -0.02,
                    0.05,
                    40);
        }
        double mean = moments[1] / moments[0];
        double variance = moments[2] / moments[0] - mean * mean;
        assertThat(next.mean()).isCloseTo(mean, within(1e-10));
        assertThat(next.next()).isCloseTo(Math.sqrt(variance + 0.005 * 0.005), within(1e-8));
        assertThat(jobs(values, 0).models().get(0).mean()).isCloseTo(0.01, within(1e-12));
        assertThat(jobs(values, 10).models().get(0).mean()).isCloseTo(0.017, within(1e-7));
    }

    /** Jobs drawn at random are served as often as promised, or more. */
    @Property(tries = 10)
    void theDrawerServesAsOftenAsPromised(@ForAll long seed, @ForAll @IntRange(min = 1, max = 12) int jobs) {
        DrawerStock.Result stock = DrawerStock.work(new DrawerStock.Case(2.15e-3, 0.06e-3, 2e-3, 0.05e-3, jobs, 1, 0.9))
                .orElseThrow()
                .result();
        Random random = new Random(seed);
        int served = 0;
        for (int trial = 0; trial < 1000; trial++) {
            List<Long> left = new ArrayList<>();
            stock.sizes()
                    .forEach(size -> left.addAll(
                            Collections.nCopies(size.pieces(), Math.round((size.thickness() - 2e-3) / 0.05e-3))));
            boolean all = true;
            for (int i = 0; i < jobs; i++) {
                double wanted = 2.15e-3 + 0.06e-3 * random.nextGaussian();
                all = left.remove((Long) Math.round((wanted - 2e-3) / 0.05e-3)) && all;
            }
            served += all ? 1 : 0;
        }
        assertThat(stock.served()).isGreaterThanOrEqualTo(0.9);
        assertThat(served / 1000.0).isGreaterThan(0.87);
    }
}
