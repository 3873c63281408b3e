package shimwright.mechanics.study;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/**
 * What a gauge study says; standard deviations in m. Absent where the form does not give it.
 *
 * @param repeatability of one person on one part (EV); nested: within a day
 * @param reproducibility between persons (AV), interaction left out; nested: between days
 * @param interaction between persons and parts; nested: between runs
 * @param gauge all of these together (GRR); nested: of one day's mean
 * @param parts between parts (PV)
 * @param total gauge and parts (TV)
 * @param gaugeShare gauge over total
 * @param categories 1.41·PV/GRR, not truncated
 * @param toleranceShare spread of the gauge over the tolerance
 * @param gaugeLow lower end of the interval of the gauge's standard deviation
 * @param gaugeHigh upper end
 * @param freedom effective degrees of freedom of the gauge's standard deviation
 * @param rangeLimit upper limit of the ranges of repeats
 * @param over places whose range is above it
 * @param pooled whether the interaction was pooled with the repeats
 * @param table analysis of variance; nested: the levels
 * @param advice one sentence
 */
public record GaugeStudyResult(
        @Output(kind = Kind.LENGTH, meaning = "repeatability, one standard deviation", decimals = 5)
        double repeatability,

        @Output(kind = Kind.LENGTH, meaning = "between persons, or days", decimals = 5) @Nullable
        Double reproducibility,

        @Output(kind = Kind.LENGTH, meaning = "between persons on different parts, or between runs", decimals = 5)
        @Nullable
        Double interaction,

        @Output(kind = Kind.LENGTH, meaning = "gauge as a whole", decimals = 5)
        double gauge,

        @Output(kind = Kind.LENGTH, meaning = "between parts", decimals = 5) @Nullable
        Double parts,

        @Output(kind = Kind.LENGTH, meaning = "gauge and parts", decimals = 5) @Nullable
        Double total,

        @Output(meaning = "gauge, share of all", unit = "%", decimals = 2) @Nullable
        Double gaugeShare,

        @Output(meaning = "classes of parts it tells apart", decimals = 2, infinite = "no limit") @Nullable
        Double categories,

        @Output(meaning = "spread of the gauge, share of the tolerance", unit = "%", decimals = 1) @Nullable
        Double toleranceShare,

        @Output(kind = Kind.LENGTH, meaning = "gauge, at least", decimals = 5) @Nullable
        Double gaugeLow,

        @Output(kind = Kind.LENGTH, meaning = "gauge, at most", decimals = 5) @Nullable
        Double gaugeHigh,

        @Output(meaning = "degrees of freedom of the gauge", decimals = 1) @Nullable
        Double freedom,

        @Output(kind = Kind.LENGTH, meaning = "upper limit of the ranges", decimals = 4) @Nullable
        Double rangeLimit,

        @Output(meaning = "ranges above it") List<String> over,

        @Output(meaning = "interaction pooled with the repeats")
        boolean pooled,

        @Output(meaning = "table") List<Row> table,
        @Output(meaning = "advice") String advice) {
    public GaugeStudyResult {
        over = List.copyOf(over);
        table = List.copyOf(table);
    }

    /** One line of the table; F and chance only where the line is tested. */
    public record Row(
            @Output(meaning = "what") String source,
            @Output(meaning = "degrees of freedom") int freedom,

            @Output(kind = Kind.AREA, meaning = "sum of squares", decimals = 6)
            double squares,

            @Output(kind = Kind.AREA, meaning = "mean square", decimals = 7)
            double meanSquare,

            @Output(meaning = "F", decimals = 3, infinite = "no limit") @Nullable
            Double f,

            @Output(meaning = "chance of such an F", decimals = 4) @Nullable
            Double chance) {}
}
