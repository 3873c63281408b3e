package shimwright.rebuild.plan.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** What can follow what at once, and at what cost, where all cost lies between neighbours. */
final class Arcs {
    private Arcs() {}

    /** Set-up times from a task, or the start as the last row, to a task, or the end as the last column, which takes none. */
    static long[][] apart(CompiledProblem c) {
        long[][] apart = new long[c.n + 1][c.n + 1];
        StateCursor state = new StateCursor(c);
        for (int j = 0; j < c.n; j++) {
            apart[c.n][j] = state.setUp(j);
            state.orientation = c.ready.orientation[j] < 0 ? state.orientation : c.ready.orientation[j];
            state.place = c.ready.place[j] < 0 ? state.place : c.ready.place[j];
            state.kit = c.ready.kit[j] < 0 ? state.kit : c.ready.kit[j];
            for (int k = 0; k < c.n; k++) {
                apart[j][k] = state.setUp(k);
            }
            state.start();
        }
        return apart;
    }

    /** Of a task: what must come after it with nothing that must lie between. */
    static int[][] next(CompiledProblem c) {
        int[][] next = new int[c.n][];
        for (int i = 0; i < c.n; i++) {
            int before = i;
            next[i] = Arrays.stream(c.after[i])
                    .filter(after -> Arrays.stream(c.after[before]).noneMatch(by -> Bits.has(c.ancestors[after], by)))
                    .toArray();
        }
        return next;
    }

    /** Of a task, or the start as the last one: so many of the nearest that may follow at once, the end among them. */
    static int[][] nearest(CompiledProblem c, long[][] apart, int most) {
        int[][] nearest = new int[c.n + 1][];
        for (int i = 0; i <= c.n; i++) {
            long[] row = apart[i];
            List<Integer> may = new ArrayList<>();
            for (int j = 0; j <= c.n; j++) {
                if (follows(c, i, j)) {
                    may.add(j);
                }
            }
            may.sort(Comparator.comparingLong(j -> row[j]));
            nearest[i] = may.stream().limit(most).mapToInt(Integer::intValue).toArray();
        }
        return nearest;
    }

    private static boolean follows(CompiledProblem c, int i, int j) {
        if (i == c.n) {
            return j < c.n && Bits.count(c.ancestors[j]) == 0;
        }
        if (j == c.n) {
            return Bits.count(c.descendants[i]) == 0;
        }
        return i != j && !Bits.has(c.ancestors[i], j) && !Bits.meets(c.descendants[i], c.ancestors[j]);
    }
}
