package shimwright.mechanics.thread;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/** What the thread bears; answers that need a strength which was not given are absent. */
public record ThreadStripResult(
        @Output(kind = Kind.AREA, meaning = "shear area of the hole's thread", decimals = 2)
        double holeArea,

        @Output(kind = Kind.AREA, meaning = "shear area of the bolt's thread", decimals = 2)
        double boltArea,

        @Output(kind = Kind.FORCE, meaning = "load that strips the hole")
        double holeStrip,

        @Output(kind = Kind.FORCE, meaning = "load that strips the bolt's thread")
        double boltStrip,

        @Output(kind = Kind.FORCE, meaning = "load that breaks the bolt")
        double boltBreak,

        @Output(meaning = "strength of the hole's thread over the bolt's", decimals = 3)
        double strengthRatio,

        @Output(meaning = "factor for a boss that widens", decimals = 3)
        double dilation,

        @Output(meaning = "factor for bending of the bolt's thread", decimals = 3)
        double boltBending,

        @Output(meaning = "factor for bending of the hole's thread", decimals = 3)
        double holeBending,

        @Output(kind = Kind.TORQUE, meaning = "torque that strips or breaks")
        double stripTorque,

        @Output(kind = Kind.FORCE, meaning = "load to be trusted")
        double safeLoad,

        @Output(kind = Kind.TORQUE, meaning = "torque to be trusted, scatter counted")
        double safeTorque,

        @Output(meaning = "the hole at the torque asked for")
        Hole verdict,

        @Output(kind = Kind.LENGTH, meaning = "engagement that breaks the bolt first")
        double neededEngagement,

        @Output(kind = Kind.LENGTH, meaning = "the same for equal materials, FED-STD-H28 form")
        double equalEngagement,

        @Output(meaning = "relative strength J", decimals = 3) @Nullable
        Double relativeStrength,

        @Output(kind = Kind.LENGTH, meaning = "engagement by relative strength, FED-STD-H28 form") @Nullable
        Double relativeEngagement,

        @Output(meaning = "wire insert, bolt diameters", decimals = 1) @Nullable
        Double insertRatio,

        @Output(kind = Kind.LENGTH, meaning = "wire insert length", decimals = 1) @Nullable
        Double insertLength) {

    /** State of a hole at the torque asked for. */
    public enum Hole {
        NOT_ASKED,
        HOLDS,
        AT_RISK,
        STRIPS
    }
}
