package shimwright.rebuild.plan.search;

import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import java.util.function.BooleanSupplier;

/**
 * A better order near a given one where all cost lies between neighbours: nothing runs, nothing is at risk, and each task leaves the
 * case, the person and the tools as it needs them. Two stretches that lie side by side change places where that costs less; what that
 * costs is the sum of three differences, and what each task must come before is looked up as a stretch grows, so that no exchange is
 * followed through the order (path-preserving exchange of three arcs with labels and a stack of tasks to look at: L. M. Gambardella,
 * M. Dorigo, INFORMS Journal on Computing 12, 2000). Then three stretches change places by chance (always the same chance), what lies
 * round them is bettered again, and the order is kept where it is not dearer, and where it is, the less likely the more.
 */
final class ArcExchange {
    /** Of a task: so many of the nearest that may follow it are tried. */
    private static final int NEAREST = 12;
    /** Exchanges looked at for a task that may be taken. */
    private static final int LOOKS = 200;
    /** Looks in one go, by pair that may stand either way; so many in vain after which they are fewer, and what part then. */
    private static final long AT_ONCE = 40_000;

    private static final long PATIENCE = 6 * AT_ONCE;
    private static final int PARTS = 4;
    /** Longest stretch that changes places by chance, and tries to find three that may. */
    private static final int LONGEST = 8;

    private static final int TRIES = 2000;
    /** Tries after which two are enough. */
    private static final int FEW_TRIES = 10;
    /** Rounds after which it is asked whether to stop. */
    private static final int ASKED = 64;
    /** Of the mean cost between neighbours: how much dearer an order gone on from may be at first, and twice that by turns. */
    private static final double WARM = 1;
    /** Looks by such pair from warm to cold at first; begun anew from the best, every second time twice as long, so many times. */
    private static final long SHORT_CYCLE = 2_500;

    private static final int DOUBLED = 6;

    private final CompiledProblem c;
    private final int n;
    /** From a task, or the start as the last row, to a task, or the end as the last column. */
    private final long[][] apart;

    private final int[][] nearest;
    /** What must come after a task with nothing between. */
    private final int[][] next;
    /** Twice the pairs of tasks that may stand either way. */
    private final long pairs;

    private final Random random = new Random(1);
    private final int[] order;
    private final int[] at;
    private final int[] part;
    private final int[] stack;
    private final boolean[] stacked;
    private int height;
    private final long[] stretch;
    private long cost;
    private final int[] best;
    private long least = Long.MAX_VALUE;
    private long looks;
    /** Looks when the best was found. */
    private long gained;
    /** The order gone on with from call to call, its cost, and where it stands between warm and cold. */
    private final int[] kept;

    private long keptCost;
    private long cycle;
    private int cycles;
    private long begun;
    private double warm;
    /** The exchange found: what it saves, and where its stretches begin, meet and end. */
    private long saved;

    private int from;
    private int middle;
    private int to;

    private ArcExchange(CompiledProblem c) {
        this.c = c;
        this.n = c.n;
        this.pairs = Math.max(
                n,
                (long) n * n
                        - 2 * Arrays.stream(c.ancestors).mapToLong(Bits::count).sum());
        this.apart = Arcs.apart(c);
        this.next = Arcs.next(c);
        this.nearest = Arcs.nearest(c, apart, NEAREST);
        this.order = new int[n + 1];
        this.at = new int[n + 1];
        this.part = new int[n];
        this.stack = new int[n + 1];
        this.stacked = new boolean[n + 1];
        this.stretch = Bits.empty(n);
        this.best = new int[n + 1];
        this.kept = new int[n + 1];
    }

    /** For a problem in which all cost lies between neighbours; empty for another. */
    static Optional<ArcExchange> of(CompiledProblem c) {
        boolean plain = c.lag.length == 0 && c.spans.count == 0 && c.n > 2;
        for (int task = 0; task < c.n && plain; task++) {
            plain = c.riskHold[task].length == 0
                    && c.weight[task] == 0
                    && (c.ready.orientation[task] >= 0 || c.ready.orientations == 0)
                    && c.ready.place[task] >= 0
                    && (c.ready.kit[task] >= 0 || c.ready.holds.length == 1);
        }
        return plain ? Optional.of(new ArcExchange(c)) : Optional.empty();
    }

