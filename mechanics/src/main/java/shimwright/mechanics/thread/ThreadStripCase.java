package shimwright.mechanics.thread;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/** A bolt in a tapped hole, whole or damaged. */
public record ThreadStripCase(
        @Input(kind = Kind.LENGTH, meaning = "nominal major diameter", min = 0.001, max = 0.1, example = "8 mm")
        double diameter,

        @Input(kind = Kind.LENGTH, meaning = "pitch of a metric thread", min = 1e-4, max = 0.01, example = "1.25 mm")
        @Nullable
        Double pitch,

        @Input(meaning = "threads per inch of an inch thread", min = 3, max = 80) @Nullable
        Double perInch,

        @Input(kind = Kind.LENGTH, meaning = "length of thread in engagement", min = 1e-4, max = 0.3, example = "12 mm")
        double engagement,

        @Input(kind = Kind.LENGTH, meaning = "length of it that is torn or pulled", orElse = "0 mm", min = 0, max = 0.3)
        double damaged,

        @Input(meaning = "mark on the bolt head, such as 8.8", orElse = "", example = "8.8")
        String strengthClass,

        @Input(kind = Kind.PRESSURE, meaning = "tensile strength of the bolt", min = 1e7, max = 3e9) @Nullable
        Double boltTensile,

        @Input(kind = Kind.PRESSURE, meaning = "shear strength of the bolt; else 0.6 of tensile", min = 1e7, max = 3e9)
        @Nullable
        Double boltShear,

        @Input(meaning = "alloy of the case, such as A380", orElse = "", example = "A380")
        String parent,

        @Input(kind = Kind.PRESSURE, meaning = "shear strength of the case", min = 1e6, max = 2e9) @Nullable
        Double parentShear,

        @Input(kind = Kind.PRESSURE, meaning = "tensile strength of the case", min = 1e6, max = 3e9) @Nullable
        Double parentTensile,

        @Input(meaning = "share of the strength trusted in a casting", orElse = "0.75", min = 0.1, max = 1)
        double derate,

        @Input(kind = Kind.LENGTH, meaning = "smallest width of the boss or nut", min = 0.001, max = 0.5) @Nullable
        Double bossWidth,

        @Input(kind = Kind.LENGTH, meaning = "bolt, smallest major diameter", min = 0.001, max = 0.1) @Nullable
        Double majorMin,

        @Input(kind = Kind.LENGTH, meaning = "bolt, smallest pitch diameter", min = 0.001, max = 0.1) @Nullable
        Double pitchMin,

        @Input(kind = Kind.LENGTH, meaning = "hole, largest pitch diameter", min = 0.001, max = 0.1) @Nullable
        Double holePitchMax,

        @Input(kind = Kind.LENGTH, meaning = "hole, largest minor diameter", min = 0.001, max = 0.1) @Nullable
        Double holeMinorMax,

        @Input(meaning = "nut factor K", orElse = "0.2", min = 0.03, max = 1)
        double nutFactor,

        @Input(meaning = "scatter of the preload to each side", orElse = "0.25", min = 0, max = 0.95)
        double scatter,

        @Input(kind = Kind.TORQUE, meaning = "torque the joint asks for", min = 1e-3, max = 1e5) @Nullable
        Double torque,

        @Input(kind = Kind.LENGTH, meaning = "depth of a blind hole", min = 1e-4, max = 0.5) @Nullable
        Double holeDepth,

        @Input(kind = Kind.LENGTH, meaning = "how far the bolt reaches into it", min = 1e-4, max = 0.5) @Nullable
        Double reach) {}
