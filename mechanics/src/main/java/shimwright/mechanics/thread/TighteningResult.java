package shimwright.mechanics.thread;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/** Torque and preload with what they ask of the bolt; what was not given cannot be answered and is absent. */
public record TighteningResult(
        @Output(kind = Kind.TORQUE, meaning = "torque at the fastener, seated")
        double torque,

        @Output(kind = Kind.TORQUE, meaning = "wrench setting, with the torque of a locking thread")
        double setting,

        @Output(kind = Kind.FORCE, meaning = "preload") double preload,

        @Output(kind = Kind.FORCE, meaning = "lowest preload to expect")
        double preloadLow,

        @Output(kind = Kind.FORCE, meaning = "highest preload to expect")
        double preloadHigh,

        @Output(meaning = "scatter to each side", unit = "%", decimals = 1)
        double scatter,

        @Output(meaning = "nut factor K", decimals = 3) double nutFactor,

        @Output(kind = Kind.PRESSURE, meaning = "tensile stress in the bolt", decimals = 0)
        double stress,

        @Output(kind = Kind.FORCE, meaning = "proof load") @Nullable
        Double proofLoad,

        @Output(meaning = "share of the proof load", unit = "%", decimals = 0) @Nullable
        Double proofShare,

        @Output(meaning = "share of the proof load at the highest preload", unit = "%", decimals = 0) @Nullable
        Double proofShareHigh,

        @Output(kind = Kind.FORCE, meaning = "preload that reaches the allowed share of yield, with twist") @Nullable
        Double yieldPreload,

        @Output(meaning = "share of the torque that stretches the bolt", unit = "%", decimals = 1) @Nullable
        Double pitchShare,

        @Output(meaning = "share lost in the thread", unit = "%", decimals = 1) @Nullable
        Double threadShare,

        @Output(meaning = "share lost under the head", unit = "%", decimals = 1) @Nullable
        Double headShare,

        @Output(kind = Kind.PRESSURE, meaning = "pressure under the head", decimals = 0) @Nullable
        Double headPressure,

        @Output(kind = Kind.PRESSURE, meaning = "bolt stress under the working load", decimals = 0) @Nullable
        Double serviceStress,

        @Output(kind = Kind.LENGTH, meaning = "spacer shorter by", unit = "µm", decimals = 1) @Nullable
        Double sleeveShortening) {}
