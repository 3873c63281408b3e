package shimwright.rebuild.plan.search;

import java.util.Arrays;

/**
 * Set-up time still to come at least, by an assignment: every task left follows the present state or another task left, no
 * two the same one, and one has nothing after it. What follows what is priced by the set-ups that both settle; what the order
 * of tasks rules out is left out. Circles are not ruled out, so it never overrates. The least assignment is found by shortest
 * augmenting paths; for a state that follows the one at hand only what has changed is assigned anew.
 */
final class Assignment {
    private final CompiledProblem c;
    /** Number of tasks; as a row the present state, as a column the end. */
    private final int n;
    /** Of a task or the present state and a task or the end: set-up time, where the one can come next after the other. */
    private final long[][] price;
    /** Of a task or the present state: what can come next after it. */
    private final int[][] follow;

    private final Solution base;
    private final Solution trial;
    private final boolean[] left;
    private final long[] distance;
    private final int[] reachedFrom;
    private final int[] reached;

    /** Prices of rows and columns whose sum no arc exceeds, and who is assigned to whom; -1 for nobody. */
    private static final class Solution {
        final long[] row;
        final long[] column;
        final int[] columnOf;
        final int[] rowOf;

        Solution(int size) {
            row = new long[size];
            column = new long[size];
            columnOf = new int[size];
            rowOf = new int[size];
            Arrays.fill(columnOf, -1);
            Arrays.fill(rowOf, -1);
        }

        void set(Solution other) {
            System.arraycopy(other.row, 0, row, 0, row.length);
            System.arraycopy(other.column, 0, column, 0, row.length);
            System.arraycopy(other.columnOf, 0, columnOf, 0, row.length);
            System.arraycopy(other.rowOf, 0, rowOf, 0, row.length);
        }

        void assign(int from, int to) {
            columnOf[from] = to;
            rowOf[to] = from;
        }

        void free(int from) {
            if (columnOf[from] >= 0) {
                rowOf[columnOf[from]] = -1;
                columnOf[from] = -1;
            }
        }
    }

    Assignment(CompiledProblem c) {
        this.c = c;
        this.n = c.n;
        this.price = new long[n + 1][n + 1];
        this.follow = new int[n + 1][];
        this.base = new Solution(n + 1);
        this.trial = new Solution(n + 1);
        this.left = new boolean[n + 1];
        this.distance = new long[n + 1];
        this.reachedFrom = new int[n + 1];
        this.reached = new int[n + 1];
        Arrays.fill(distance, CompiledProblem.NEVER);
        long[][] turn = c.ready.turn;
        for (int i = 0; i < n; i++) {
            int[] next = new int[n + 1];
            int count = 0;
            for (int j = 0; j < n; j++) {
                if (mayFollow(i, j)) {
                    next[count++] = j;
                    price[i][j] = apart(turn, i, j);
                }
            }
            if (Bits.count(c.descendants[i]) == 0) {
                next[count++] = n;
            }
            follow[i] = Arrays.copyOf(next, count);
        }
    }

    private boolean mayFollow(int i, int j) {
        if (i == j || Bits.has(c.ancestors[i], j)) {
            return false;
        }
        for (int w = 0; w < c.all.length; w++) {
            if ((c.descendants[i][w] & c.ancestors[j][w]) != 0) {
                return false;
            }
        }
        return true;
    }

    private long apart(long[][] turn, int i, int j) {
        SetUpTimes ready = c.ready;
        int from = ready.orientation[i];
        int to = ready.orientation[j];
        return (from < 0 || to < 0 ? 0 : turn[from][to])
                + (ready.place[i] < 0 ? 0 : ready.walking(ready.place[i], j))
                + (ready.kit[i] < 0 ? 0 : ready.tooling(ready.kit[i], j));
    }

    /** Bound for a state, from which states that follow it are then bounded by {@link #after}; NEVER where none ends. */
    long at(StateCursor at) {
        look(at);
        drop(base, at.done);
        base.free(n);
        boolean whole = true;
        for (int i = 0; i <= n && whole; i++) {
            whole = !left[i] || first(base, i);
        }
        return whole ? rest(base) : CompiledProblem.NEVER;
    }

