package shimwright.mechanics.measure;

import java.util.ArrayList;
import java.util.List;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;

/**
 * How to draw. The answer depends on everything here but the threads.
 *
 * @param draws how many; with {@code adaptive} at most
 * @param seed any number; recorded with the answer
 * @param coverage probability of the intervals, above 0 and below 1
 * @param threads how many work at once, 1 or more
 * @param adaptive whether to stop once every result stands (JCGM 101:2008 7.9)
 */
public record Sampling(int draws, long seed, double coverage, int threads, boolean adaptive) {
    /** Draws that share one stream of random numbers. */
    public static final int BLOCK = 10_000;

    private static final int FEWEST = 1_000;
    private static final int MOST = 5_000_000;

    /** So many draws on one thread, 95 %. */
    public static Sampling of(int draws, long seed) {
        return new Sampling(draws, seed, 0.95, 1, false);
    }

    /** The same on several threads. */
    public Sampling onThreads(int several) {
        return new Sampling(draws, seed, coverage, several, adaptive);
    }

    /** The same with intervals of another probability. */
    public Sampling covering(double probability) {
        return new Sampling(draws, seed, probability, threads, adaptive);
    }

    /** The same, stopping once the results stand. */
    public Sampling adapting() {
        return new Sampling(draws, seed, coverage, threads, true);
    }

    /**
     * This, or what is wrong with it: draws from 1,000 to 5,000,000 and at least 10/(1−p), p from 0.5 to 0.9999, 1 to
     * 256 threads.
     */
    public Outcome<Sampling> checked() {
        List<Refusal> refusals = new ArrayList<>();
        if (draws < FEWEST || draws > MOST) {
            refusals.add(Refusal.of(
                    "monte-carlo",
                    draws + " draws asked for",
                    "Take from " + FEWEST + " to " + MOST + ", such as 100000"));
        }
        if (!(coverage >= 0.5 && coverage <= 0.9999)) {
            refusals.add(Refusal.of("coverage", coverage + " asked for", "Take from 0.5 to 0.9999, such as 0.95"));
        } else if (draws >= FEWEST && draws * (1 - coverage) < 10) {
            refusals.add(Refusal.of(
                    "monte-carlo",
                    draws + " draws are too few for " + 100 * coverage + " %",
                    "Take at least " + (int) Math.ceil(10 / (1 - coverage))));
        }
        if (threads < 1 || threads > 256) {
            refusals.add(Refusal.of("threads", threads + " asked for", "Take from 1 to 256"));
        }
        return refusals.isEmpty() ? Outcome.ok(this) : Outcome.refused(refusals);
    }

    int blocks() {
        return (draws + BLOCK - 1) / BLOCK;
    }

    int sizeOf(int block) {
        return Math.min(BLOCK, draws - block * BLOCK);
    }
}
