package shimwright.mechanics.thread;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/** What the trials say about friction. */
public record NutFactorResult(
        @Output(kind = Kind.FORCE, meaning = "mean preload") double mean,

        @Output(kind = Kind.FORCE, meaning = "standard deviation of one bolt")
        double deviation,

        @Output(meaning = "scatter to each side for 95 in 100 bolts", unit = "%", decimals = 1)
        double scatter,

        @Output(meaning = "nut factor K", decimals = 3) double nutFactor,

        @Output(meaning = "largest over smallest preload", decimals = 2)
        double tighteningFactor,

        @Output(meaning = "coefficient of friction, thread and head alike", decimals = 3) @Nullable
        Double friction) {}
