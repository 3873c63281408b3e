package shimwright.mechanics.seal;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/** Limits of the seat and what they do to the seal. */
public record SealSeatResult(
        @Output(kind = Kind.LENGTH, meaning = "bore tolerance H8", unit = "µm", decimals = 0)
        double boreTolerance,

        @Output(kind = Kind.LENGTH, meaning = "largest bore")
        double boreMax,

        @Output(kind = Kind.LENGTH, meaning = "shaft tolerance h11", unit = "µm", decimals = 0)
        double shaftTolerance,

        @Output(kind = Kind.LENGTH, meaning = "smallest shaft")
        double shaftMin,

        @Output(kind = Kind.LENGTH, meaning = "least interference in the bore")
        double interferenceLow,

        @Output(kind = Kind.LENGTH, meaning = "greatest interference in the bore")
        double interferenceHigh,

        @Output(kind = Kind.LENGTH, meaning = "interference as measured") @Nullable
        Double interference,

        @Output(kind = Kind.LENGTH, meaning = "out of roundness allowed, two diameters", decimals = 2)
        double roundness,

        @Output(kind = Kind.LENGTH, meaning = "driver diameter", decimals = 1)
        double driver,

        @Output(kind = Kind.FORCE, meaning = "force pushing it out", decimals = 1)
        double pushOut,

        @Output(kind = Kind.SPEED, meaning = "speed under the lip", unit = "m/s", decimals = 2)
        double lipSpeed,

        @Output(meaning = "bore") Verdict boreVerdict,
        @Output(meaning = "shaft") Verdict shaftVerdict,
        @Output(meaning = "surface of the shaft") Verdict surfaceVerdict) {}
