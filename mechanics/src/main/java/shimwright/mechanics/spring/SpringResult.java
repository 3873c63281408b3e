package shimwright.mechanics.spring;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/** What the spring gives and bears; loads at work only where a length at work was given. */
public record SpringResult(
        @Output(meaning = "spring index", decimals = 2) double index,
        @Output(meaning = "active coils", decimals = 2) double activeCoils,

        @Output(kind = Kind.STIFFNESS, meaning = "rate", decimals = 3)
        double rate,

        @Output(kind = Kind.LENGTH, meaning = "solid length", decimals = 2)
        double solidLength,

        @Output(kind = Kind.PRESSURE, meaning = "tensile strength of the wire", decimals = 0)
        double tensile,

        @Output(kind = Kind.PRESSURE, meaning = "yield in torsion", decimals = 1)
        double yield,

        @Output(meaning = "curvature factor", decimals = 3) double curvature,

        @Output(kind = Kind.FORCE, meaning = "load at which the wire yields", decimals = 1)
        double yieldLoad,

        @Output(kind = Kind.LENGTH, meaning = "longest free length that may be pressed solid", decimals = 1)
        double solidSafeLength,

        @Output(kind = Kind.LENGTH, meaning = "free length from which it buckles unguided", decimals = 1)
        double bucklingLength,

        @Output(kind = Kind.FORCE, meaning = "load when solid", decimals = 1)
        double solidLoad,

        @Output(meaning = "takes a set when pressed solid") boolean setsSolid,

        @Output(kind = Kind.FORCE, meaning = "load at work", decimals = 1) @Nullable
        Double load,

        @Output(kind = Kind.PRESSURE, meaning = "stress at work", decimals = 0) @Nullable
        Double stress,

        @Output(meaning = "stress at work over yield", unit = "%", decimals = 0) @Nullable
        Double stressShare,

        @Output(kind = Kind.FORCE, meaning = "axial force to ride out of the detent", decimals = 1) @Nullable
        Double rideOut) {}
