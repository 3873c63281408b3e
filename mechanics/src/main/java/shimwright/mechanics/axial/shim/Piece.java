package shimwright.mechanics.axial.shim;

import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/**
 * One loose shim, spacer or selective ring.
 *
 * @param id tag, unique in the drawer
 * @param thickness as measured, never as stamped, m
 * @param u standard uncertainty of that, m
 */
public record Piece(
        @Input(meaning = "tag", example = "d52-03") String id,

        @Input(kind = Kind.LENGTH, meaning = "measured thickness", min = 1e-6, max = 1, example = "0.352 mm", u = "u")
        double thickness,

        @Input(
                kind = Kind.LENGTH,
                meaning = "standard uncertainty of the micrometer reading",
                min = 0,
                max = 0.001,
                orElse = "0.002 mm")
        double u) {}
