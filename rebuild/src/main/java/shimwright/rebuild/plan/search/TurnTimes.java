package shimwright.rebuild.plan.search;

/** The least time to turn the case into an orientation, from one that it can come from. */
final class TurnTimes {
    private TurnTimes() {}

    /**
     * Least time to get into an orientation for a task of the set: from another in which a task stands that can come just
     * before it, or from the one of the start. 0 where nothing of the set stands in it.
     */
    static long least(CompiledProblem c, long[] mask, int orientation) {
        SetUpTimes ready = c.ready;
        long least = CompiledProblem.NEVER;
        for (int j = Bits.next(mask, 0); j >= 0; j = Bits.next(mask, j + 1)) {
            if (ready.orientation[j] != orientation) {
                continue;
            }
            int first = ready.startOrientation;
            if (first < ready.orientations && first != orientation && !afterAnother(c, j)) {
                least = Math.min(least, ready.turn[first][orientation]);
            }
            for (int i = 0; i < c.n; i++) {
                int from = ready.orientation[i];
                if (from >= 0 && from != orientation && justBefore(c, i, j)) {
                    least = Math.min(least, ready.turn[from][orientation]);
                }
            }
        }
        return least == CompiledProblem.NEVER ? 0 : least;
    }

    /** True where some task for which the case stands comes before this one in every order. */
    private static boolean afterAnother(CompiledProblem c, int task) {
        long[] set = c.ancestors[task];
        for (int k = Bits.next(set, 0); k >= 0; k = Bits.next(set, k + 1)) {
            if (c.ready.orientation[k] >= 0) {
                return true;
            }
        }
        return false;
    }

    /** True where, of the tasks for which the case stands, the first can be the last before the second. */
    private static boolean justBefore(CompiledProblem c, int i, int j) {
        if (i == j || Bits.has(c.ancestors[i], j)) {
            return false;
        }
        for (int k = Bits.next(c.descendants[i], 0); k >= 0; k = Bits.next(c.descendants[i], k + 1)) {
            boolean between = Bits.has(c.ancestors[j], k);
            if (between && c.ready.orientation[k] >= 0) {
                return false;
            }
        }
        return true;
    }
}
