package shimwright.rebuild.plan.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Set-up time and risk that a state cannot avoid any more for some of the tasks, as cost, where their order and set-ups count and
 * what is served alone, but no clocks, and a case is as quick to turn as a light one. What the other tasks need is left out,
 * which costs nothing, for going straight from one to another is never dearer than by way of a third. What is free and ready is done at
 * once, and one on the way to another is done before it. Only what may be below a limit is looked at, and what fewer tasks
 * cost at least says where that is not so; what is known of a state is kept in a table.
 */
final class SubsetBound {
    private static final int INDEX = 10;
    /** Most tasks of a problem. */
    static final int MOST_TASKS = (1 << INDEX) - 1;

    private final CompiledProblem c;
    private final SetUpTimes ready;
    private final @Nullable SubsetBound below;
    private final SubsetTable table;
    private final LookLimit effort;
    private final int number;
    private final int words;
    private final long[] all;
    private final long[][] before;
    /** Tasks that can be done in an orientation, at a place, with a set of tools. */
    private final long[][] turned;

    private final long[][] placed;
    private final long[][] laid;
    private final int[][] holds;
    private final long[][] risks;
    /** Windows in which nothing else may be done. */
    private final int[] windows;
    /** Tasks that open one of them. */
    private final long[] opening;

    private final List<Frame> frames = new ArrayList<>();
    private long own = CompiledProblem.NEVER;

    /** What one state at a depth needs. */
    private static final class Frame {
        final long[] done;
        final int[] tasks;
        final long[] costs;
        final long[] lows;
        final int[] taken;
        int count;
        int filled;

        Frame(int words, int n) {
            done = new long[words];
            tasks = new int[n];
            costs = new long[n];
            lows = new long[n];
            taken = new int[n];
        }

        void follow(long[] before, int task) {
            System.arraycopy(before, 0, done, 0, done.length);
            Bits.add(done, task);
        }
    }

    /**
     * For these tasks.
     *
     * @param below of fewer of them; null for none, and then all is looked at whatever the limit
     * @param number by which the table tells it from others
     */
    SubsetBound(
            CompiledProblem c,
            long[] tasks,
            @Nullable SubsetBound below,
            SubsetTable table,
            LookLimit effort,
            int number) {
        this.c = c;
        this.ready = c.ready;
        this.below = below;
        this.table = table;
        this.effort = effort;
        this.number = number;
        this.all = tasks.clone();
        this.words = all.length;
        this.before = new long[c.n][words];
        this.turned = new long[ready.orientations + 1][words];
        this.placed = new long[ready.places + 1][words];
        this.laid = new long[ready.holds.length][words];
        this.holds = new int[c.n][];
        this.risks = new long[c.n][];
        for (int i = Bits.next(all, 0); i >= 0; i = Bits.next(all, i + 1)) {
            for (int w = 0; w < words; w++) {
                before[i][w] = c.ancestors[i][w] & all[w];
            }
            member(turned, ready.orientation[i], i);
            member(placed, ready.place[i], i);
            member(laid, ready.kit[i], i);
            risk(i);
        }
        this.windows = servedAlone();
        this.opening = Bits.empty(c.n);
        for (int w : windows) {
            Bits.add(opening, c.spans.opens[w]);
        }
    }

    /** Puts a task into the sets of what it can be done with: one, or all where it does not matter. */
    private static void member(long[][] sets, int which, int i) {
        for (int k = 0; k < sets.length; k++) {
            if (which < 0 || which == k) {
                Bits.add(sets[k], i);
            }
        }
    }

    private void risk(int i) {
        int count = 0;
        int[] hold = new int[c.riskHold[i].length];
        long[] cost = new long[hold.length];
        for (int k = 0; k < hold.length; k++) {
            if (Bits.has(all, c.riskHold[i][k])) {
                hold[count] = c.riskHold[i][k];
                cost[count++] = c.riskCost[i][k];
            }
        }
        holds[i] = Arrays.copyOf(hold, count);
        risks[i] = Arrays.copyOf(cost, count);
    }

    /** Windows whose ends are both among the tasks and that no other one could be open round, in which more might be done. */
    private int[] servedAlone() {
        WindowTimes spans = c.spans;
        int[] found = new int[spans.count];
        int count = 0;
        for (int w = 0; w < spans.count; w++) {
            boolean plain = spans.alone[w]
                    && spans.opens[w] >= 0
                    && Bits.has(all, spans.opens[w])
                    && Bits.has(all, spans.closes[w]);
            for (int other = 0; other < spans.count && plain; other++) {
                plain = other == w
                        || !spans.alone[other]
                        || (spans.opens[other] >= 0 && !Bits.has(spans.allowed[other], spans.opens[w]));
            }
            if (plain) {
                found[count++] = w;
            }
        }
        return Arrays.copyOf(found, count);
    }

