package shimwright.rebuild.plan.search;

import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/** Exact set-up times of some of the tasks: as many of the longest chains as a table can hold. */
final class SubsetBounds {
    /** So many chains that do not fit, and no more are tried. */
    private static final int MOST_FAILED = 3;
    /** The part of a table that may be full when it is begun with; the rest is for states met later. */
    private static final int BEGUN = 3;

    private SubsetBounds() {}

    /**
     * A table that takes no more than so many bytes, for the longest chains of which each, taken on, makes more unavoidable; null
     * where not even the longest fits. While it is made there are two such tables, which is why that is done between beams.
     *
     * @param stop asked often; once it says true there is no table more
     */
    static @Nullable SubsetBound of(CompiledProblem c, long bytes, BooleanSupplier stop) {
        int slots = Integer.highestOneBit((int) Math.min(1 << 24, Math.max(1, bytes / SubsetBound.BYTES)));
        StateCursor start = new StateCursor(c);
        SubsetBound best = null;
        long[] tasks = Bits.empty(c.n);
        int failed = 0;
        for (int[] chain : Chains.of(c)) {
            long[] more = tasks.clone();
            for (int task : chain) {
                Bits.add(more, task);
            }
            if (failed == MOST_FAILED || stop.getAsBoolean() || Bits.count(more) > SubsetBound.MOST_TASKS) {
                break;
            }
            SubsetBound tried = new SubsetBound(c, more, slots, stop);
            if (!tried.made(slots / BEGUN)) {
                failed++;
            } else if (best == null || tried.least(start) > best.least(start)) {
                best = tried;
                tasks = more;
            }
        }
        return best;
    }
}