    /** Bound for a state that follows the one bounded before. */
    long after(StateCursor at) {
        look(at);
        trial.set(base);
        drop(trial, at.done);
        return first(trial, n) ? rest(trial) : CompiledProblem.NEVER;
    }

    /** Finds what is left and what can come next. */
    private void look(StateCursor at) {
        int[] next = new int[n + 1];
        int count = 0;
        boolean none = true;
        for (int j = 0; j < n; j++) {
            left[j] = !Bits.has(at.done, j);
            none &= !left[j];
            if (left[j] && Bits.within(c.ancestors[j], at.done)) {
                next[count++] = j;
                price[n][j] = at.setUp(j);
            }
        }
        left[n] = true;
        if (none) {
            next[count++] = n;
        }
        follow[n] = Arrays.copyOf(next, count);
    }

    /** Takes tasks that are done out of the assignment. */
    private void drop(Solution s, long[] done) {
        for (int w = 0; w < done.length; w++) {
            long word = done[w];
            while (word != 0) {
                int j = (w << 6) + Long.numberOfTrailingZeros(word);
                word &= word - 1;
                s.free(j);
                if (s.rowOf[j] >= 0) {
                    s.free(s.rowOf[j]);
                }
            }
        }
    }

    /** Prices a row as dear as its cheapest arc allows and assigns it to such a column where one is free. */
    private boolean first(Solution s, int row) {
        long[] arcs = price[row];
        long least = CompiledProblem.NEVER;
        for (int j : follow[row]) {
            least = left[j] ? Math.min(least, arcs[j] - s.column[j]) : least;
        }
        s.row[row] = least;
        int kept = s.columnOf[row];
        if (kept >= 0 && arcs[kept] - s.column[kept] == least) {
            return true;
        }
        s.free(row);
        for (int j : follow[row]) {
            if (left[j] && s.rowOf[j] < 0 && arcs[j] - s.column[j] == least) {
                s.assign(row, j);
                return true;
            }
        }
        return least < CompiledProblem.NEVER;
    }

    private long rest(Solution s) {
        long sum = 0;
        for (int i = 0; i <= n; i++) {
            if (left[i] && s.columnOf[i] < 0 && !augment(s, i)) {
                return CompiledProblem.NEVER;
            }
        }
        for (int i = 0; i <= n; i++) {
            sum += left[i] ? s.row[i] + s.column[i] : 0;
        }
        return sum;
    }

    /** Assigns one more row by the shortest path of changes; false where there is none. */
    private boolean augment(Solution s, int row) {
        int count = 0;
        int scanned = 0;
        int at = row;
        int end = -1;
        long far = 0;
        while (end < 0) {
            long before = far - s.row[at];
            for (int j : follow[at]) {
                if (left[j]) {
                    long d = before + price[at][j] - s.column[j];
                    if (d < distance[j]) {
                        if (distance[j] == CompiledProblem.NEVER) {
                            reached[count++] = j;
                        }
                        distance[j] = d;
                        reachedFrom[j] = at;
                    }
                }
            }
            if (scanned == count) {
                clear(count);
                return false;
            }
            int best = scanned;
            for (int k = scanned + 1; k < count; k++) {
                long d = distance[reached[k]] - distance[reached[best]];
                best = d < 0 || (d == 0 && s.rowOf[reached[k]] < 0) ? k : best;
            }
            int j = reached[best];
            reached[best] = reached[scanned];
            reached[scanned++] = j;
            far = distance[j];
            at = s.rowOf[j];
            end = at < 0 ? j : -1;
        }
        s.row[row] += far;
        for (int k = 0; k < scanned - 1; k++) {
            long change = far - distance[reached[k]];
            s.row[s.rowOf[reached[k]]] += change;
            s.column[reached[k]] -= change;
        }
        clear(count);
        for (int j = end; j >= 0; ) {
            int from = reachedFrom[j];
            int then = from == row ? -1 : s.columnOf[from];
            s.assign(from, j);
            j = then;
        }
        return true;
    }

    private void clear(int count) {
        for (int k = 0; k < count; k++) {
            distance[reached[k]] = CompiledProblem.NEVER;
        }
    }
}
