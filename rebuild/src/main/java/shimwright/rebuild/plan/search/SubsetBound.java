package shimwright.rebuild.plan.search;

import java.util.Arrays;
import java.util.function.BooleanSupplier;

/**
 * Set-up time that a state cannot avoid any more for some of the tasks, exactly, where nothing but their order and set-ups
 * count: no windows, no waits, no risks, a case as quick to turn as a light one. What the other tasks need is left out, which costs
 * nothing, for going straight from one to another is never dearer than by way of a third. What is free and ready is done at
 * once, and one on the way to another is done before it; what each state costs is kept in a table.
 */
final class SubsetBound {
    /** Most tasks: their set takes two words. */
    static final int MOST_TASKS = 128;
    /** Bytes of an entry of the table. */
    static final long BYTES = 24;

    /** Entries after which is asked whether to stop. */
    private static final int ASKED = 4096;

    private final CompiledProblem c;
    private final BooleanSupplier stop;
    private final SetUpTimes ready;
    private final int m;
    private final int[] chosen;
    private final long[] before0;
    private final long[] before1;
    private final long[] all;
    /** Tasks that can be done in an orientation, at a place, with a set of tools. */
    private final long[][] turned;

    private final long[][] placed;
    private final long[][] laid;
    private int most;
    private final long[] keys0;
    private final long[] keys1;
    private final int[] stands;
    private final int[] values;
    private final int[] stack;
    private int size;
    private boolean full;

    /**
     * For these tasks.
     *
     * @param slots of the table, a power of two
     * @param stop asked while the table is made; once it says true the table counts as full
     */
    SubsetBound(CompiledProblem c, long[] tasks, int slots, BooleanSupplier stop) {
        this.stop = stop;
        this.c = c;
        this.ready = c.ready;
        boolean plain = c.n <= MOST_TASKS;
        this.m = plain ? c.n : Bits.count(tasks);
        this.chosen = new int[m];
        int filled = 0;
        for (int task = 0; task < c.n; task++) {
            if (plain || Bits.has(tasks, task)) {
                chosen[filled++] = task;
            }
        }
        this.before0 = new long[m];
        this.before1 = new long[m];
        this.all = new long[2];
        this.turned = new long[ready.orientations + 1][2];
        this.placed = new long[ready.places + 1][2];
        this.laid = new long[ready.holds.length][2];
        for (int i = 0; i < m; i++) {
            if (Bits.has(tasks, chosen[i])) {
                add(i, tasks);
            }
        }
        this.most = (int) (slots * 7L / 10);
        this.keys0 = new long[slots];
        this.keys1 = new long[slots];
        this.stands = new int[slots];
        this.values = new int[slots];
        Arrays.fill(values, -1);
        this.stack = new int[m * (m + 1)];
    }

    private void add(int i, long[] tasks) {
        int task = chosen[i];
        Bits.add(all, i);
        for (int j = 0; j < m; j++) {
            if (Bits.has(tasks, chosen[j]) && Bits.has(c.ancestors[task], chosen[j])) {
                before0[i] |= low(j);
                before1[i] |= high(j);
            }
        }
        member(turned, ready.orientation[task], i);
        member(placed, ready.place[task], i);
        member(laid, ready.kit[task], i);
    }

    /** Puts a task into the sets of what it can be done with: one, or all where it does not matter. */
    private static void member(long[][] sets, int which, int i) {
        for (int k = 0; k < sets.length; k++) {
            if (which < 0 || which == k) {
                Bits.add(sets[k], i);
            }
        }
    }

    private static long low(int i) {
        return i < 64 ? 1L << i : 0;
    }

    private static long high(int i) {
        return i < 64 ? 0 : 1L << (i - 64);
    }

    /** Looks from the start on; false where more entries than these would be needed. */
    boolean made(int entries) {
        int room = most;
        most = entries;
        least(new StateCursor(c));
        most = room;
        return !full;
    }

    /** Set-up time of the chosen tasks still to come at least; 0 where the table is full and does not say. */
    long least(StateCursor at) {
        if (c.n <= MOST_TASKS) {
            long second = at.done.length > 1 ? at.done[1] & all[1] : 0;
            return least(at.done[0] & all[0], second, at.orientation, at.place, at.kit, 0);
        }
        long done0 = 0;
        long done1 = 0;
        for (int i = 0; i < m; i++) {
            if (Bits.has(at.done, chosen[i])) {
                done0 |= low(i);
                done1 |= high(i);
            }
        }
        return least(done0, done1, at.orientation, at.place, at.kit, 0);
    }

