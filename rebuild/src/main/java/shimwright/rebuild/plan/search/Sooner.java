package shimwright.rebuild.plan.search;

/**
 * What no order is worse for doing sooner: a task that changes nothing that later set-ups depend on, takes no risk and could not fill
 * a wait. Where it needs no set-up it is done at once; where it lies on the way to another, which is as ready after both as
 * after itself alone, that other is not done before it. While a wait that costs something runs, set-ups cost less, so
 * nothing is done sooner.
 */
final class Sooner {
    private final CompiledProblem c;
    private final long[] lagged;
    private final int[] harmless;

    Sooner(CompiledProblem c) {
        this.c = c;
        this.harmless = new int[c.n];
        this.lagged = Bits.empty(c.n);
        for (int from : c.lagFrom) {
            if (from >= 0) {
                Bits.add(lagged, from);
            }
        }
    }

    /** False where nothing may be done sooner as things stand. */
    boolean counts(StateCursor at) {
        return c.ready.metric
                && !(c.spans.shared && c.lag.length > 0)
                && !(c.waiting > 0 && at.waits())
                && !at.windowOpen();
    }

    /** True where a free task is done at once. */
    boolean atOnce(StateCursor at, int task) {
        return stays(at, task) && harmless(at, task);
    }

    /**
     * Leaves out of the free tasks those on the way to which another lies.
     *
     * @param free what is free; those that are left stand in front afterwards, in the same order
     * @return how many are left
     */
    int leaveOut(StateCursor at, int[] free, int count) {
        if (!counts(at)) {
            return count;
        }
        int found = 0;
        for (int k = 0; k < count; k++) {
            if (harmless(at, free[k])) {
                harmless[found++] = free[k];
            }
        }
        int left = 0;
        for (int k = 0; k < count; k++) {
            int task = free[k];
            if (passed(at, task, found)) {
                found = without(task, found);
            } else {
                free[left++] = task;
            }
        }
        return left;
    }

    private boolean passed(StateCursor at, int task, int found) {
        long[][] turn = at.weight > 0 ? c.ready.turnHeavy : c.ready.turn;
        for (int k = 0; k < found; k++) {
            if (harmless[k] != task && onTheWay(c.ready, turn, at.orientation, at.place, at.kit, harmless[k], task)) {
                return true;
            }
        }
        return false;
    }

    /** What is left out leaves out no other: of those that lie on the way to each other one is left. */
    private int without(int task, int found) {
        int left = 0;
        for (int k = 0; k < found; k++) {
            if (harmless[k] != task) {
                harmless[left++] = harmless[k];
            }
        }
        return left;
    }

    /**
     * True where doing the first before the second takes no more set-up than the second alone and leaves things as they would
     * stand.
     */
    static boolean onTheWay(
            SetUpTimes ready, long[][] turn, int orientation, int place, int kit, int first, int second) {
        int o = ready.orientation[first];
        int to = ready.orientation[second];
        if (o >= 0 && o != orientation && (to < 0 || turn[orientation][o] + turn[o][to] > turn[orientation][to])) {
            return false;
        }
        int p = ready.place[first];
        if (p >= 0 && p != place && p != ready.place[second]) {
            return false;
        }
        int laid = ready.kit[first];
        int wanted = ready.kit[second];
        return laid < 0
                || laid == kit
                || (wanted >= 0 && ready.change[kit][laid] + ready.change[laid][wanted] <= ready.change[kit][wanted]);
    }

    private boolean harmless(StateCursor at, int task) {
        return c.weight[task] == 0
                && c.spans.openedBy[task].length == 0
                && at.risk(task) == 0
                && !mustWait(at, task)
                && readiesNothing(at, task)
                && beginsNothing(at, task)
                && (c.waiting == 0 || fillsNothing(at, task));
    }

    private boolean stays(StateCursor at, int task) {
        return (c.ready.orientation[task] < 0 || c.ready.orientation[task] == at.orientation)
                && (c.ready.place[task] < 0 || c.ready.place[task] == at.place)
                && (c.ready.kit[task] < 0 || c.ready.kit[task] == at.kit);
    }

    /** False where doing the task later could get things ready for a window to come. */
    private boolean readiesNothing(StateCursor at, int task) {
        return (c.ready.orientation[task] < 0 || !c.spans.carried(0, at.done))
                && (c.ready.place[task] < 0 || !c.spans.carried(1, at.done))
                && (c.ready.kit[task] < 0 || !c.spans.carried(2, at.done));
    }

    private boolean mustWait(StateCursor at, int task) {
        for (int k : c.lagsTo[task]) {
            if (at.clocks[k] > 0) {
                return true;
            }
        }
        return false;
    }

    /** False where the task begins a wait that a window to come would have to see the end of. */
    private boolean beginsNothing(StateCursor at, int task) {
        for (int k : c.lagsFrom[task]) {
            for (int w = 0; w < c.spans.count; w++) {
                int opens = c.spans.opens[w];
                boolean toCome = opens >= 0 && !Bits.has(at.done, opens) && !Bits.has(c.ancestors[opens], task);
                if (toCome && Bits.has(c.spans.allowed[w], c.lagTo[k])) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean fillsNothing(StateCursor at, int task) {
        for (int from = Bits.next(lagged, 0); from >= 0; from = Bits.next(lagged, from + 1)) {
            boolean open = from != task && !Bits.has(at.done, from);
            if (open && !Bits.has(c.ancestors[from], task)) {
                return false;
            }
        }
        return true;
    }
}
