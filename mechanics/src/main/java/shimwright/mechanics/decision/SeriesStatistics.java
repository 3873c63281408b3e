package shimwright.mechanics.decision;

import java.util.List;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.conformity.Conformity;
import shimwright.mechanics.conformity.Limits;
import shimwright.mechanics.conformity.Rule;
import shimwright.mechanics.measure.Outliers;
import shimwright.mechanics.measure.Statistics;
import shimwright.mechanics.measure.VonNeumann;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code series-statistics}: what a series of readings of one thing says of itself. */
public final class SeriesStatistics {
    private static final String GUM = "JCGM 100:2008 4.2";
    private static final String GRUBBS = "Grubbs 1969";
    private static final double SUSPICIOUS = 0.05;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "series-statistics",
            "Statistics of a series",
            "Mean, scatter, steadiness and outliers of a series, and how many more would prove its mean within limits.",
            List.of(GUM + ", table E.1", GRUBBS, "von Neumann ratio", "JCGM 106:2012 7.4"),
            Case.class,
            Result.class,
            SeriesStatistics::work);

    private SeriesStatistics() {}

    /**
     * Readings of one thing in the order taken, all in one unit.
     *
     * @param readings in the order taken
     * @param other standard uncertainty that more readings do not lessen
     * @param lower lower limit of the value; null when open
     * @param upper upper limit of the value; null when open
     * @param ruleProbability conformance probability that proves
     */
    public record Case(
            @Input(
                    meaning = "readings in the order taken, all in one unit",
                    fewest = 3,
                    most = 2000,
                    min = -1e9,
                    max = 1e9,
                    example = "0.28 0.31 0.27 0.28 0.29")
            List<Double> readings,

            @Input(meaning = "standard uncertainty that more readings do not lessen", orElse = "0", min = 0, max = 1e9)
            double other,

            @Input(meaning = "lower limit of the value", min = -1e9, max = 1e9) @Nullable
            Double lower,

            @Input(meaning = "upper limit of the value", min = -1e9, max = 1e9) @Nullable
            Double upper,

            @Input(meaning = "probability that counts as proof", min = 0.501, max = 0.9999, orElse = "0.95")
            double ruleProbability) {
        public Case {
            readings = List.copyOf(readings);
        }
    }

    /** In the unit of the readings. */
    public record Result(
            @Output(meaning = "readings") int count,
            @Output(meaning = "mean", decimals = 5) double mean,

            @Output(meaning = "standard deviation of one reading", decimals = 5)
            double deviation,

            @Output(meaning = "standard uncertainty of the mean", decimals = 5)
            double meanUncertainty,

            @Output(meaning = "how uncertain the standard deviation itself is, relative", decimals = 2)
            double deviationUncertainty,

            @Output(meaning = "median", decimals = 5) double median,
            @Output(meaning = "range", decimals = 5) double range,

            @Output(meaning = "autocorrelation with the reading before", decimals = 4)
            double autocorrelation,

            @Output(meaning = "independent readings it is worth", decimals = 1)
            double effectiveCount,

            @Output(meaning = "von Neumann ratio, 2 where it stands still", decimals = 3)
            double steadiness,

            @Output(meaning = "Grubbs G of the reading farthest out", decimals = 3)
            double grubbs,

            @Output(meaning = "chance of a G so large among good readings")
            double grubbsProbability,

            @Output(meaning = "advice") String advice) {}

    /**
     * s² = Σ(x − x̄)²/(n − 1), u = s/√n, von Neumann's Σ(step)²/Σ(x − x̄)², Grubbs' G = max|x − x̄|/s (two-sided: twice the
     * one-sided chance), and {@link Conformity#moreReadings} where limits are given.
     *
     * @param c readings and limits in one unit
     * @return in that unit; refused: limits the wrong way round. Source: JCGM 100:2008 4.2; Grubbs 1969
     */
    public static Outcome<Worked<Result>> work(Case c) {
        boolean limited = c.lower() != null || c.upper() != null;
        Double lower = c.lower();
        Double upper = c.upper();
        if (lower != null && upper != null && lower >= upper) {
            return Outcome.refused(new Refusal(
                    "lower",
                    "lower and upper limit",
                    "the lower limit is not below the upper",
                    "Check which is which"));
        }
        Working w = new Working();
        List<Double> x = c.readings();
        int n = x.size();
        double mean = w.line("mean", "Σx/n", Statistics.mean(x), Kind.NUMBER, GUM + ".1");
        double s = w.line("s", "√(Σ(x − mean)²/(n − 1))", Statistics.deviation(x), Kind.NUMBER, GUM + ".2");
        double u = w.line("u", "s/√n", s / Math.sqrt(n), Kind.NUMBER, GUM + ".3");
        double steadiness = w.line("ratio", "Σ(step)²/Σ(x − mean)²", VonNeumann.ratio(x), Kind.NUMBER, "von Neumann");
        double g = w.line("G", "largest |x − mean|/s", Outliers.grubbs(x), Kind.NUMBER, GRUBBS);
        double chance = Math.min(1, 2 * Outliers.grubbsProbability(n, g));
        w.line("chance of G", "2n·P(t)", chance, Kind.NUMBER, GRUBBS);
        if (chance < SUSPICIOUS) {
            w.caution("One reading stands off the others: look for its cause before leaving it out.");
        }
        String advice = limited
                ? advice(Conformity.moreReadings(
                        mean, s, n, c.other(), new Limits(lower, upper), new Rule(c.ruleProbability(), true)))
                : "Give limits to hear how many more readings would prove the mean within them.";
        return Outcome.ok(w.worked(new Result(
                n,
                mean,
                s,
                u,
                Statistics.relativeUncertaintyOfDeviation(n),
                Statistics.median(x),
                Statistics.range(x),
                Statistics.lag1(x),
                Statistics.effectiveCount(x),
                steadiness,
                g,
                chance,
                advice)));
    }

    private static String advice(OptionalInt more) {
        if (more.isEmpty()) {
            return "Not proven, and 50 readings in all would not prove it: measure finer, or it lies outside.";
        }
        return more.getAsInt() == 0
                ? "Proven within the limits."
                : "Not proven: " + more.getAsInt() + " more readings that agree with these would prove it.";
    }
}
