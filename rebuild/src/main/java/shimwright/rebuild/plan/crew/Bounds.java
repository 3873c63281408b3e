package shimwright.rebuild.plan.crew;

/** Times that no timetable undercuts, before any search. */
final class Bounds {
    private Bounds() {}

    /**
     * The largest of: the longest chain of lags; for every resource and every head h and tail q, the work of the activities that
     * start no sooner than h and have q or more to come after them, shared out over the capacity, between h and q.
     *
     * @param head soonest starts by lags alone
     * @param tail least time from an activity's end to the end of everything
     */
    static int least(IndexedProject model, int[] head, int[] tail) {
        long bound = head[model.n];
        for (int r = 0; r < model.capacity.length; r++) {
            for (int from = 0; from < model.n; from++) {
                for (int to = 0; model.need[r][from] > 0 && to < model.n; to++) {
                    if (model.need[r][to] > 0) {
                        bound = Math.max(bound, shared(model, r, head, tail, head[from], tail[to]));
                    }
                }
            }
        }
        return (int) bound;
    }

    private static long shared(IndexedProject model, int r, int[] head, int[] tail, int h, int q) {
        long work = 0;
        for (int i = 0; i < model.n; i++) {
            work += head[i] >= h && tail[i] >= q ? (long) model.need[r][i] * model.duration[i] : 0;
        }
        return work == 0 ? 0 : h + (work + model.capacity[r] - 1) / model.capacity[r] + q;
    }
}
