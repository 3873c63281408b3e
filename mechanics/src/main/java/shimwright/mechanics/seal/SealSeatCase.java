package shimwright.mechanics.seal;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/** A rotary lip seal, its bore and its shaft. */
public record SealSeatCase(
        @Input(kind = Kind.LENGTH, meaning = "shaft, nominal", min = 0.005, max = 0.12, example = "40 mm")
        double shaft,

        @Input(kind = Kind.LENGTH, meaning = "bore, nominal", min = 0.008, max = 0.12, example = "55 mm")
        double bore,

        @Input(meaning = "outside of the seal", orElse = "metal")
        Outside outside,

        @Input(kind = Kind.LENGTH, meaning = "bore measured", min = 0.005, max = 0.13) @Nullable
        Double boreMeasured,

        @Input(kind = Kind.LENGTH, meaning = "shaft measured", min = 0.004, max = 0.13) @Nullable
        Double shaftMeasured,

        @Input(kind = Kind.LENGTH, meaning = "outside of the seal measured, mean", min = 0.005, max = 0.13) @Nullable
        Double sealMeasured,

        @Input(kind = Kind.LENGTH, meaning = "roughness Ra of the shaft", unit = "µm", min = 1e-9, max = 1e-4) @Nullable
        Double roughness,

        @Input(
                kind = Kind.PRESSURE,
                meaning = "pressure difference on the seal",
                unit = "kPa",
                orElse = "0 kPa",
                min = 0,
                max = 1e7)
        double pressure,

        @Input(kind = Kind.ROTATION, meaning = "fastest turning", orElse = "0 rpm", min = 0, max = 5000)
        double speed) {

    /** Outside of the seal. */
    public enum Outside {
        METAL,
        RUBBER
    }
}
