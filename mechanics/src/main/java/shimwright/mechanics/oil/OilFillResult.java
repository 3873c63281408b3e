package shimwright.mechanics.oil;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/** What to pour and what the level tells. */
public record OilFillResult(
        @Output(meaning = "volume at 60 °F over volume here", decimals = 5)
        double correction,

        @Output(kind = Kind.VOLUME, meaning = "the book's fill at this temperature", decimals = 3)
        double volume,

        @Output(kind = Kind.LENGTH, meaning = "level at the plug off by", decimals = 2) @Nullable
        Double levelShift,

        @Output(kind = Kind.VOLUME, meaning = "overfill when filled to the plug here", decimals = 3) @Nullable
        Double fillError,

        @Output(kind = Kind.VOLUME, meaning = "what goes in to the plug here", decimals = 3) @Nullable
        Double plugVolume,

        @Output(meaning = "really filled against that", unit = "%", decimals = 1) @Nullable
        Double disagreement) {}
