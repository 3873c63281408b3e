package shimwright.mechanics.axial.shim;

import java.util.List;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/**
 * One pack that could be fitted.
 *
 * @param pieces tags, thinnest first
 * @param thickness of the pack, m
 * @param uThickness standard uncertainty of that, m
 * @param predicted clearance with it, m
 * @param u standard uncertainty of that, m
 * @param nu effective degrees of freedom
 * @param probability of lying within the limits
 * @param verdict under the rule: IN or NOT_PROVEN
 * @param rarity sum over its pieces of the distance to the nearest piece left in the drawer, m: small when like ones are
 *     left
 */
public record PackOffer(
        @Output(meaning = "pieces") List<String> pieces,

        @Output(kind = Kind.LENGTH, meaning = "pack", u = "uThickness")
        double thickness,

        @Output(kind = Kind.LENGTH, meaning = "standard uncertainty of the pack", decimals = 4)
        double uThickness,

        @Output(kind = Kind.LENGTH, meaning = "clearance expected", u = "u", nu = "nu")
        double predicted,

        @Output(kind = Kind.LENGTH, meaning = "standard uncertainty", decimals = 4)
        double u,

        @Output(meaning = "degrees of freedom", decimals = 1, infinite = "no limit")
        double nu,

        @Output(meaning = "probability of lying within") double probability,
        @Output(meaning = "verdict") Verdict verdict,

        @Output(kind = Kind.LENGTH, meaning = "distance to the nearest pieces left")
        double rarity) {
    public PackOffer {
        pieces = List.copyOf(pieces);
    }
}