    /**
     * The best order found, never dearer than the given one. Asked again it goes on where it stopped.
     *
     * @param most most tasks to take on the way
     */
    int[] best(int[] given, long most, BooleanSupplier stop) {
        set(given);
        for (int task = n; task >= 0; task--) {
            push(task);
        }
        descend();
        keepIfBest();
        long whole = AT_ONCE * pairs;
        long last = looks + Math.min(most * LOOKS, looks - gained < PATIENCE * pairs ? whole : whole / PARTS);
        boolean moves = true;
        while (moves && looks < last && !stop.getAsBoolean()) {
            if (looks - begun >= cycle) {
                System.arraycopy(best, 0, kept, 0, n);
                keptCost = least;
                cycle = (SHORT_CYCLE << Math.min(cycles / 2, DOUBLED)) * pairs;
                begun = looks;
                warm = WARM * (1 + cycles % 2) * least / n;
                cycles++;
            }
            moves = cool(Math.min(last, begun + cycle), stop);
        }
        return Arrays.copyOf(best, n);
    }

    /** Betters orders near the one kept, going on from dearer ones less and less; false where no stretches change places. */
    private boolean cool(long last, BooleanSupplier stop) {
        set(kept, keptCost);
        for (int round = 1; looks < last; round++) {
            double heat = warm * Math.max(0, begun + cycle - looks) / cycle;
            looks += n;
            if (!kick()) {
                return false;
            }
            descend();
            keepIfBest();
            if (cost <= keptCost || random.nextDouble() < Math.exp((keptCost - cost) / heat)) {
                System.arraycopy(order, 0, kept, 0, n);
                keptCost = cost;
            } else {
                set(kept, keptCost);
            }
            if (round % ASKED == 0 && stop.getAsBoolean()) {
                return true;
            }
        }
        return true;
    }

    private void keepIfBest() {
        if (cost < least) {
            least = cost;
            gained = looks;
            System.arraycopy(order, 0, best, 0, n);
        }
    }

    private void set(int[] to) {
        long sum = apart[n][to[0]];
        for (int k = 1; k < n; k++) {
            sum += apart[to[k - 1]][to[k]];
        }
        set(to, sum);
    }

    private void set(int[] to, long sum) {
        System.arraycopy(to, 0, order, 0, n);
        order[n] = n;
        for (int k = 0; k <= n; k++) {
            at[order[k]] = k;
        }
        cost = sum;
    }

    private void push(int task) {
        if (!stacked[task]) {
            stacked[task] = true;
            stack[height++] = task;
        }
    }

    /** Makes exchanges that cost less, beginning after the tasks on the stack, until none is left there. */
    private void descend() {
        while (height > 0) {
            int task = stack[--height];
            stacked[task] = false;
            saved = 0;
            after(task);
            if (saved > 0) {
                push(task);
                cost -= saved;
                swap();
            }
        }
    }

    /** Task at a place, the start before the first. */
    private int task(int place) {
        return place < 0 ? n : order[place];
    }

    /** Looks for the exchange that saves most of those in which what now follows a task is replaced by something nearer. */
    private void after(int task) {
        int place = task == n ? -1 : at[task];
        looks++;
        long[] row = apart[task];
        long now = row[order[place + 1]];
        for (int nearer : nearest[task]) {
            long open = now - row[nearer];
            if (open <= 0) {
                break;
            }
            int there = at[nearer];
            if (there > place + 1) {
                if (there < n) {
                    first(place, there, open);
                }
                second(place, there, open);
            } else if (there <= place) {
                third(place, there, open);
            }
        }
    }

    /** The first stretch begins after a place, the second where the nearer one stands; it is looked how far it may reach. */
    private void first(int place, int there, long open) {
        int bar = n;
        for (int k = place + 1; k < there; k++) {
            for (int later : next[order[k]]) {
                bar = Math.min(bar, at[later]);
            }
        }
        looks += Math.max(1, bar - there) + (there - place) / 2;
        int head = order[place + 1];
        long[] row = apart[order[there - 1]];
        long with = open + row[order[there]];
        for (int end = there + 1; end <= bar; end++) {
            int tail = order[end - 1];
            long less = with + apart[tail][order[end]] - apart[tail][head] - row[order[end]];
            if (less > saved) {
                keep(less, place + 1, there, end);
            }
        }
    }

