package shimwright.mechanics.axial;

import java.util.List;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/**
 * Which pack to fit.
 *
 * @param wantedThickness for the middle of the limits, m; with one limit open, for the clearance that is just proven
 * @param leastThickness thinnest pack whose clearance lies within, m; negative infinity when there is none
 * @param mostThickness thickest, m; positive infinity when there is none
 * @param offers best first; empty when none lies within
 * @param advice what to do, in a sentence or two
 */
public record ShimPackResult(
        @Output(kind = Kind.LENGTH, meaning = "wanted thickness")
        double wantedThickness,

        @Output(kind = Kind.LENGTH, meaning = "thinnest that lies within", infinite = "no limit")
        double leastThickness,

        @Output(kind = Kind.LENGTH, meaning = "thickest that lies within", infinite = "no limit")
        double mostThickness,

        @Output(kind = Kind.LENGTH, meaning = "offers") List<PackOffer> offers,
        @Output(meaning = "advice") String advice) {
    public ShimPackResult {
        offers = List.copyOf(offers);
    }
}
