package shimwright.mechanics.axial;

import shimwright.mechanics.measure.Budget;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/**
 * End play and how far it can be trusted; see {@link ReadingsResult}.
 *
 * @param value end play, m
 * @param u standard uncertainty, m
 * @param nu effective degrees of freedom
 * @param seating anything but SETTLED proves nothing
 * @param firstRoundUsed counted from 1
 * @param roundsUsed how many from there on
 * @param moreRoundsWanted 0 when settled
 * @param tilt second indicator minus first, mean of the rounds used, m; 0 with one indicator
 * @param budget the doubt by influence
 * @param advice one sentence: what to do
 */
public record EndPlayResult(
        @Output(kind = Kind.LENGTH, meaning = "end play", u = "u")
        double value,

        @Output(kind = Kind.LENGTH, meaning = "standard uncertainty", decimals = 4)
        double u,

        @Output(meaning = "degrees of freedom", decimals = 1, infinite = "no limit")
        double nu,

        @Output(meaning = "seating") Seating seating,
        @Output(meaning = "first round used") int firstRoundUsed,
        @Output(meaning = "rounds used") int roundsUsed,
        @Output(meaning = "more rounds wanted") int moreRoundsWanted,

        @Output(kind = Kind.LENGTH, meaning = "tilt between the indicators")
        double tilt,

        @Output(kind = Kind.LENGTH, meaning = "doubt by influence")
        Budget budget,

        @Output(meaning = "advice") String advice) {}
