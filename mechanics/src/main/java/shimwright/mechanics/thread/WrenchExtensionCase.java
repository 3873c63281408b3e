package shimwright.mechanics.thread;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/** A torque wrench with a crow foot or other adapter across its drive. */
public record WrenchExtensionCase(
        @Input(
                kind = Kind.TORQUE,
                meaning = "torque wanted at the fastener",
                min = 1e-3,
                max = 1e5,
                example = "135 N·m")
        @Nullable
        Double torque,

        @Input(kind = Kind.TORQUE, meaning = "wrench setting, to find the torque it gives", min = 1e-3, max = 1e5)
        @Nullable
        Double setting,

        @Input(
                kind = Kind.LENGTH,
                meaning = "drive center to the middle of the grip",
                min = 0.02,
                max = 3,
                example = "400 mm")
        double length,

        @Input(
                kind = Kind.LENGTH,
                meaning = "drive center to the center of the fastener",
                min = 0,
                max = 2,
                example = "60 mm")
        double extension,

        @Input(
                kind = Kind.ANGLE,
                meaning = "adapter against the wrench: 0 straight on, 90 square, 180 turned back",
                orElse = "0°",
                min = -3.15,
                max = 3.15)
        double angle,

        @Input(kind = Kind.TORQUE, meaning = "largest torque of the wrench", min = 0.01, max = 1e5) @Nullable
        Double capacity) {}
