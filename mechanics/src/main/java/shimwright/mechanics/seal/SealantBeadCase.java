package shimwright.mechanics.seal;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/** A bead or film of liquid sealant and the clock that runs on it. */
public record SealantBeadCase(
        @Input(meaning = "sealant", orElse = "anaerobic") Product product,

        @Input(kind = Kind.LENGTH, meaning = "diameter of the bead", min = 1e-4, max = 0.02, example = "1 mm") @Nullable
        Double bead,

        @Input(kind = Kind.LENGTH, meaning = "length of the bead", min = 1e-3, max = 20, example = "900 mm") @Nullable
        Double length,

        @Input(kind = Kind.LENGTH, meaning = "gap of the closed joint", orElse = "0.05 mm", min = 1e-6, max = 0.005)
        double gap,

        @Input(kind = Kind.LENGTH, meaning = "width the sealant shall wet", min = 1e-4, max = 0.1, example = "12 mm")
        @Nullable
        Double land,

        @Input(kind = Kind.VOLUME, meaning = "sealant spread by hand or roller", unit = "mL", min = 1e-9, max = 1e-3)
        @Nullable
        Double volume,

        @Input(kind = Kind.AREA, meaning = "face it is spread on", unit = "cm²", min = 1e-6, max = 1) @Nullable
        Double area,

        @Input(kind = Kind.TEMPERATURE, meaning = "temperature of the case", min = 230, max = 330, example = "18 °C")
        @Nullable
        Double temperature,

        @Input(meaning = "whether primer is used", orElse = "no")
        boolean primer,

        @Input(
                kind = Kind.TIME,
                meaning = "time to full strength by its maker",
                unit = "h",
                max = 1e6,
                example = "24 h")
        @Nullable
        Double cureTime,

        @Input(
                kind = Kind.TEMPERATURE,
                meaning = "temperature that time holds for",
                orElse = "23 °C",
                min = 280,
                max = 310)
        double cureTemperature,

        @Input(
                kind = Kind.TEMPERATURE_DIFFERENCE,
                meaning = "cooling that doubles the time",
                orElse = "10 K",
                min = 5,
                max = 20)
        double doubling,

        @Input(kind = Kind.TIME, meaning = "open time by its maker", unit = "min", max = 1e5, example = "20 min")
        @Nullable
        Double openTime,

        @Input(
                kind = Kind.TIME,
                meaning = "first bead to last torque, as planned or by the clock",
                unit = "min",
                max = 1e6,
                example = "14 min")
        @Nullable
        Double planned) {

    /** Class of sealant. */
    public enum Product {
        /** Cures without air against metal. */
        ANAEROBIC,
        /** Silicone that cures with the moisture of the air. */
        SILICONE
    }
}
