package shimwright.mechanics.thread;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/** Order and steps; the preloads that remain only where a loss to the neighbors was given. */
public record BoltOrderResult(
        @Output(meaning = "order of tightening") String order,
        @Output(meaning = "shares of the full torque") String shares,
        @Output(meaning = "steps") List<Stage> stages,

        @Output(meaning = "lowest preload left", unit = "%", decimals = 1) @Nullable
        Double lowest,

        @Output(meaning = "mean preload left", unit = "%", decimals = 1) @Nullable
        Double mean) {

    /** One step over all bolts. */
    public record Stage(
            @Output(meaning = "share of the full torque", unit = "%", decimals = 0)
            double share,

            @Output(kind = Kind.TORQUE, meaning = "torque", decimals = 1) @Nullable
            Double torque) {}
}
