package shimwright.mechanics.axial.stack;

import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/**
 * The unknown offset that a gauge puts into all its readings.
 *
 * @param gauge name as in the terms
 * @param u standard uncertainty of the offset, m
 */
public record GaugeOffset(
        @Input(meaning = "gauge", example = "DM") String gauge,

        @Input(
                kind = Kind.LENGTH,
                meaning = "standard uncertainty of its common offset",
                min = 0,
                max = 0.1,
                example = "0.004 mm")
        double u) {}
