package shimwright.mechanics.axial;

import java.util.List;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/**
 * Rounds of readings of one thing, in the order taken, reseated between rounds.
 *
 * @param rounds each with one value per indicator, 1 or 2, the same number in every round, m
 * @param gauge the indicator's data
 * @param settleWithin largest range of rounds that count as agreeing, m
 * @param minimum rounds that must agree at the end, 3 or more
 */
public record ReadingsCase(
        @Input(
                kind = Kind.LENGTH,
                meaning = "rounds in the order taken, the two indicators of a round joined by /",
                min = -10,
                max = 10,
                most = 200,
                example = "0.24/0.32 0.25/0.31 0.24/0.31 mm")
        List<List<Double>> rounds,

        @Input(meaning = "the indicator") GaugeData gauge,

        @Input(
                kind = Kind.LENGTH,
                meaning = "rounds that differ by no more than this agree",
                min = 1e-7,
                max = 0.01,
                orElse = "0.02 mm")
        double settleWithin,

        @Input(meaning = "rounds that must agree at the end", min = 3, max = 20, orElse = "3")
        int minimum) {
    public ReadingsCase {
        rounds = rounds.stream().map(List::copyOf).toList();
    }
}
