package shimwright.mechanics.axial;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/**
 * A clearance measured with a trial pack, its limits, and the drawer to choose the final pack from.
 *
 * @param measured clearance on the trial pack, m; preload is negative
 * @param uMeasured its standard uncertainty, m
 * @param nu degrees of freedom of that; positive infinity when taken as certain, null likewise
 * @param trialThickness thickness of the trial pack, m
 * @param uTrial its standard uncertainty, m
 * @param effect change of the clearance per thickness: −1 when thicker closes, +1 when thicker opens; not 0
 * @param lower smallest lawful clearance, m; null when open
 * @param upper largest lawful clearance, m; null when open
 * @param aim clearance aimed at, m, between the limits; null for their middle
 * @param ruleProbability conformance probability that proves
 * @param drawer the pieces to choose from, each used once
 * @param minPieces fewest in a pack
 * @param maxPieces most in a pack
 * @param offers how many packs to name
 */
public record ShimPackCase(
        @Input(
                kind = Kind.LENGTH,
                meaning = "clearance measured on the trial pack, preload negative",
                min = -10,
                max = 10,
                example = "0.2783 mm")
        double measured,

        @Input(kind = Kind.LENGTH, meaning = "its standard uncertainty", min = 0, max = 0.01, example = "0.005 mm")
        double uMeasured,

        @Input(meaning = "degrees of freedom of that", min = 1) @Nullable
        Double nu,

        @Input(kind = Kind.LENGTH, meaning = "thickness of the trial pack", min = 0, max = 1, example = "0.797 mm")
        double trialThickness,

        @Input(kind = Kind.LENGTH, meaning = "its standard uncertainty", min = 0, max = 0.01, orElse = "0.002 mm")
        double uTrial,

        @Input(
                meaning = "-1 when a thicker pack closes the clearance, 1 when it opens it",
                min = -10,
                max = 10,
                example = "-1")
        double effect,

        @Input(kind = Kind.LENGTH, meaning = "smallest lawful clearance", min = -10, max = 10, example = "0.02 mm")
        @Nullable
        Double lower,

        @Input(kind = Kind.LENGTH, meaning = "largest lawful clearance", min = -10, max = 10, example = "0.08 mm")
        @Nullable
        Double upper,

        @Input(
                kind = Kind.LENGTH,
                meaning = "clearance aimed at, the middle of the limits where none is given",
                min = -10,
                max = 10)
        @Nullable
        Double aim,

        @Input(meaning = "probability that counts as proof", min = 0.501, max = 0.9999, orElse = "0.95")
        double ruleProbability,

        @Input(
                kind = Kind.LENGTH,
                meaning = "pieces in the drawer, measured",
                fewest = 0,
                most = 120,
                example = "d52-01: 0.251; d52-02: 0.3027; d52-03: 0.352; d52-04: 0.3977; d52-05: 0.447; d52-06: 0.502; "
                        + "d52-08: 0.6023; d52-09: 0.681; d52-10: 0.797")
        List<Piece> drawer,

        @Input(meaning = "fewest pieces in a pack", min = 0, max = 6, orElse = "1")
        int minPieces,

        @Input(meaning = "most pieces in a pack", min = 1, max = 6, orElse = "2")
        int maxPieces,

        @Input(meaning = "packs to name", min = 1, max = 20, orElse = "3")
        int offers) {
    public ShimPackCase {
        drawer = List.copyOf(drawer);
    }
}
