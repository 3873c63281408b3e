package shimwright.mechanics.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import shimwright.mechanics.chart.Individuals.Result.Signal;
import shimwright.mechanics.diagram.Diagram;
import shimwright.mechanics.measure.Statistics;
import shimwright.mechanics.measure.Student;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code individuals-chart}. */
public final class Individuals {
    /** The fewest values of which a chart is made. */
    public static final int FEWEST = 4;

    private static final List<NelsonRule> USUAL = List.of(
            NelsonRule.BEYOND_LIMIT,
            NelsonRule.NINE_ON_ONE_SIDE,
            NelsonRule.SIX_CLIMBING_OR_FALLING,
            NelsonRule.TWO_OF_THREE_BEYOND_TWO_SIGMA);

    private static final int FEW = 20;
    private static final double WANDERS = 0.7;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
                    "individuals-chart",
                    "Individuals chart",
                    "Limits for one value a job, and which jobs stand out.",
                    List.of(
                            Series.ISO + " (factors from memory, checked by integration)",
                            "run rules: Nelson, J. Quality Technology 16(4), 1984 (from memory)"),
                    Case.class,
                    Result.class,
                    Individuals::work)
            .drawn((c, r) -> ChartPictures.individuals(c, r, Kind.LENGTH));

    private Individuals() {}

    /**
     * One value a job.
     *
     * @param values in the order of the jobs, best as final reading minus prediction, m
     * @param baseline so many first values make the limits; 0 for all
     * @param rules that may signal
     * @param confidence of the prediction for the next value
     */
    public record Case(
            @Input(
                    kind = Kind.LENGTH,
                    meaning = "values in the order of the jobs",
                    min = -10,
                    max = 10,
                    fewest = 4,
                    example = "0.004 -0.006 0.002 0.011 -0.003 0.000 0.007 -0.009 0.005 0.001 mm")
            List<Double> values,

            @Input(meaning = "first values that make the limits, 0 for all", orElse = "0", min = 0, max = 1000)
            int baseline,

            @Input(
                    meaning = "rules that may signal",
                    fewest = 0,
                    most = 8,
                    orElse = "beyond limit; nine on one side; six climbing or falling; two of three beyond two sigma")
            List<NelsonRule> rules,

            @Input(meaning = "confidence of the prediction", orElse = "0.95", min = 0.5, max = 0.999)
            double confidence) {
        public Case {
            values = List.copyOf(values);
            rules = List.copyOf(rules);
        }
    }

    /**
     * An individuals and moving range chart; m.
     *
     * @param center mean of the baseline
     * @param meanRange mean moving range
     * @param deviation short-term standard deviation, mean range / d₂
     * @param upper limit of the values
     * @param lower limit of the values
     * @param rangeLimit upper limit of the moving ranges
     * @param overall standard deviation of the baseline, n−1
     * @param wander short-term over overall; well below 1 the level wanders
     * @param nextLow the next value is predicted above
     * @param nextHigh and below
     * @param signals in the order of the jobs
     * @param advice one sentence
     */
    public record Result(
            @Output(kind = Kind.LENGTH, meaning = "center", decimals = 4)
            double center,

            @Output(kind = Kind.LENGTH, meaning = "mean moving range", decimals = 4)
            double meanRange,

            @Output(kind = Kind.LENGTH, meaning = "short-term standard deviation", decimals = 4)
            double deviation,

            @Output(kind = Kind.LENGTH, meaning = "upper limit", decimals = 4)
            double upper,

            @Output(kind = Kind.LENGTH, meaning = "lower limit", decimals = 4)
            double lower,

            @Output(kind = Kind.LENGTH, meaning = "upper limit of moving ranges", decimals = 4)
            double rangeLimit,

            @Output(kind = Kind.LENGTH, meaning = "overall standard deviation", decimals = 4)
            double overall,

            @Output(meaning = "short-term over overall", decimals = 2)
            double wander,

            @Output(kind = Kind.LENGTH, meaning = "next value, at least", decimals = 4)
            double nextLow,

            @Output(kind = Kind.LENGTH, meaning = "next value, at most", decimals = 4)
            double nextHigh,

            @Output(meaning = "signals") List<Signal> signals,
            @Output(meaning = "advice") String advice) {
        public Result {
            signals = List.copyOf(signals);
        }

        /** One signal, at a place counted from 1. */
        public record Signal(
                @Output(meaning = "job") int job,

                @Output(kind = Kind.LENGTH, meaning = "value", decimals = 4)
                double value,

                @Output(meaning = "why") String why) {}
    }

    /**
     * Mean ± 3·MR̄/1.128; moving ranges up to 3.267·MR̄; the next value mean ± t·s·√(1+1/n).
     *
     * @param c values in m, one a job
     * @return refused: a baseline of fewer than four or of more values than there are, values that are all the same
     */
    public static Outcome<Worked<Result>> work(Case c) {
        return work(c, Kind.LENGTH);
    }

    /**
     * The same chart of values of any kind, all of them the baseline, with the usual rules.
     *
     * @param values SI, one a job; lengths and torques alike are called m in the result
     * @return refused: fewer than four values, values that are all the same
     */
    public static Outcome<Worked<Result>> of(List<Double> values, Kind kind) {
        return values.size() < FEWEST
                ? Outcome.refused(Refusal.of(
                        "values",
                        values.size() + (values.size() == 1 ? " value" : " values") + ", a chart wants " + FEWEST,
                        "Go on: each job adds one"))
                : work(usual(values), kind);
    }

    /** What is drawn of such a chart: the values, then the moving ranges, each with its limits. */
    public static List<Diagram> drawn(List<Double> values, Kind kind, Result result) {
        return ChartPictures.individuals(usual(values), result, kind);
    }

    private static Case usual(List<Double> values) {
        return new Case(values, 0, USUAL, 0.95);
    }

    private static Outcome<Worked<Result>> work(Case c, Kind kind) {
        int n = c.values().size();
        if (c.baseline() > n || (c.baseline() > 0 && c.baseline() < FEWEST)) {
            return Outcome.refused(
                    Refusal.of("baseline", c.baseline() + " of " + n + " values", "Take 4 to " + n + ", or 0 for all"));
        }
        List<Double> base = c.values().subList(0, c.baseline() == 0 ? n : c.baseline());
        Optional<Refusal> still = Series.standsStill(base);
        if (still.isPresent()) {
            return Outcome.refused(List.of(still.get()));
        }
        Working w = new Working();
        double center = w.line("center", "mean", Statistics.mean(base), kind, Series.ISO);
        List<Double> ranges = Series.movingRanges(base);
        double meanRange = w.line("mean moving range", "mean", Statistics.mean(ranges), kind, Series.ISO);
        double deviation = Series.deviation(base, null, w, kind);
        double upper = w.line("upper limit", "center + 3 × deviation", center + 3 * deviation, kind, Series.ISO);
        double lower = w.line("lower limit", "center − 3 × deviation", center - 3 * deviation, kind, Series.ISO);
        double rangeLimit =
                w.line("limit of ranges", "3.267 × mean moving range", Series.D4 * meanRange, kind, Series.ISO);
        double s = w.line("overall deviation", "n − 1", Statistics.deviation(base), kind, "JCGM 100:2008 4.2.2");
        double half = w.line(
                "prediction, ±",
                "t × s × √(1 + 1/n)",
                Student.coverageFactor(c.confidence(), base.size() - 1) * s * Math.sqrt(1 + 1.0 / base.size()),
                kind,
                "any statistics text");
        List<Signal> signals = signals(c, center, deviation, rangeLimit);
        if (base.size() < FEW) {
            w.caution("Under about " + FEW + " values the limits are soft: go by the prediction for the next value.");
        }
        if (deviation < WANDERS * s) {
            w.caution("Neighbors agree better than all together: the level wanders from job to job.");
        }
        return Outcome.ok(w.worked(new Result(
                center,
                meanRange,
                deviation,
                upper,
                lower,
                rangeLimit,
                s,
                deviation / s,
                center - half,
                center + half,
                signals,
                advice(signals))));
    }

    private static List<Signal> signals(Case c, double center, double deviation, double rangeLimit) {
        List<Double> z =
                c.values().stream().map(value -> (value - center) / deviation).toList();
        List<Signal> signals = new ArrayList<>();
        for (NelsonRule rule : NelsonRule.values()) {
            if (c.rules().contains(rule)) {
                String words = rule.name().toLowerCase(Locale.ROOT).replace('_', ' ');
                rule.signals(z)
                        .forEach(at -> signals.add(new Signal(at + 1, c.values().get(at), words)));
            }
        }
        List<Double> ranges = Series.movingRanges(c.values());
        for (int i = 0; i < ranges.size(); i++) {
            if (ranges.get(i) > rangeLimit) {
                signals.add(new Signal(i + 2, c.values().get(i + 1), "jump from the job before"));
            }
        }
        signals.sort(Comparator.comparingInt(Signal::job));
        return signals;
    }

    private static String advice(List<Signal> signals) {
        return signals.isEmpty()
                ? "Nothing has changed that these values could show."
                : "Look at job " + signals.get(0).job() + " first: "
                        + signals.get(0).why() + ". What was different: gauge, hands, parts, temperature?";
    }
}