    /**
     * Cost still to come at least: exactly where it is below the limit, and at least the limit where it is not, unless the effort was
     * spent.
     */
    long least(StateCursor at, long limit) {
        return least(at.done, at.orientation, at.place, at.kit, limit);
    }

    private long least(long[] done, int orientation, int place, int kit, long limit) {
        long[] mine = frame(0).done;
        for (int w = 0; w < words; w++) {
            mine[w] = done[w] & all[w];
        }
        return least(0, orientation, place, kit, limit, -1);
    }

    /** From now on looks no more than so often itself, whatever the bounds below look; then the effort counts as spent. */
    void allow(long most) {
        own = most;
    }

    private Frame frame(int depth) {
        if (depth == frames.size()) {
            frames.add(new Frame(words, c.n));
        }
        return frames.get(depth);
    }

    /** Of the state in a frame; what fewer tasks cost at least, or -1 where that is not known yet. */
    private long least(int depth, int orientation, int place, int kit, long limit, long known) {
        Frame f = frame(depth);
        settle(f, orientation, place, kit);
        if (Arrays.equals(f.done, all)) {
            return 0;
        }
        int stand = (orientation * (ready.places + 1) + place) * ready.holds.length + kit;
        long entry = table.get(number, stand, f.done);
        long low = entry < 0 ? 0 : entry >> 1;
        if (entry >= 0 && ((entry & 1) != 0 || low >= limit)) {
            return low;
        }
        if (below != null) {
            low = Math.max(low, known >= 0 ? known : below.least(f.done, orientation, place, kit, limit));
        }
        if (low >= limit || !effort.take()) {
            return low;
        }
        if (--own < 0) {
            effort.spend();
            return low;
        }
        long best = Math.max(low, best(depth, orientation, place, kit, limit));
        boolean exact = (below == null || best < limit) && !effort.spent();
        table.put(number, stand, f.done, best, exact);
        return best;
    }

    private long best(int depth, int orientation, int place, int kit, long limit) {
        Frame f = frame(depth);
        frontier(f, orientation, place, kit);
        long[] order = ordered(f, orientation, place, kit, limit);
        long best = CompiledProblem.NEVER;
        for (long next : order) {
            long wanted = below == null ? CompiledProblem.NEVER : Math.min(limit, best);
            if (next >>> INDEX >= wanted) {
                return Math.min(best, next >>> INDEX);
            }
            int k = (int) next & MOST_TASKS;
            int task = f.tasks[k];
            frame(depth + 1).follow(f.done, task);
            long then = least(
                    depth + 1,
                    turnedBy(task, orientation),
                    placedBy(task, place),
                    laidBy(task, kit),
                    below == null ? wanted : wanted - f.costs[k],
                    f.lows[k]);
            best = Math.min(best, f.costs[k] + then);
        }
        return best;
    }

    /** What may be done next, the most promising first: what it costs at least in all, and its place in the frame. */
    private long[] ordered(Frame f, int orientation, int place, int kit, long limit) {
        long[] order = new long[f.count];
        long[] then = new long[words];
        for (int k = 0; k < f.count; k++) {
            int task = f.tasks[k];
            f.costs[k] = cost(f, task, orientation, place, kit);
            f.lows[k] = -1;
            if (below != null && f.costs[k] < limit) {
                System.arraycopy(f.done, 0, then, 0, words);
                Bits.add(then, task);
                f.lows[k] = below.least(
                        then,
                        turnedBy(task, orientation),
                        placedBy(task, place),
                        laidBy(task, kit),
                        limit - f.costs[k]);
            }
            order[k] = ((f.costs[k] + Math.max(0, f.lows[k])) << INDEX) | k;
        }
        Arrays.sort(order);
        return order;
    }

    private int turnedBy(int task, int orientation) {
        return ready.orientation[task] < 0 ? orientation : ready.orientation[task];
    }

    private int placedBy(int task, int place) {
        return ready.place[task] < 0 ? place : ready.place[task];
    }

    private int laidBy(int task, int kit) {
        return ready.kit[task] < 0 ? kit : ready.kit[task];
    }

