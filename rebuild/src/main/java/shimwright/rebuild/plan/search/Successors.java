package shimwright.rebuild.plan.search;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** States that follow a state. */
final class Successors {
    private static final int MOST_LOOKS = 400;

    private final CompiledProblem c;
    private final LowerBound bound;
    private final StateCursor cursor;
    private final StateCursor base;
    private final int[] taken;
    private final long[] lagged;
    /** The only tasks to be done; null for all. */
    private long @Nullable [] only;

    private int looks;
    /** True once the assignment was made ready for the state grown last. */
    private boolean sharp;
    /** How many states were made. */
    long made;

    Successors(CompiledProblem c) {
        this.c = c;
        this.bound = new LowerBound(c);
        this.cursor = new StateCursor(c);
        this.base = new StateCursor(c);
        this.taken = new int[c.n];
        this.lagged = Bits.empty(c.n);
        for (int from : c.lagFrom) {
            if (from >= 0) {
                Bits.add(lagged, from);
            }
        }
    }

    /** The state at the start. */
    Node root() {
        base.start();
        cursor.start();
        close(0);
        Node root = finish(0, -1, -1);
        root.bound = Math.max(root.bound, root.cost + bound.assigned(cursor));
        return root;
    }

    /** From now on nothing else is done than these; null for all again. */
    void only(long @Nullable [] tasks) {
        only = tasks;
    }

    /** A state reached by an order as it is, from which others follow. */
    Node at(int[] order, int count) {
        cursor.start();
        for (int k = 0; k < count; k++) {
            cursor.take(order[k]);
        }
        return finish(0, -1, -1);
    }

    /** All tasks of an order from the start, of which those are given that were not done at once after another. */
    int[] path(List<Integer> tasks) {
        cursor.start();
        int[] first = java.util.Arrays.copyOf(taken, close(0));
        return path(first, first.length, tasks);
    }

    /** The same after the first tasks of an order. */
    int[] path(int[] order, int count, List<Integer> tasks) {
        int[] path = java.util.Arrays.copyOf(order, c.n);
        int n = count;
        cursor.start();
        for (int k = 0; k < count; k++) {
            cursor.take(order[k]);
        }
        for (int task : tasks) {
            cursor.take(task);
            taken[0] = task;
            int more = close(1);
            System.arraycopy(taken, 0, path, n, more);
            n += more;
        }
        return java.util.Arrays.copyOf(path, n);
    }

    /**
     * All states that follow, each after one task and whatever may then be done at once without loss. Their bounds are the
     * quick ones and may be raised by {@link #sharpen} until the next state is grown.
     *
     * @param trail where the state stands in the trail
     */
    List<Node> grow(Node node, int trail) {
        List<Node> grown = new ArrayList<>();
        base.set(node);
        sharp = false;
        for (int task = 0; task < c.n; task++) {
            if (wanted(task) && base.free(task) && base.allowed(task)) {
                Node next = after(node, trail, task);
                if (next != null) {
                    grown.add(next);
                }
            }
        }
        return grown;
    }

    /** Raises the bound of one of the states grown last as far as can be. */
    void sharpen(Node grown) {
        if (bound.assigns()) {
            if (!sharp) {
                bound.assigned(base);
                sharp = true;
            }
            cursor.set(grown);
            grown.bound = Math.max(grown.bound, grown.cost + bound.assignedAfter(cursor));
        }
    }

    private @Nullable Node after(Node node, int trail, int task) {
        cursor.set(base);
        boolean kept = cursor.take(task);
        if (!kept || (c.spans.openedBy[task].length > 0 && !closable())) {
            return null;
        }
        taken[0] = task;
        close(1);
        return finish(node.bound, trail, task);
    }

    private Node finish(long least, int trail, int task) {
        made++;
        Node next = new Node(cursor, trail, task);
        next.bound = Math.max(least, next.cost + bound.least(cursor));
        next.number = made;
        return next;
    }

    /**
     * Does at once what no order is worse for: tasks that need no set-up, change nothing that later set-ups depend on, take
     * no risk and could not fill a wait. While a wait that costs something runs, set-ups cost less, so nothing is done at once.
     */
    private int close(int n) {
        if (!c.ready.metric || (c.spans.shared && c.lag.length > 0) || (c.waiting > 0 && cursor.waits())) {
            return n;
        }
        int filled = n;
        boolean moved = !cursor.windowOpen();
        while (moved) {
            moved = false;
            for (int task = 0; task < c.n; task++) {
                if (wanted(task) && cursor.free(task) && harmless(task)) {
                    cursor.take(task);
                    taken[filled++] = task;
                    moved = true;
                }
            }
        }
        return filled;
    }

    private boolean wanted(int task) {
        return only == null || Bits.has(only, task);
    }

    private boolean harmless(int task) {
        return stays(task)
                && c.weight[task] == 0
                && c.spans.openedBy[task].length == 0
                && cursor.risk(task) == 0
                && !mustWait(task)
                && readiesNothing(task)
                && beginsNothing(task)
                && (c.waiting == 0 || fillsNothing(task));
    }

    private boolean stays(int task) {
        return (c.ready.orientation[task] < 0 || c.ready.orientation[task] == cursor.orientation)
                && (c.ready.place[task] < 0 || c.ready.place[task] == cursor.place)
                && (c.ready.kit[task] < 0 || c.ready.kit[task] == cursor.kit);
    }

    /** False where doing the task later could get things ready for a window to come. */
    private boolean readiesNothing(int task) {
        return (c.ready.orientation[task] < 0 || !c.spans.carried(0, cursor.done))
                && (c.ready.place[task] < 0 || !c.spans.carried(1, cursor.done))
                && (c.ready.kit[task] < 0 || !c.spans.carried(2, cursor.done));
    }

    private boolean mustWait(int task) {
        for (int k : c.lagsTo[task]) {
            if (cursor.clocks[k] > 0) {
                return true;
            }
        }
        return false;
    }

    /** False where the task begins a wait that a window to come would have to see the end of. */
    private boolean beginsNothing(int task) {
        for (int k : c.lagsFrom[task]) {
            for (int w = 0; w < c.spans.count; w++) {
                int opens = c.spans.opens[w];
                boolean toCome = opens >= 0 && !Bits.has(cursor.done, opens) && !Bits.has(c.ancestors[opens], task);
                if (toCome && Bits.has(c.spans.allowed[w], c.lagTo[k])) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean fillsNothing(int task) {
        for (int from = Bits.next(lagged, 0); from >= 0; from = Bits.next(lagged, from + 1)) {
            boolean open = from != task && !Bits.has(cursor.done, from);
            if (open && !Bits.has(c.ancestors[from], task)) {
                return false;
            }
        }
        return true;
    }

    /** False where no order closes the windows that are open at the cursor in time. */
    private boolean closable() {
        looks = 0;
        StateCursor from = new StateCursor(c);
        from.set(cursor);
        return closes(from);
    }

    private boolean closes(StateCursor at) {
        if (!at.windowOpen() || ++looks > MOST_LOOKS) {
            return true;
        }
        for (int task = 0; task < c.n; task++) {
            if (at.free(task) && at.allowed(task)) {
                StateCursor next = new StateCursor(c);
                next.set(at);
                if (next.take(task) && closes(next)) {
                    return true;
                }
            }
        }
        return false;
    }
}
