package shimwright.mechanics.axial;

import shimwright.mechanics.measure.Budget;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/**
 * The gap of a stack.
 *
 * @param gap sum of the signed lengths, m; negative where the parts overlap
 * @param u standard uncertainty, m
 * @param nu degrees of freedom
 * @param worst the gap may be off by this if every doubt (2u) pulled the same way, m
 * @param budget the doubt by term and gauge
 */
public record DepthStackResult(
        @Output(kind = Kind.LENGTH, meaning = "gap", u = "u")
        double gap,

        @Output(kind = Kind.LENGTH, meaning = "standard uncertainty", decimals = 4)
        double u,

        @Output(meaning = "degrees of freedom", decimals = 1, infinite = "no limit")
        double nu,

        @Output(kind = Kind.LENGTH, meaning = "worst case, all doubts the same way")
        double worst,

        @Output(kind = Kind.LENGTH, meaning = "doubt by term")
        Budget budget) {}
