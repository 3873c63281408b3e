package shimwright.mechanics.axial;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/**
 * How backlash answers to a shift of the crown wheel.
 *
 * @param meanBefore m
 * @param meanAfter m
 * @param slope loss of backlash per shift towards the pinion
 * @param offTheory slope over theory − 1; null without a theory
 * @param spreadAfter largest minus smallest after, m
 * @param oddBefore places that stand off, counted from 1
 * @param oddAfter places that stand off, counted from 1
 * @param further shift still to make towards the pinion (negative: away), m; null without a wanted backlash, or while a
 *     place stands off or the slope is not believed
 */
public record BacklashShiftResult(
        @Output(kind = Kind.LENGTH, meaning = "mean before", decimals = 4)
        double meanBefore,

        @Output(kind = Kind.LENGTH, meaning = "mean after", decimals = 4)
        double meanAfter,

        @Output(meaning = "backlash lost per shift") double slope,
        @Output(meaning = "slope off theory") @Nullable Double offTheory,

        @Output(kind = Kind.LENGTH, meaning = "spread after")
        double spreadAfter,

        @Output(meaning = "places that stand off, before") List<Integer> oddBefore,
        @Output(meaning = "places that stand off, after") List<Integer> oddAfter,

        @Output(kind = Kind.LENGTH, meaning = "further shift towards the pinion") @Nullable
        Double further) {}
