package shimwright.mechanics.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.measure.Statistics;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.reference.Table;
import shimwright.mechanics.working.Working;

/** What the charts share: moving ranges of two and the factors of their limits. */
final class Series {
    static final String ISO = "ISO 7870-2:2013, individuals";
    /** d₂ and D₄ of two values as printed, so that limits agree with limits worked out by hand. */
    static final double D2 = factor("d2");

    static final double D4 = factor("D4");

    private Series() {}

    private static double factor(String name) {
        return Table.read("iso-7870-2-2013/factors.csv").rows().stream()
                .filter(row -> row.number("n") == 2)
                .findFirst()
                .orElseThrow()
                .number(name);
    }

    static List<Double> movingRanges(List<Double> values) {
        List<Double> ranges = new ArrayList<>();
        for (int i = 1; i < values.size(); i++) {
            ranges.add(Math.abs(values.get(i) - values.get(i - 1)));
        }
        return ranges;
    }

    /** Sentence where nothing is seen. */
    static final String STILL = "The mean has not moved that these values could show.";

    /** Target given, or the mean. */
    static double target(List<Double> values, @Nullable Double given, Working w) {
        return given != null
                ? w.line("target", "given", given, Kind.LENGTH)
                : w.line("target", "mean", Statistics.mean(values), Kind.LENGTH);
    }

    /** What holds for run lengths, and for a target or deviation that the values judge themselves by. */
    static void cautions(Working w, String lengths, boolean own) {
        w.caution("Run lengths take the values as normal and independent, and the limits as steady (" + lengths + ").");
        if (own) {
            w.caution("Target or deviation come from these very values: a shift among them hides itself in part.");
        }
    }

    /** Standard deviation given, or from the moving ranges. */
    static double deviation(List<Double> values, @Nullable Double given, Working w) {
        return deviation(values, given, w, Kind.LENGTH);
    }

    /** The same of values of another kind. */
    static double deviation(List<Double> values, @Nullable Double given, Working w, Kind kind) {
        return given != null
                ? w.line("standard deviation", "given", given, kind)
                : w.line(
                        "standard deviation",
                        "mean moving range / 1.128",
                        Statistics.mean(movingRanges(values)) / D2,
                        kind,
                        ISO);
    }

    /** Why a chart cannot be drawn of these values. */
    static Optional<Refusal> standsStill(List<Double> values) {
        return Statistics.range(values) == 0
                ? Optional.of(Refusal.of(
                        "values", "every value is the same", "Read with a finer step, or give the standard deviation"))
                : Optional.empty();
    }
}
