package shimwright.mechanics.study;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/**
 * What a loop comes to; lengths in m.
 *
 * @param nominal gap of the nominal sizes
 * @param middle gap with every size in the middle of its limits
 * @param worst half-width with every size at its worst
 * @param squares half-width by root sum of squares, shifts of means added straight
 * @param deviation standard deviation by the shapes given
 * @param drawnLow lower end of 99.73 % of the loops drawn
 * @param drawnHigh upper end
 * @param outsideNormal share outside the limits, gap taken as normal
 * @param outsideDrawn share outside the limits of the loops drawn
 * @param outsideExact share outside, exact, where every link is rectangular
 * @param scaleWorst factor for the free tolerances by the worst case
 * @param scaleSquares factor for the free tolerances by root sum of squares
 * @param draws loops drawn
 * @param seed of the draws; with it the same loops are drawn again
 * @param links each one's part
 * @param advice one sentence
 */
public record ToleranceLoopResult(
        @Output(kind = Kind.LENGTH, meaning = "gap, nominal", decimals = 4)
        double nominal,

        @Output(kind = Kind.LENGTH, meaning = "gap, middle of the limits", decimals = 4)
        double middle,

        @Output(kind = Kind.LENGTH, meaning = "worst case, ±", decimals = 4)
        double worst,

        @Output(kind = Kind.LENGTH, meaning = "root sum of squares, ±", decimals = 4)
        double squares,

        @Output(kind = Kind.LENGTH, meaning = "standard deviation", decimals = 4)
        double deviation,

        @Output(kind = Kind.LENGTH, meaning = "99.73 % of the loops drawn lie above", decimals = 3)
        double drawnLow,

        @Output(kind = Kind.LENGTH, meaning = "and below", decimals = 3)
        double drawnHigh,

        @Output(meaning = "outside the limits, taken as normal", unit = "%", decimals = 3) @Nullable
        Double outsideNormal,

        @Output(meaning = "outside the limits, drawn", unit = "%", decimals = 2) @Nullable
        Double outsideDrawn,

        @Output(meaning = "outside the limits, exact", unit = "%", decimals = 3) @Nullable
        Double outsideExact,

        @Output(meaning = "factor for the free tolerances, worst case", decimals = 5) @Nullable
        Double scaleWorst,

        @Output(meaning = "factor for the free tolerances, root sum of squares", decimals = 5) @Nullable
        Double scaleSquares,

        @Output(meaning = "loops drawn") int draws,
        @Output(meaning = "seed of the draws") int seed,

        @Output(meaning = "links") List<LinkShare> links,
        @Output(meaning = "advice") String advice) {
    public ToleranceLoopResult {
        links = List.copyOf(links);
    }

    /** One link's part of the gap. */
    public record LinkShare(
            @Output(meaning = "link") String name,

            @Output(kind = Kind.LENGTH, meaning = "moves the gap by ±", decimals = 4)
            double part,

            @Output(meaning = "share of the sum of squares", unit = "%", decimals = 1)
            double share) {}
}
