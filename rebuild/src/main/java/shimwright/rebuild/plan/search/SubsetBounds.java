package shimwright.rebuild.plan.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Bounds by more and more of the tasks, each sharper than the one before and looking only where that one leaves something to
 * be found (successive sublimation: T. Ibaraki, Annals of Operations Research 11, 1987; a hierarchy of bounds as in R. Holte and others,
 * AAAI 2005). It grows by the chain of tasks that makes most unavoidable, and what is left to pay from the start rises in small
 * steps, so it can be stopped anywhere.
 */
final class SubsetBounds {
    /** Looks for a bound with nothing below it. */
    static final int FIRST = 3000;
    /** Looks for telling what a chain would make unavoidable. */
    private static final int TRIAL = 5000;
    /** The same with those of all bounds below it. */
    private static final long MOST_TRIAL = 100_000;
    /** So many chains that do not fit into the first bound, and no more are tried. */
    private static final int MOST_FAILED = 3;
    /** Looks for the bound of one state of a beam. */
    private static final int LOOKS = 20;
    /** The part of what is known to be left to pay by which the limit is raised. */
    private static final int PART = 256;

    private final CompiledProblem c;
    private final SubsetTable table;
    private final LookLimit effort;
    private final List<Rest> rest = new ArrayList<>();
    private final long[] tasks;
    private final StateCursor start;
    private @Nullable SubsetBound top;
    private int numbers;
    private long low;
    private boolean exact = true;

    /** A chain that is not in yet, and what it made unavoidable when it was last tried. */
    private static final class Rest {
        final int[] chain;
        long gain = CompiledProblem.NEVER;

        @Nullable
        SubsetBound tried;

        Rest(int[] chain) {
            this.chain = chain;
        }
    }

    private SubsetBounds(CompiledProblem c, SubsetTable table, LookLimit effort, int looks) {
        this.c = c;
        this.table = table;
        this.effort = effort;
        this.tasks = Bits.empty(c.n);
        this.start = new StateCursor(c);
        first(looks);
    }

    /**
     * Bounds with a table of no more than so many bytes; null where costs are too large or tasks too many for it.
     *
     * @param first looks for the bound with nothing below it
     * @param stop asked often; once it says true nothing more is looked at
     */
    static @Nullable SubsetBounds of(CompiledProblem c, long bytes, int first, BooleanSupplier stop) {
        SetUpTimes ready = c.ready;
        long stands = (ready.orientations + 1L) * (ready.places + 1L) * ready.holds.length;
        if (c.n > SubsetBound.MOST_TASKS || stands > 1 << 16) {
            return null;
        }
        SubsetTable table = new SubsetTable(c.all.length, (int) stands, bytes);
        return dearest(c) > table.largest() ? null : new SubsetBounds(c, table, new LookLimit(stop), first);
    }

    /** More than any order costs. */
    private static long dearest(CompiledProblem c) {
        long once = c.ready.walk;
        for (long time : c.ready.toolTime) {
            once += time;
        }
        long turn = 0;
        for (long[] row : c.ready.leastTurn) {
            turn = Math.max(turn, Arrays.stream(row).max().orElse(0));
        }
        long risk = Arrays.stream(c.riskCost).flatMapToLong(Arrays::stream).sum();
        return CompiledProblem.UNITS * (once + turn) * (c.n + 1L) + risk;
    }

    private void first(int looks) {
        int failed = 0;
        for (int[] chain : Chains.of(c)) {
            long value = CompiledProblem.NEVER;
            SubsetBound more = null;
            if (failed < MOST_FAILED) {
                more = with(chain, null);
                effort.allow(looks);
                value = more.least(start, CompiledProblem.NEVER);
                failed += effort.spent() ? 1 : 0;
            }
            if (more == null || effort.spent()) {
                rest.add(new Rest(chain));
            } else {
                take(chain, more);
                low = value;
                exact = true;
            }
        }
    }

    private SubsetBound with(int[] chain, @Nullable SubsetBound below) {
        long[] more = tasks.clone();
        for (int task : chain) {
            Bits.add(more, task);
        }
        return new SubsetBound(c, more, below, table, effort, numbers++);
    }

    private void take(int[] chain, SubsetBound bound) {
        for (int task : chain) {
            Bits.add(tasks, task);
        }
        top = bound;
    }

    /** Looks made so far. */
    long made() {
        return effort.made;
    }

    /** Cost from the start at least. */
    long low() {
        return low;
    }

    /** True where all tasks are in and what they cost at least from the start is exact. */
    boolean complete() {
        return rest.isEmpty() && exact;
    }

    /** Cost still to come at least; nothing is looked for above the limit. */
    long least(StateCursor at, long limit) {
        if (top == null) {
            return 0;
        }
        effort.allow(LOOKS);
        return top.least(at, limit);
    }

    /** Grows with so many looks, until nothing is left below what is wanted or all tasks are in; false once nothing is left to do. */
    boolean grow(long wanted, long most) {
        long last = effort.made + most;
        while (low < wanted && effort.made < last && !(exact && !more())) {
            if (!exact) {
                raise(wanted, last - effort.made);
                if (effort.spent()) {
                    return true;
                }
            }
        }
        return low < wanted && !complete();
    }

    /** Raises the limit until it is exact, wanted or the effort spent. */
    private void raise(long wanted, long most) {
        long last = effort.made + most;
        while (top != null && !exact && low < wanted) {
            effort.allow(last - effort.made);
            long limit = Math.min(wanted, low + low / PART + 1);
            long least = top.least(start, limit);
            low = Math.max(low, least);
            if (effort.spent()) {
                return;
            }
            exact = least < limit;
        }
    }

    /** Takes on the chain that makes most unavoidable; false where there is none, or no number for it. */
    private boolean more() {
        while (!rest.isEmpty() && numbers < SubsetTable.MOST_NUMBERS) {
            Rest best = rest.get(0);
            for (Rest other : rest) {
                best = other.gain > best.gain ? other : best;
            }
            if (best.tried != null) {
                rest.remove(best);
                take(best.chain, best.tried);
                best.tried.allow(CompiledProblem.NEVER);
                rest.forEach(other -> other.tried = null);
                exact = false;
                return true;
            }
            SubsetBound tried = with(best.chain, top);
            best.gain = gain(tried);
            best.tried = tried;
        }
        return false;
    }

    /** What it would make unavoidable beyond what is known, as far as is seen in a few looks; a little more where that is not all. */
    private long gain(SubsetBound tried) {
        tried.allow(TRIAL);
        long reached = low;
        while (true) {
            effort.allow(MOST_TRIAL);
            long limit = reached + reached / PART + 1;
            long least = tried.least(start, limit);
            reached = Math.max(reached, least);
            if (effort.spent()) {
                return reached - low + 1;
            }
            if (least < limit) {
                return reached - low;
            }
        }
    }

    /** An order of all tasks that costs no more than is known to be needed, where windows and waits let it; empty where there is none. */
    int[] order() {
        if (!complete() || top == null) {
            return new int[0];
        }
        effort.allow(CompiledProblem.NEVER);
        return top.order(low);
    }
}
