package shimwright.mechanics.axial;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/**
 * What warmth does to a play.
 *
 * @param change warm minus cold, m; positive when the play opens
 * @param caseGrowth growth of the case, m
 * @param shaftGrowth growth of shaft and bearings, m
 * @param warmPlay play when warm, m, preload negative; null without a cold play
 */
public record GrowthResult(
        @Output(kind = Kind.LENGTH, meaning = "change of play", decimals = 4)
        double change,

        @Output(kind = Kind.LENGTH, meaning = "growth of the case", decimals = 4)
        double caseGrowth,

        @Output(kind = Kind.LENGTH, meaning = "growth of the shaft", decimals = 4)
        double shaftGrowth,

        @Output(kind = Kind.LENGTH, meaning = "play when warm", decimals = 4) @Nullable
        Double warmPlay) {}
