package shimwright.mechanics.axial;

import java.util.List;
import shimwright.mechanics.measure.Budget;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/**
 * What rounds of readings say.
 *
 * @param value mean of the rounds used when settled; the last round when climbing or falling, the median when scattered
 * @param u its standard uncertainty, m
 * @param nu effective degrees of freedom
 * @param seating whether the series has come to rest; anything but SETTLED proves nothing
 * @param firstRoundUsed counted from 1
 * @param roundsUsed how many from there on
 * @param moreRoundsWanted at least so many more before it can settle; 0 when settled
 * @param oddRounds rounds that stand off the others, counted from 1
 * @param budget the doubt by influence
 * @param advice one sentence: what to do
 */
public record ReadingsResult(
        @Output(kind = Kind.LENGTH, meaning = "value", u = "u")
        double value,

        @Output(kind = Kind.LENGTH, meaning = "standard uncertainty", decimals = 4)
        double u,

        @Output(meaning = "degrees of freedom", decimals = 1, infinite = "no limit")
        double nu,

        @Output(meaning = "seating") Seating seating,
        @Output(meaning = "first round used") int firstRoundUsed,
        @Output(meaning = "rounds used") int roundsUsed,
        @Output(meaning = "more rounds wanted") int moreRoundsWanted,
        @Output(meaning = "rounds that stand off") List<Integer> oddRounds,

        @Output(kind = Kind.LENGTH, meaning = "doubt by influence")
        Budget budget,

        @Output(meaning = "advice") String advice) {}
