package shimwright.mechanics.axial;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/**
 * What a measured value proves.
 *
 * @param probability that the true value lies within the limits
 * @param verdict under the rule; a value outside a limit is OUT however near
 * @param capability Cm = T/4u; infinite with an open limit
 * @param best the most that any value could prove with this doubt
 * @param largestDoubt standard uncertainty with which this value would be proven, m; null when it stands outside
 * @param advice one sentence
 */
public record ConformityResult(
        @Output(meaning = "probability of lying within") double probability,
        @Output(meaning = "verdict") Verdict verdict,

        @Output(meaning = "measurement capability Cm", decimals = 2, infinite = "no limit")
        double capability,

        @Output(meaning = "best probability any value could reach")
        double best,

        @Output(kind = Kind.LENGTH, meaning = "largest doubt that would still prove it", decimals = 4) @Nullable
        Double largestDoubt,

        @Output(meaning = "advice") String advice) {}
