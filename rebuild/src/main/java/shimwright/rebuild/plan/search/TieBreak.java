package shimwright.rebuild.plan.search;

/** Among orders that cost the same, one that keeps nearer to the order in which the tasks were written. */
final class TieBreak {
    private static final int MOST = 150;

    private TieBreak() {}

    /** The order with every task brought forward that was written earlier and costs nothing to bring forward. */
    static int[] of(CompiledProblem c, int[] order) {
        int[] tidy = order.clone();
        if (order.length > MOST) {
            return tidy;
        }
        long cost = Evaluation.counted(c, tidy).orElse(CompiledProblem.NEVER);
        long[] members = Bits.empty(c.n);
        for (int task : order) {
            Bits.add(members, task);
        }
        StateCursor before = new StateCursor(c);
        StateCursor trial = new StateCursor(c);
        for (int at = 0; at < tidy.length; at++) {
            for (int task = 0; task < tidy[at]; task++) {
                boolean may = Bits.has(members, task) && before.free(task) && before.allowed(task);
                if (may && kept(trial, before, tidy, at, task, cost)) {
                    forward(tidy, at, task);
                }
            }
            before.take(tidy[at]);
        }
        return tidy;
    }

    private static boolean kept(StateCursor trial, StateCursor before, int[] order, int at, int first, long cost) {
        trial.set(before);
        if (!trial.take(first)) {
            return false;
        }
        for (int k = at; k < order.length; k++) {
            int task = order[k];
            if (task != first && (!trial.allowed(task) || !trial.take(task) || trial.cost > cost)) {
                return false;
            }
        }
        return trial.cost <= cost;
    }

    private static void forward(int[] order, int at, int task) {
        int from = at;
        while (order[from] != task) {
            from++;
        }
        System.arraycopy(order, at, order, at + 1, from - at);
        order[at] = task;
    }
}
