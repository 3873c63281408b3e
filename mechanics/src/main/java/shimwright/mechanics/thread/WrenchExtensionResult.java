package shimwright.mechanics.thread;

import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/** Torque and setting belonging together. */
public record WrenchExtensionResult(
        @Output(kind = Kind.TORQUE, meaning = "wrench setting")
        double setting,

        @Output(kind = Kind.TORQUE, meaning = "torque at the fastener")
        double torque,

        @Output(meaning = "torque over setting") double ratio) {}
