package shimwright.rebuild.money;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import shimwright.rebuild.job.Entry;

/**
 * A quote as a range, by draws: what may come to it comes or does not, the hours ahead are off by so much at most, evenly more or less.
 *
 * @param low one draw in ten is cheaper, what nobody has a chance for left out
 * @param likely half of the draws are cheaper, what nobody has a chance for left out
 * @param high one draw in ten is dearer, what nobody has a chance for in it
 */
public record QuoteRange(long low, long likely, long high) {
    private static final int DRAWS = 2000;
    private static final long SEED = 20261130L;

    /**
     * The range.
     *
     * @param lines chance 1 for what is certain, less than 0 for what nobody has a chance for
     * @param work what the hours ahead cost, hundredths of the currency
     * @param spread how far they may be off, as a share of them
     */
    public static QuoteRange of(List<Entry.QuoteLine> lines, long work, double spread) {
        long[] without = draws(lines, work, spread, 0);
        long[] with = draws(lines, work, spread, 1);
        return new QuoteRange(without[DRAWS / 10], without[DRAWS / 2], with[DRAWS - DRAWS / 10 - 1]);
    }

    private static long[] draws(List<Entry.QuoteLine> lines, long work, double spread, double unknown) {
        SplittableRandom random = new SplittableRandom(SEED);
        long[] sums = new long[DRAWS];
        for (int i = 0; i < DRAWS; i++) {
            sums[i] = Math.round(work * (1 + spread * (random.nextDouble() + random.nextDouble() - 1)));
            for (Entry.QuoteLine line : lines) {
                double chance = line.chance() < 0 ? unknown : line.chance();
                sums[i] += random.nextDouble() < chance ? line.cents() : 0;
            }
        }
        Arrays.sort(sums);
        return sums;
    }
}
