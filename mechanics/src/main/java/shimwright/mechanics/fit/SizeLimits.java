package shimwright.mechanics.fit;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/**
 * Limits of a hole or a shaft, all in metres.
 *
 * @param upper upper limit deviation, signed
 * @param lower lower limit deviation, signed
 * @param tolerance upper less lower
 * @param largest largest size
 * @param smallest smallest size
 * @param delta the Δ of the delta rule; null where the rule does not apply
 * @param roundedHalf for js and JS with an odd tolerance in grades 7 to 11: half of it as some tables print it, rounded
 *     down to a whole µm; else null
 */
public record SizeLimits(
        @Output(kind = Kind.LENGTH, unit = "µm", decimals = 1, meaning = "upper limit deviation")
        double upper,

        @Output(kind = Kind.LENGTH, unit = "µm", decimals = 1, meaning = "lower limit deviation")
        double lower,

        @Output(kind = Kind.LENGTH, unit = "µm", decimals = 1, meaning = "tolerance")
        double tolerance,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "largest size")
        double largest,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "smallest size")
        double smallest,

        @Output(kind = Kind.LENGTH, unit = "µm", decimals = 1, meaning = "Δ taken for the hole") @Nullable
        Double delta,

        @Output(kind = Kind.LENGTH, unit = "µm", decimals = 1, meaning = "half tolerance as some tables round it")
        @Nullable
        Double roundedHalf) {}