    /** The second stretch lies between a place and where the nearer one stands; it is looked how far before it the first may begin. */
    private void second(int place, int there, long open) {
        int tail = order[there - 1];
        long with = open + apart[tail][order[there]];
        int head = order[place + 1];
        for (int begin = place; begin >= 0; begin--) {
            for (int later : next[order[begin]]) {
                if (at[later] > place && at[later] < there) {
                    return;
                }
            }
            looks++;
            long[] row = apart[task(begin - 1)];
            long less = with + row[order[begin]] - row[head] - apart[tail][order[begin]];
            if (less > saved) {
                keep(less, begin, place + 1, there);
            }
        }
    }

    /** The first stretch begins where the nearer one stands, the second ends at a place; it is looked where they may meet. */
    private void third(int place, int there, long open) {
        long[] row = apart[task(there - 1)];
        int after = order[place + 1];
        long with = open + row[order[there]];
        int reach = there;
        looks += place - there;
        for (int meet = there + 1; meet <= place; meet++) {
            int end = order[meet - 1];
            for (int later : next[end]) {
                reach = at[later] <= place ? Math.max(reach, at[later]) : reach;
            }
            if (reach < meet) {
                long less = with + apart[end][order[meet]] - row[order[meet]] - apart[end][after];
                if (less > saved) {
                    keep(less, there, meet, place + 1);
                }
            }
        }
    }

    private void keep(long less, int begin, int meet, int end) {
        saved = less;
        from = begin;
        middle = meet;
        to = end;
    }

    /** The two stretches change places; those at their ends are looked at next. */
    private void swap() {
        push(task(from - 1));
        push(order[from]);
        push(order[middle - 1]);
        push(order[middle]);
        push(order[to - 1]);
        push(order[to]);
        System.arraycopy(order, from, part, 0, middle - from);
        System.arraycopy(order, middle, order, from, to - middle);
        System.arraycopy(part, 0, order, from + to - middle, middle - from);
        for (int k = from; k < to; k++) {
            at[order[k]] = k;
        }
    }

    /** Three stretches by chance are put the last first, or two change places; false where none were found that may. */
    private boolean kick() {
        for (int tries = 0; tries < TRIES; tries++) {
            from = random.nextInt(n - 1);
            middle = from + 1 + random.nextInt(Math.min(LONGEST, n - 1 - from));
            to = reach(from, middle, Math.min(n, middle + 1 + random.nextInt(LONGEST)));
            looks += to - from;
            if (to > middle) {
                int room = Math.min(n - to, 1 + random.nextInt(LONGEST));
                int end = room == 0 ? to : reach(from, to, to + room);
                if (end > to) {
                    turned(from, middle, to, end);
                    return true;
                }
                if (tries > FEW_TRIES) {
                    turned(from, middle, middle, to);
                    return true;
                }
            }
        }
        return false;
    }

    /** Stretches from begin, second and third on, in the order third, second, begin. */
    private void turned(int begin, int second, int third, int end) {
        long before = between(begin, end);
        int[] old = Arrays.copyOfRange(order, begin, end);
        push(task(begin - 1));
        push(order[second - 1]);
        push(order[third - 1]);
        push(order[end - 1]);
        push(order[begin]);
        push(order[second]);
        push(order[third]);
        push(order[end]);
        int filled = begin;
        for (int k = third; k < end; k++) {
            order[filled++] = old[k - begin];
        }
        for (int k = second; k < third; k++) {
            order[filled++] = old[k - begin];
        }
        for (int k = begin; k < second; k++) {
            order[filled++] = old[k - begin];
        }
        for (int k = begin; k < end; k++) {
            at[order[k]] = k;
        }
        cost += between(begin, end) - before;
    }

    private long between(int begin, int end) {
        long sum = 0;
        for (int k = begin; k <= end; k++) {
            sum += apart[task(k - 1)][order[k]];
        }
        return sum;
    }

    /** How far from the meeting place on nothing has to come after anything since the beginning. */
    private int reach(int begin, int meet, int end) {
        Arrays.fill(stretch, 0);
        for (int k = begin; k < meet; k++) {
            Bits.add(stretch, order[k]);
        }
        int reached = meet;
        while (reached < end && !Bits.meets(c.ancestors[order[reached]], stretch)) {
            reached++;
        }
        return reached;
    }
}
