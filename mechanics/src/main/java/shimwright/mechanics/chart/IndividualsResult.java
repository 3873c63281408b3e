package shimwright.mechanics.chart;

import java.util.List;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

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
public record IndividualsResult(
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
    public IndividualsResult {
        signals = List.copyOf(signals);
    }

    /** One signal, at a place counted from 1. */
    public record Signal(
            @Output(meaning = "job") int job,

            @Output(kind = Kind.LENGTH, meaning = "value", decimals = 4)
            double value,

            @Output(meaning = "why") String why) {}
}
