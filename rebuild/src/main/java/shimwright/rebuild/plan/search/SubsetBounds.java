package shimwright.rebuild.plan.search;

import java.util.ArrayList;
import java.util.List;

/**
 * Exact set-up times of some of the tasks, several choices of them: as many of the longest chains as a table can hold, and once
 * more beginning with those that found no room.
 */
final class SubsetBounds {
    private static final int FEWEST = 2;
    private static final int MOST_FAILED = 3;

    private final CompiledProblem c;
    private final int slots;
    private final List<SubsetBound> bounds = new ArrayList<>();

    /** With tables that together take no more than so many bytes. */
    SubsetBounds(CompiledProblem c, long bytes) {
        this.c = c;
        this.slots = Integer.highestOneBit((int) Math.min(1 << 24, bytes / SubsetBound.BYTES / TABLES));
        List<int[]> chains = Chains.of(c);
        List<int[]> left = fill(chains);
        for (int k = 1; k < TABLES && !left.isEmpty(); k++) {
            List<int[]> next = new ArrayList<>(chains.subList(0, Math.min(FEWEST, chains.size())));
            left.stream().filter(chain -> !next.contains(chain)).forEach(next::add);
            chains.stream().filter(chain -> !next.contains(chain)).forEach(next::add);
            left = fill(next);
        }
    }

    private static final int TABLES = Integer.getInteger("x.tables", 1);

    /** Makes a table for as many of these chains as fit and gives those that do not. */
    private List<int[]> fill(List<int[]> chains) {
        SubsetBound best = null;
        long[] tasks = Bits.empty(c.n);
        List<int[]> left = new ArrayList<>();
        int failed = 0;
        for (int[] chain : chains) {
            long[] more = tasks.clone();
            for (int task : chain) {
                Bits.add(more, task);
            }
            SubsetBound tried = failed < MOST_FAILED && Bits.count(more) <= SubsetBound.MOST_TASKS
                    ? new SubsetBound(c, more, slots)
                    : null;
            if (tried != null && tried.made(slots / 3)) {
                best = tried;
                tasks = more;
            } else {
                left.add(chain);
                failed++;
            }
        }
        if (best != null) {
            if (System.getProperty("x.say") != null) System.out.println("   subset " + Bits.count(tasks) + " entries " + best.size() + " h " + best.least(new StateCursor(c)) / 60000.0);
            bounds.add(best);
        }
        return left;
    }

    /** Set-up time still to come at least. */
    long least(StateCursor at) {
        long least = 0;
        for (SubsetBound bound : bounds) {
            least = Math.max(least, bound.least(at));
        }
        return least;
    }
}
