package shimwright.mechanics.thread;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/** One bolt or nut to be tightened, by torque, by preload or by share of the proof load. */
public record TighteningCase(
        @Input(kind = Kind.LENGTH, meaning = "nominal major diameter", min = 0.001, max = 0.1, example = "10 mm")
        double diameter,

        @Input(kind = Kind.LENGTH, meaning = "pitch of a metric thread", min = 1e-4, max = 0.01, example = "1.5 mm")
        @Nullable
        Double pitch,

        @Input(meaning = "threads per inch of an inch thread", min = 3, max = 80) @Nullable
        Double perInch,

        @Input(meaning = "mark on the bolt head, such as 8.8 or grade 5", orElse = "", example = "8.8")
        String strengthClass,

        @Input(kind = Kind.AREA, meaning = "printed stress area for the computed one", min = 1e-7, max = 0.01) @Nullable
        Double stressArea,

        @Input(kind = Kind.PRESSURE, meaning = "proof stress for that of the class", min = 1e6, max = 3e9) @Nullable
        Double proofStress,

        @Input(kind = Kind.PRESSURE, meaning = "yield stress for that of the class", min = 1e6, max = 3e9) @Nullable
        Double yieldStress,

        @Input(kind = Kind.TORQUE, meaning = "torque at the fastener", min = 1e-3, max = 1e5, example = "40 N·m")
        @Nullable
        Double torque,

        @Input(kind = Kind.FORCE, meaning = "preload wanted instead", min = 1, max = 1e7) @Nullable
        Double preload,

        @Input(meaning = "share of the proof load wanted instead; 75 % is usual", min = 0.01, max = 1) @Nullable
        Double proofShare,

        @Input(meaning = "what the torque was stated for", orElse = "this joint")
        Basis basis,

        @Input(meaning = "whether the thread is cut in aluminum", orElse = "no")
        boolean intoAluminium,

        @Input(meaning = "which formula", orElse = "nut factor")
        Form form,

        @Input(meaning = "nut factor K, where known", min = 0.03, max = 1, example = "0.18") @Nullable
        Double nutFactor,

        @Input(meaning = "surface of bolt and seat", orElse = "unknown")
        Surface condition,

        @Input(meaning = "coefficient of friction in the thread", min = 0, max = 0.8) @Nullable
        Double threadFriction,

        @Input(meaning = "coefficient of friction under the head", min = 0, max = 0.8) @Nullable
        Double headFriction,

        @Input(kind = Kind.LENGTH, meaning = "mean diameter of the seat under the head", min = 0.001, max = 0.3)
        @Nullable
        Double headMean,

        @Input(kind = Kind.LENGTH, meaning = "outer diameter of the seat under the head", min = 0.001, max = 0.3)
        @Nullable
        Double headOuter,

        @Input(kind = Kind.LENGTH, meaning = "diameter of the hole under the head", min = 0.001, max = 0.3) @Nullable
        Double headHole,

        @Input(meaning = "share of yield allowed while tightening", orElse = "0.9", min = 0.1, max = 1)
        double yieldShare,

        @Input(meaning = "how the tightening is judged", orElse = "torque wrench")
        Method method,

        @Input(meaning = "scatter of the preload to each side, where known", min = 0, max = 0.95) @Nullable
        Double scatter,

        @Input(meaning = "tightening factor, largest over smallest preload, instead", min = 1, max = 20) @Nullable
        Double tighteningFactor,

        @Input(meaning = "tolerance of the wrench", orElse = "4 %", min = 0, max = 0.5)
        double toolTolerance,

        @Input(
                kind = Kind.TORQUE,
                meaning = "torque that only turns a locking thread",
                orElse = "0 N·m",
                min = 0,
                max = 1e4)
        double prevailing,

        @Input(meaning = "whether liquid threadlocker is used", orElse = "no")
        boolean threadlocker,

        @Input(
                kind = Kind.FORCE,
                meaning = "working load that pulls on the joint, per bolt",
                orElse = "0 N",
                min = 0,
                max = 1e7)
        double serviceLoad,

        @Input(meaning = "share of the working load that the bolt feels", min = 0, max = 1) @Nullable
        Double loadShare,

        @Input(kind = Kind.LENGTH, meaning = "length of a spacer or sleeve under the nut", min = 1e-4, max = 1)
        @Nullable
        Double sleeveLength,

        @Input(kind = Kind.AREA, meaning = "section of that spacer", min = 1e-6, max = 0.1) @Nullable
        Double sleeveArea,

        @Input(
                kind = Kind.PRESSURE,
                meaning = "elastic modulus of that spacer",
                unit = "GPa",
                orElse = "206 GPa",
                min = 1e9,
                max = 1e12)
        double sleeveModulus) {

    /** What a stated torque was stated for. */
    public enum Basis {
        THIS_JOINT,
        DRY_STEEL_TABLE
    }

    /** Relation of torque and preload. */
    public enum Form {
        /** T = K F d. */
        NUT_FACTOR,
        /** Sum of pitch, thread and head shares. */
        FRICTION,
        /** The exact screw. */
        SCREW
    }

    /** Surface of bolt and seat. */
    public enum Surface {
        UNKNOWN,
        BLACK,
        ZINC_PLATED,
        LUBRICATED,
        CADMIUM_PLATED,
        ANTI_SEIZE
    }

    /** How the tightening is judged. */
    public enum Method {
        FEEL,
        TORQUE_WRENCH,
        TURN_OF_NUT,
        INDICATING_WASHER,
        ELONGATION,
        YIELD_CONTROL
    }
}
