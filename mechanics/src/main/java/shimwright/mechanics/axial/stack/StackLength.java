package shimwright.mechanics.axial.stack;

import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/**
 * One measured length of a stack.
 *
 * @param name what it is
 * @param value m
 * @param sign +1 when it opens the gap, −1 when it closes it
 * @param u standard uncertainty, m, without the gauge's common offset
 * @param gauge which gauge measured it; empty when it does not matter
 */
public record StackLength(
        @Input(meaning = "what it is", example = "depth") String name,

        @Input(kind = Kind.LENGTH, meaning = "length measured", min = -10, max = 10, example = "25.01 mm", u = "u")
        double value,

        @Input(meaning = "1 when it opens the gap, -1 when it closes it", min = -1, max = 1, example = "1")
        int sign,

        @Input(kind = Kind.LENGTH, meaning = "standard uncertainty", min = 0, max = 0.1, orElse = "0 mm")
        double u,

        @Input(meaning = "gauge that measured it", orElse = "")
        String gauge) {}
