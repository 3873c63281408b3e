package shimwright.mechanics.seal;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/** Bead and window; what was not asked is absent. */
public record SealantBeadResult(
        @Output(kind = Kind.VOLUME, meaning = "sealant in the bead", unit = "mL", decimals = 2) @Nullable
        Double beadVolume,

        @Output(kind = Kind.LENGTH, meaning = "width it spreads to", decimals = 1) @Nullable
        Double spread,

        @Output(kind = Kind.LENGTH, meaning = "bead for the wanted width", decimals = 2) @Nullable
        Double beadForLand,

        @Output(kind = Kind.LENGTH, meaning = "film where it is spread", decimals = 4) @Nullable
        Double film,

        @Output(meaning = "cure slower by the doubling rule", decimals = 2) @Nullable
        Double cureMultiplier,

        @Output(kind = Kind.TIME, meaning = "time to full strength here", unit = "h", decimals = 1) @Nullable
        Double cureTime,

        @Output(kind = Kind.TEMPERATURE, meaning = "lowest temperature of use", decimals = 0) @Nullable
        Double lowestTemperature,

        @Output(kind = Kind.TIME, meaning = "open time left", unit = "min", decimals = 0) @Nullable
        Double timeLeft,

        @Output(meaning = "window") Window window) {

    /** Where the work lies in the open time. */
    public enum Window {
        NOT_ASKED,
        IN_TIME,
        TOO_LATE
    }
}
