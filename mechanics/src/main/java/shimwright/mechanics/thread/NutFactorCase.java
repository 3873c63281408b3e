package shimwright.mechanics.thread;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/** A few bolts of one kind, tightened to one torque over a load cell. */
public record NutFactorCase(
        @Input(kind = Kind.LENGTH, meaning = "nominal major diameter", min = 0.001, max = 0.1, example = "12 mm")
        double diameter,

        @Input(kind = Kind.LENGTH, meaning = "pitch of a metric thread", min = 1e-4, max = 0.01, example = "1.75 mm")
        @Nullable
        Double pitch,

        @Input(meaning = "threads per inch of an inch thread", min = 3, max = 80) @Nullable
        Double perInch,

        @Input(kind = Kind.TORQUE, meaning = "torque of every trial", min = 1e-3, max = 1e5, example = "90 N·m")
        double torque,

        @Input(
                kind = Kind.FORCE,
                meaning = "preloads measured",
                unit = "kN",
                fewest = 2,
                min = 1,
                max = 1e7,
                example = "33.8 34.7 32.9 37.4 kN")
        List<Double> preloads,

        @Input(kind = Kind.LENGTH, meaning = "mean diameter of the seat under the head", min = 0.001, max = 0.3)
        @Nullable
        Double headMean) {}
