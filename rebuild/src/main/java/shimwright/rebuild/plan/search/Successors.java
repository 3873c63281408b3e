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
    private final int[] free;
    private final Sooner sooner;
    /** The only tasks to be done; null for all. */
    private long @Nullable [] only;

    private long wanted = CompiledProblem.NEVER;
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
        this.free = new int[c.n];
        this.sooner = new Sooner(c);
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

    /** From now on with these bounds as well. */
    void sharpen(SubsetBounds bounds) {
        bound.sharpen(bounds);
    }

    /** From now on states are wanted below this cost; how much more others cost at least is not looked for. */
    void wanted(long cost) {
        wanted = cost;
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
        int count = 0;
        for (int task = 0; task < c.n; task++) {
            if (wanted(task) && base.free(task) && base.allowed(task)) {
                free[count++] = task;
            }
        }
        int left = sooner.leaveOut(base, free, count);
        for (int k = 0; k < left; k++) {
            Node next = after(node, trail, free[k]);
            if (next != null) {
                grown.add(next);
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
        next.bound = Math.max(least, next.cost + bound.least(cursor, wanted - next.cost));
        next.number = made;
        return next;
    }

    /** Does at once what no order is worse for. */
    private int close(int n) {
        int filled = n;
        boolean moved = sooner.counts(cursor);
        while (moved) {
            moved = false;
            for (int task = 0; task < c.n; task++) {
                if (wanted(task) && cursor.free(task) && sooner.atOnce(cursor, task)) {
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
