package shimwright.mechanics.lifting;

import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/** What the guide allows. */
public record LiftingResult(
        @Output(kind = Kind.MASS, meaning = "recommended limit by hand", decimals = 1)
        double limit,

        @Output(meaning = "lifting index, mass over limit", decimals = 2)
        double index,

        @Output(meaning = "hoist needed") boolean hoist) {}
