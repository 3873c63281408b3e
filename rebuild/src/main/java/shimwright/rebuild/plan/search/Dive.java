package shimwright.rebuild.plan.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Some possible order, quickly and without regard to its cost: what is free is done in the order in which it was written, a task
 * that opens a window only once nothing else is free, and then at once what closes the window. Where this finds nothing there
 * may still be an order.
 */
final class Dive {
    /** Tasks tried to close what one task opens. */
    private static final int MOST_LOOKS = 2_000;

    private final CompiledProblem c;
    private final StateCursor at;
    private final int[] order;
    private final int[] inside;
    private int filled;
    private int looks;

    private Dive(CompiledProblem c) {
        this.c = c;
        this.at = new StateCursor(c);
        this.order = new int[c.n];
        this.inside = new int[c.n];
    }

    /** A possible and whole order; empty where this way finds none. */
    static Optional<int[]> order(CompiledProblem c) {
        return new Dive(c).run();
    }

    private Optional<int[]> run() {
        boolean moved = !at.windowOpen() || close(-1);
        while (moved && !at.finished()) {
            moved = freely() || opening();
        }
        return moved ? Optional.of(Arrays.copyOf(order, filled)) : Optional.empty();
    }

    /** Does all that is free and opens nothing; false where there is nothing of that. */
    private boolean freely() {
        boolean moved = false;
        for (int task : c.topological) {
            if (c.spans.openedBy[task].length == 0 && at.free(task) && at.allowed(task)) {
                if (!at.take(task)) {
                    return false;
                }
                order[filled++] = task;
                moved = true;
            }
        }
        return moved;
    }

    private boolean opening() {
        for (int task = 0; task < c.n; task++) {
            if (c.spans.openedBy[task].length > 0 && at.free(task) && close(task)) {
                return true;
            }
        }
        return false;
    }

    /** Does a task (none where it is less than 0) and then what closes all that is open; false, and nothing done, where that fails. */
    private boolean close(int task) {
        looks = 0;
        StateCursor from = new StateCursor(c);
        from.set(at);
        int begun = 0;
        if (task >= 0) {
            if (!from.allowed(task) || !from.take(task)) {
                return false;
            }
            inside[begun++] = task;
        }
        int length = closes(from, begun);
        for (int k = 0; k < length; k++) {
            at.take(inside[k]);
            order[filled++] = inside[k];
        }
        return length >= 0;
    }

    /** What may be done next to close what is open: what has the least time to spare first, of that what is nearest at hand. */
    private int[] leading(StateCursor from) {
        List<long[]> found = new ArrayList<>();
        for (int task = 0; task < c.n; task++) {
            if (from.free(task) && from.allowed(task) && c.spans.leads(from, task)) {
                found.add(new long[] {from.spare(task), from.setUp(task), task});
            }
        }
        found.sort(Comparator.<long[]>comparingLong(key -> key[0])
                .thenComparingLong(key -> key[1])
                .thenComparingLong(key -> key[2]));
        return found.stream().mapToInt(key -> (int) key[2]).toArray();
    }

    /** The length of the stretch after which no window is open; -1 where there is none. */
    private int closes(StateCursor from, int length) {
        if (!from.windowOpen()) {
            return length;
        }
        for (int task : leading(from)) {
            if (looks < MOST_LOOKS) {
                looks++;
                StateCursor next = new StateCursor(c);
                next.set(from);
                inside[length] = task;
                int end = next.take(task) ? closes(next, length + 1) : -1;
                if (end >= 0) {
                    return end;
                }
            }
        }
        return -1;
    }
}
