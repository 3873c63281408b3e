package shimwright.mechanics.thread;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/** A thread and, where known, the strength of its bolt. */
public record ThreadCase(
        @Input(kind = Kind.LENGTH, meaning = "nominal major diameter", min = 0.001, max = 0.1, example = "10 mm")
        double diameter,

        @Input(kind = Kind.LENGTH, meaning = "pitch of a metric thread", min = 1e-4, max = 0.01, example = "1.5 mm")
        @Nullable
        Double pitch,

        @Input(meaning = "threads per inch of an inch thread", min = 3, max = 80) @Nullable
        Double perInch,

        @Input(meaning = "mark on the bolt head, such as 8.8 or grade 5", orElse = "", example = "8.8")
        String strengthClass,

        @Input(
                kind = Kind.AREA,
                meaning = "printed stress area, where it is to stand for the computed one",
                min = 1e-7,
                max = 0.01)
        @Nullable
        Double stressArea,

        @Input(
                kind = Kind.PRESSURE,
                meaning = "proof stress, where it is to stand for that of the class",
                min = 1e6,
                max = 3e9)
        @Nullable
        Double proofStress) {}
