package shimwright.mechanics.fit;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/**
 * Result of {@code limits-and-fits}.
 *
 * @param hole limits of the hole; null when none was asked for
 * @param shaft limits of the shaft; null when none was asked for
 * @param tightest interference (+) or clearance (−) of the largest shaft in the smallest hole, metres; null without both
 * @param loosest the same of the smallest shaft in the largest hole
 * @param kind what the pair always, sometimes or never is; null without both
 */
public record FitLimits(
        @Output(meaning = "hole") @Nullable Limits hole,
        @Output(meaning = "shaft") @Nullable Limits shaft,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "interference (+) or clearance (−) at the tightest")
        @Nullable
        Double tightest,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "interference (+) or clearance (−) at the loosest")
        @Nullable
        Double loosest,

        @Output(meaning = "kind of fit") @Nullable FitKind kind) {

    /** Kinds of fit (ISO 286-1:2010 3.3). */
    public enum FitKind {
        CLEARANCE_FIT,
        TRANSITION_FIT,
        INTERFERENCE_FIT
    }
}