    private long cost(Frame f, int task, int orientation, int place, int kit) {
        int to = ready.orientation[task];
        long setUp =
                (to < 0 ? 0 : ready.leastTurn[orientation][to]) + ready.walking(place, task) + ready.tooling(kit, task);
        return CompiledProblem.UNITS * setUp + risk(f, task);
    }

    private long risk(Frame f, int task) {
        long sum = 0;
        for (int k = 0; k < holds[task].length; k++) {
            sum += Bits.has(f.done, holds[task][k]) ? 0 : risks[task][k];
        }
        return sum;
    }

    private boolean free(Frame f, int task) {
        return Bits.within(before[task], f.done);
    }

    /** What may be done while a window that is served alone is open, one at a time; all where none is. */
    private long[] permitted(Frame f) {
        for (int w : windows) {
            if (Bits.has(f.done, c.spans.opens[w]) && !Bits.has(f.done, c.spans.closes[w])) {
                return c.spans.allowed[w];
            }
        }
        return all;
    }

    /** True where doing a free task sooner than planned can do no harm in itself. */
    private boolean harmless(Frame f, int task) {
        return !Bits.has(opening, task) && risk(f, task) == 0;
    }

    /** Does at once what no order is worse for. */
    private void settle(Frame f, int orientation, int place, int kit) {
        f.filled = 0;
        boolean moved = true;
        while (moved) {
            moved = false;
            long[] permitted = permitted(f);
            for (int w = 0; w < words; w++) {
                long here = turned[orientation][w] & placed[place][w] & laid[kit][w] & permitted[w];
                for (long left = here & ~f.done[w]; left != 0; left &= left - 1) {
                    int task = 64 * w + Long.numberOfTrailingZeros(left);
                    if (free(f, task) && harmless(f, task)) {
                        Bits.add(f.done, task);
                        f.taken[f.filled++] = task;
                        moved = true;
                    }
                }
            }
        }
    }

    /** Puts into the frame what may be done next: free, and nothing else that is free on the way to it. */
    private void frontier(Frame f, int orientation, int place, int kit) {
        int count = 0;
        long[] permitted = permitted(f);
        for (int w = 0; w < words; w++) {
            for (long left = all[w] & permitted[w] & ~f.done[w]; left != 0; left &= left - 1) {
                int task = 64 * w + Long.numberOfTrailingZeros(left);
                if (free(f, task)) {
                    f.tasks[count++] = task;
                }
            }
        }
        for (int k = count - 1; k >= 0; k--) {
            boolean passed = false;
            for (int other = 0; other < count && !passed; other++) {
                passed = other != k
                        && Sooner.onTheWay(ready, ready.leastTurn, orientation, place, kit, f.tasks[other], f.tasks[k])
                        && harmless(f, f.tasks[other]);
            }
            if (passed) {
                count--;
                f.tasks[k] = f.tasks[count];
            }
        }
        f.count = count;
    }

    /** An order of the tasks that costs so much from the start, where that is exact; empty where the effort was spent before. */
    int[] order(long value) {
        StateCursor start = new StateCursor(c);
        int[] order = new int[c.n];
        int filled = 0;
        int orientation = start.orientation;
        int place = start.place;
        int kit = start.kit;
        long left = value;
        Frame f = new Frame(words, c.n);
        while (true) {
            settle(f, orientation, place, kit);
            System.arraycopy(f.taken, 0, order, filled, f.filled);
            filled += f.filled;
            if (Arrays.equals(f.done, all)) {
                return Arrays.copyOf(order, filled);
            }
            frontier(f, orientation, place, kit);
            int next = -1;
            for (int k = 0; k < f.count && next < 0; k++) {
                int task = f.tasks[k];
                long cost = cost(f, task, orientation, place, kit);
                if (cost <= left && reaches(f, task, orientation, place, kit, left - cost)) {
                    next = task;
                    left -= cost;
                }
            }
            if (next < 0) {
                return new int[0];
            }
            order[filled++] = next;
            Bits.add(f.done, next);
            orientation = turnedBy(next, orientation);
            place = placedBy(next, place);
            kit = laidBy(next, kit);
        }
    }

    private boolean reaches(Frame f, int task, int orientation, int place, int kit, long left) {
        long[] then = f.done.clone();
        Bits.add(then, task);
        long least = least(then, turnedBy(task, orientation), placedBy(task, place), laidBy(task, kit), left + 1);
        return least <= left && !effort.spent();
    }
}
