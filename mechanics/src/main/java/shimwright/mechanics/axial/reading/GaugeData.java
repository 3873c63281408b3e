package shimwright.mechanics.axial.reading;

import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/**
 * What an indicator may be wrong by. Half-widths are taken as rectangular (JCGM 100:2008 4.3.7).
 *
 * @param step graduation it is read to, m
 * @param errorLimit error limit over the short range travelled, half-width, m
 * @param retrace error on reversing the direction, half-width, m
 * @param repeatability pooled standard deviation of one reading, m; 0 when unknown
 */
public record GaugeData(
        @Input(
                kind = Kind.LENGTH,
                meaning = "graduation it is read to",
                min = 0,
                max = 0.001,
                unit = "µm",
                example = "10 µm")
        double step,

        @Input(
                kind = Kind.LENGTH,
                meaning = "error limit over the short range travelled, half-width",
                min = 0,
                max = 0.001,
                unit = "µm",
                example = "5 µm")
        double errorLimit,

        @Input(
                kind = Kind.LENGTH,
                meaning = "error on reversing, half-width",
                min = 0,
                max = 0.001,
                unit = "µm",
                example = "3 µm")
        double retrace,

        @Input(
                kind = Kind.LENGTH,
                meaning = "standard deviation of one reading from a gauge study, 0 when unknown",
                min = 0,
                max = 0.001,
                unit = "µm",
                orElse = "0 µm")
        double repeatability) {}
