package shimwright.mechanics.thread;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/** Sizes, limits and loads of a thread; what no table reaches is absent. */
public record ThreadResult(
        @Output(kind = Kind.LENGTH, meaning = "height of the triangle", decimals = 4)
        double height,

        @Output(kind = Kind.LENGTH, meaning = "pitch diameter, basic")
        double pitchDiameter,

        @Output(kind = Kind.LENGTH, meaning = "minor diameter of the hole, basic (the tap drill is near it)")
        double minorDiameter,

        @Output(kind = Kind.LENGTH, meaning = "root diameter of the bolt")
        double rootDiameter,

        @Output(kind = Kind.AREA, meaning = "stress area", decimals = 2)
        double stressArea,

        @Output(kind = Kind.LENGTH, meaning = "bolt, largest major diameter") @Nullable
        Double majorMax,

        @Output(kind = Kind.LENGTH, meaning = "bolt, smallest major diameter") @Nullable
        Double majorMin,

        @Output(kind = Kind.LENGTH, meaning = "bolt, smallest pitch diameter") @Nullable
        Double pitchMin,

        @Output(kind = Kind.LENGTH, meaning = "hole, largest pitch diameter") @Nullable
        Double holePitchMax,

        @Output(kind = Kind.LENGTH, meaning = "hole, largest minor diameter") @Nullable
        Double holeMinorMax,

        @Output(kind = Kind.FORCE, meaning = "proof load") @Nullable
        Double proofLoad,

        @Output(kind = Kind.FORCE, meaning = "breaking load, smallest") @Nullable
        Double breakingLoad,

        @Output(meaning = "easily taken for it") List<String> lookAlikes) {}