    private long least(long from0, long from1, int orientation, int at, int kit, int depth) {
        long done0 = from0;
        long done1 = from1;
        boolean moved = true;
        while (moved) {
            moved = false;
            for (int w = 0; w < 2; w++) {
                long here = turned[orientation][w] & placed[at][w] & laid[kit][w];
                for (long left = here & ~(w == 0 ? done0 : done1); left != 0; left &= left - 1) {
                    int i = 64 * w + Long.numberOfTrailingZeros(left);
                    if (free(i, done0, done1)) {
                        done0 |= low(i);
                        done1 |= high(i);
                        moved = true;
                    }
                }
            }
        }
        if (done0 == all[0] && done1 == all[1]) {
            return 0;
        }
        int stand = (orientation * (ready.places + 1) + at) * ready.holds.length + kit;
        int slot = slot(done0, done1, stand);
        if (values[slot] >= 0) {
            return values[slot];
        }
        if (size >= most || (size % ASKED == 0 && stop.getAsBoolean())) {
            full = true;
            return 0;
        }
        size++;
        int count = frontier(done0, done1, orientation, at, kit, depth * m);
        long best = Integer.MAX_VALUE;
        for (int k = depth * m; k < depth * m + count && !full; k++) {
            int i = stack[k];
            int task = chosen[i];
            int o = ready.orientation[task];
            int p = ready.place[task];
            int tools = ready.kit[task];
            long then = least(
                    done0 | low(i),
                    done1 | high(i),
                    o < 0 ? orientation : o,
                    p < 0 ? at : p,
                    tools < 0 ? kit : tools,
                    depth + 1);
            best = Math.min(best, setUp(task, orientation, at, kit) + then);
        }
        if (full) {
            return 0;
        }
        int mine = slot(done0, done1, stand);
        keys0[mine] = done0;
        keys1[mine] = done1;
        stands[mine] = stand;
        values[mine] = (int) best;
        return best;
    }

    private boolean free(int i, long done0, long done1) {
        return (before0[i] & ~done0) == 0 && (before1[i] & ~done1) == 0;
    }

    private long setUp(int task, int orientation, int at, int kit) {
        int o = ready.orientation[task];
        return (o < 0 ? 0 : ready.leastTurn[orientation][o]) + ready.walking(at, task) + ready.tooling(kit, task);
    }

    /** Puts on the stack what may be done next: free, and nothing else that is free on the way to it. */
    private int frontier(long done0, long done1, int orientation, int at, int kit, int from) {
        int count = 0;
        for (int w = 0; w < 2; w++) {
            for (long left = all[w] & ~(w == 0 ? done0 : done1); left != 0; left &= left - 1) {
                int i = 64 * w + Long.numberOfTrailingZeros(left);
                if (free(i, done0, done1)) {
                    stack[from + count++] = i;
                }
            }
        }
        for (int k = count - 1; k >= 0; k--) {
            boolean passed = false;
            for (int other = 0; other < count && !passed; other++) {
                passed = other != k
                        && Sooner.onTheWay(
                                ready,
                                ready.leastTurn,
                                orientation,
                                at,
                                kit,
                                chosen[stack[from + other]],
                                chosen[stack[from + k]]);
            }
            if (passed) {
                count--;
                stack[from + k] = stack[from + count];
            }
        }
        return count;
    }

    private int slot(long done0, long done1, int stand) {
        long hash = (done0 * 0x9E3779B97F4A7C15L ^ done1) * 0xC2B2AE3D27D4EB4FL ^ stand * 0x9E3779B97F4A7C15L;
        hash = (hash ^ hash >>> 29) * 0xC2B2AE3D27D4EB4FL;
        int mask = values.length - 1;
        int slot = (int) (hash ^ hash >>> 32) & mask;
        while (values[slot] >= 0 && (keys0[slot] != done0 || keys1[slot] != done1 || stands[slot] != stand)) {
            slot = (slot + 1) & mask;
        }
        return slot;
    }
}
