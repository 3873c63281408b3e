package shimwright.mechanics.fit;

import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/**
 * Result of {@code bearing-clearance}; lengths in metres, diametral; a negative clearance is preload.
 *
 * @param innerEffective greatest inner interference that counts, after finish and load
 * @param loadLoss interference the radial load takes from the inner ring
 * @param innerShare clearance lost per inner interference
 * @param outerShare clearance lost per outer interference
 * @param innerLoss clearance lost to the inner fit at its tightest
 * @param outerLoss clearance lost to the outer fit at its tightest
 * @param heatLoss clearance lost as the inner ring is warmer
 * @param least working clearance, everything at its tightest
 * @param most working clearance, everything at its loosest
 * @param probableLeast working clearance, half widths added by squares
 * @param probableMost the same at the loose end
 */
public record FittedClearance(
        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "inner interference that counts, most")
        double innerEffective,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "inner interference taken by the load")
        double loadLoss,

        @Output(decimals = 3, meaning = "clearance lost per inner interference")
        double innerShare,

        @Output(decimals = 3, meaning = "clearance lost per outer interference")
        double outerShare,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "lost to the inner fit, most")
        double innerLoss,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "lost to the outer fit, most")
        double outerLoss,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "lost to heat")
        double heatLoss,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "working clearance, least")
        double least,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "working clearance, most")
        double most,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "working clearance, probably not less")
        double probableLeast,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "working clearance, probably not more")
        double probableMost) {}
