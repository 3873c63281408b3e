package shimwright.mechanics.axial;

import java.util.List;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/**
 * A gap from measured lengths.
 *
 * @param terms the loop, in order
 * @param offsets common offsets of the gauges that measured it; a gauge left out has none
 */
public record DepthStackCase(
        @Input(
                kind = Kind.LENGTH,
                meaning = "the loop",
                most = 60,
                example = "seat to face: 25.01: 1: 0.004: DM; cover: 234.39: 1: 0.004: DM; bearing: 17.083: -1: 0.002; "
                        + "shaft: 224.91: -1: 0.004: DM; rear bearing: 16.331: -1: 0.002")
        List<Term> terms,

        @Input(meaning = "offsets common to all readings of a gauge", fewest = 0, most = 20, example = "DM: 0.003")
        List<GaugeOffset> offsets) {
    public DepthStackCase {
        terms = List.copyOf(terms);
        offsets = List.copyOf(offsets);
    }
}
