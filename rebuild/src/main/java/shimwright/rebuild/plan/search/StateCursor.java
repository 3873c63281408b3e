package shimwright.rebuild.plan.search;

import java.util.Arrays;

/** A state that is moved forward task by task. */
final class StateCursor {
    /** In place of the time left of a window: it is not open. */
    static final long SHUT = -1;
    /** It is open and can no longer be closed in time. */
    private static final long LATE = -2;

    private final CompiledProblem c;
    private final int lags;
    long[] done;
    int count;
    int orientation;
    int place;
    int kit;
    int weight;
    long cost;
    final long[] clocks;
    /** Time since the start, of this cursor only. */
    long elapsed;

    long waited;
    long turned;
    long walked;
    long laid;
    long risked;

    StateCursor(CompiledProblem c) {
        this.c = c;
        this.lags = c.lag.length;
        this.done = Bits.empty(c.n);
        this.clocks = new long[lags + c.spans.count];
        start();
    }

    /** Back to the start. */
    void start() {
        Arrays.fill(done, 0);
        count = 0;
        orientation = c.ready.startOrientation;
        place = c.ready.startPlace;
        kit = c.ready.startKit;
        weight = c.problem.start().weight();
        cost = 0;
        elapsed = 0;
        waited = 0;
        turned = 0;
        walked = 0;
        laid = 0;
        risked = 0;
        for (int k = 0; k < lags; k++) {
            clocks[k] = c.lagFrom[k] < 0 ? c.lag[k] : 0;
        }
        for (int w = 0; w < c.spans.count; w++) {
            long left = c.spans.longest[w] - c.spans.gone[w];
            clocks[lags + w] = c.spans.opens[w] >= 0 ? SHUT : left < 0 ? LATE : left;
        }
    }

    void set(Node node) {
        System.arraycopy(node.done, 0, done, 0, done.length);
        count = node.count;
        orientation = node.orientation;
        place = node.place;
        kit = node.kit;
        weight = node.weight;
        cost = node.cost;
        waited = node.waited;
        System.arraycopy(node.clocks, 0, clocks, 0, clocks.length);
    }

    void set(StateCursor other) {
        System.arraycopy(other.done, 0, done, 0, done.length);
        count = other.count;
        orientation = other.orientation;
        place = other.place;
        kit = other.kit;
        weight = other.weight;
        cost = other.cost;
        waited = other.waited;
        System.arraycopy(other.clocks, 0, clocks, 0, clocks.length);
    }

    boolean free(int task) {
        return c.free(task, done);
    }

    boolean finished() {
        return count == c.n;
    }

    /** True while something is waited for. */
    boolean waits() {
        for (int k = 0; k < lags; k++) {
            if (clocks[k] > 0) {
                return true;
            }
        }
        return false;
    }

    /** True while a window is open. */
    boolean windowOpen() {
        for (int w = lags; w < clocks.length; w++) {
            if (clocks[w] != SHUT) {
                return true;
            }
        }
        return false;
    }

    /** False where a window that bears nothing else is open and the task leads to no such window's closing. */
    boolean allowed(int task) {
        boolean bound = false;
        for (int w = 0; w < c.spans.count; w++) {
            if (clocks[lags + w] != SHUT && c.spans.alone[w]) {
                if (Bits.has(c.spans.allowed[w], task)) {
                    return true;
                }
                bound = true;
            }
        }
        return !bound;
    }

    /** Least time to spare of the open windows that the task leads to closing. */
    long spare(int task) {
        long least = CompiledProblem.NEVER;
        for (int w = 0; w < c.spans.count; w++) {
            if (clocks[lags + w] != SHUT && Bits.has(c.spans.allowed[w], task)) {
                least = Math.min(least, clocks[lags + w] - leftInside(w));
            }
        }
        return least;
    }

    /** Set-up time before the task. */
    long setUp(int task) {
        return c.ready.turning(orientation, task, weight > 0)
                + c.ready.walking(place, task)
                + c.ready.tooling(kit, task);
    }

    /** Risk taken by doing the task now, as cost. */
    long risk(int task) {
        long sum = 0;
        int[] holds = c.riskHold[task];
        for (int k = 0; k < holds.length; k++) {
            if (!Bits.has(done, holds[k])) {
                sum += c.riskCost[task][k];
            }
        }
        return sum;
    }

    private long waitFor(int task) {
        long wait = 0;
        for (int k : c.lagsTo[task]) {
            wait = Math.max(wait, clocks[k]);
        }
        for (int w : c.spans.openedBy[task]) {
            if (!Bits.has(done, c.spans.closes[w])) {
                for (int k = 0; k < lags; k++) {
                    int to = c.lagTo[k];
                    boolean inside = Bits.has(c.spans.allowed[w], to) && !Bits.has(done, to);
                    wait = inside ? Math.max(wait, clocks[k]) : wait;
                }
            }
        }
        return wait;
    }

    /** Does a task that is free; false, and the cursor is worth nothing any more, where a window breaks. */
    boolean take(int task) {
        long turning = c.ready.turning(orientation, task, weight > 0);
        long walking = c.ready.walking(place, task);
        long tooling = c.ready.tooling(kit, task);
        long setUp = turning + walking + tooling;
        long wait = Math.max(0, waitFor(task) - setUp);
        long risk = c.riskHold[task].length == 0 ? 0 : risk(task);
        long dt = setUp + wait + c.duration[task];
        turned += turning;
        walked += walking;
        laid += tooling;
        waited += wait;
        risked += risk;
        elapsed += dt;
        cost += CompiledProblem.UNITS * setUp + c.waiting * wait + risk;
        Bits.add(done, task);
        count++;
        orientation = c.ready.orientation[task] < 0 ? orientation : c.ready.orientation[task];
        place = c.ready.place[task] < 0 ? place : c.ready.place[task];
        kit = c.ready.kit[task] < 0 ? kit : c.ready.kit[task];
        weight += c.weight[task];
        return clocks.length == 0 || tick(task, dt);
    }

    private boolean tick(int task, long dt) {
        for (int k = 0; k < lags; k++) {
            clocks[k] = Math.max(0, clocks[k] - dt);
        }
        for (int k : c.lagsFrom[task]) {
            clocks[k] = Bits.has(done, c.lagTo[k]) ? 0 : c.lag[k];
        }
        boolean kept = true;
        for (int w = 0; w < c.spans.count; w++) {
            int at = lags + w;
            if (clocks[at] != SHUT) {
                long left = clocks[at] == LATE ? LATE : Math.max(LATE, clocks[at] - dt);
                boolean closed = c.spans.closes[w] == task;
                kept &= closed ? left >= 0 : left >= leftInside(w);
                clocks[at] = closed ? SHUT : left < 0 ? LATE : left;
            }
        }
        for (int w : c.spans.openedBy[task]) {
            if (!Bits.has(done, c.spans.closes[w])) {
                clocks[lags + w] = c.spans.longest[w];
                kept &= c.spans.longest[w] >= leftInside(w);
            }
        }
        return kept;
    }

    /** Working time that must still pass before a window can be closed. */
    private long leftInside(int window) {
        long[] forced = c.spans.forced[window];
        long sum = 0;
        for (int i = Bits.next(forced, 0); i >= 0; i = Bits.next(forced, i + 1)) {
            if (!Bits.has(done, i)) {
                sum += c.duration[i];
            }
        }
        return sum;
    }
}
