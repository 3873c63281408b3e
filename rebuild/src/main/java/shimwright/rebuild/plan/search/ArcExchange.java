package shimwright.rebuild.plan.search;

import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import java.util.function.BooleanSupplier;

/**
 * A better order near a given one where all cost lies between neighbours: nothing runs, nothing is at risk, and each task leaves the
 * case, the person and the tools as it needs them. What two stretches that change places cost more is then the sum of three
 * differences. Two by chance (always the same chance) change places where that costs less, and where it costs more the less likely the
 * more it costs and the longer it has gone on (simulated annealing: Kirkpatrick, Gelatt, Vecchi, Science 220, 1983); at the end every
 * two that lie side by side are looked at.
 */
final class ArcExchange {
    /** Pairs tried by chance for a task that may be taken, and most in one go. */
    private static final int PAIRS = 30;

    private static final long MOST_PAIRS = 16_000_000;
    /** Cycles without anything better after which only a few pairs are tried. */
    private static final int PATIENCE = 4;

    private static final long FEW = 200_000;
    /** Pairs tried until it is cold; then it begins again from the best. */
    private static final long CYCLE = 4_000_000;
    /** Of the mean cost between neighbours: what may be dearer at the beginning, by turns, and at the end. */
    private static final double[] HOT = {0.3, 0.6, 0.15, 0.1};

    private static final double COLD = 0.02;
    /** Pairs after which it grows colder and is asked whether to stop. */
    private static final int ASKED = 1024;

    private final CompiledProblem c;
    private final long[][] apart;
    private final Random random = new Random(1);
    private int[] order;
    private final int[] at;
    private final int[] part;
    /** Of a place in the order: where the first task that waits for the one there stands. */
    private final int[] first;

    private final long[] stretch;
    private long cost;
    private int[] best;
    private long least;
    private int turn;
    private int vain;

    private ArcExchange(CompiledProblem c) {
        this.c = c;
        this.apart = new long[c.n + 1][c.n + 1];
        StateCursor from = new StateCursor(c);
        for (int j = 0; j < c.n; j++) {
            apart[c.n][j] = from.setUp(j);
            from.orientation = c.ready.orientation[j] < 0 ? from.orientation : c.ready.orientation[j];
            from.place = c.ready.place[j] < 0 ? from.place : c.ready.place[j];
            from.kit = c.ready.kit[j] < 0 ? from.kit : c.ready.kit[j];
            for (int k = 0; k < c.n; k++) {
                apart[j][k] = from.setUp(k);
            }
            from.start();
        }
        this.order = new int[0];
        this.best = order;
        this.at = new int[c.n];
        this.part = new int[c.n];
        this.first = new int[c.n];
        this.stretch = Bits.empty(c.n);
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
     * The best order found, never dearer than the given one.
     *
     * @param most most tasks to take on the way
     */
    int[] best(int[] given, long most, BooleanSupplier stop) {
        set(given);
        descend();
        best = order.clone();
        least = cost;
        long left = Math.min(most * PAIRS, vain < PATIENCE ? MOST_PAIRS : FEW);
        while (left > 0 && !stop.getAsBoolean()) {
            long before = least;
            anneal(Math.min(left, CYCLE), HOT[turn++ % HOT.length], stop);
            vain = least < before ? 0 : left < CYCLE ? vain : vain + 1;
            left -= CYCLE;
        }
        return best;
    }

    /** Tries so many pairs, from hot to cold, and is at the best order known afterwards. */
    private void anneal(long pairs, double hot, BooleanSupplier stop) {
        double mean = (double) cost / c.n;
        double heat = 0;
        for (long pair = 0; pair < pairs; pair++) {
            if (pair % ASKED == 0) {
                if (stop.getAsBoolean()) {
                    break;
                }
                heat = mean * hot * Math.pow(COLD / hot, (double) pair / pairs);
            }
            if (change(heat) && cost < least) {
                least = cost;
                best = order.clone();
            }
        }
        set(best);
        descend();
        best = order.clone();
        least = cost;
    }

    /** Changes two stretches by chance where they may change places and chance will have it; false where nothing was changed. */
    private boolean change(double heat) {
        int from = random.nextInt(c.n - 1);
        int middle = from + 1 + length(c.n - 1 - from);
        int end = middle + 1 + length(c.n - middle);
        Arrays.fill(stretch, 0);
        for (int k = from; k < middle; k++) {
            Bits.add(stretch, order[k]);
        }
        int to = middle;
        while (to < end && !Bits.meets(c.ancestors[order[to]], stretch)) {
            to++;
        }
        if (to == middle) {
            return false;
        }
        long more = apart[from == 0 ? c.n : order[from - 1]][order[middle]]
                + apart[order[to - 1]][order[from]]
                + (to == c.n ? 0 : apart[order[middle - 1]][order[to]])
                - apart(from - 1, from)
                - apart(middle - 1, middle)
                - apart(to - 1, to);
        if (more > 0 && random.nextDouble() >= Math.exp(-more / heat)) {
            return false;
        }
        swap(from, middle, to);
        cost += more;
        return true;
    }

    /** A length from 0 to less than a room, short ones more often. */
    private int length(int room) {
        return random.nextInt(1 + random.nextInt(room));
    }

    private void set(int[] to) {
        order = to.clone();
        cost = 0;
        for (int k = 0; k < c.n; k++) {
            cost += apart(k - 1, k);
        }
        place(0, c.n);
    }

    private long apart(int from, int to) {
        return to == c.n ? 0 : apart[from < 0 ? c.n : order[from]][order[to]];
    }

    /** Writes down where the tasks of a stretch stand, and what those before them wait for. */
    private void place(int from, int to) {
        for (int k = from; k < to; k++) {
            at[order[k]] = k;
        }
        for (int k = 0; k < to; k++) {
            int soonest = c.n;
            for (int next : c.after[order[k]]) {
                soonest = Math.min(soonest, at[next]);
            }
            first[k] = soonest;
        }
    }

    private void descend() {
        int still = 0;
        int from = 0;
        while (still < c.n) {
            if (improve(from)) {
                still = 0;
            } else {
                still++;
                from = from + 1 == c.n ? 0 : from + 1;
            }
        }
    }

    /** Makes the best exchange whose first stretch begins here, where one costs less. */
    private boolean improve(int from) {
        long most = 0;
        int bestMiddle = 0;
        int bestTo = 0;
        int bar = c.n;
        for (int middle = from + 1; middle < bar; middle++) {
            bar = Math.min(bar, first[middle - 1]);
            long open = apart(from - 1, from) + apart(middle - 1, middle) - apart(from - 1, middle);
            for (int to = middle + 1; to <= bar; to++) {
                long less = open
                        + apart(to - 1, to)
                        - apart[order[to - 1]][order[from]]
                        - (to == c.n ? 0 : apart[order[middle - 1]][order[to]]);
                if (less > most) {
                    most = less;
                    bestMiddle = middle;
                    bestTo = to;
                }
            }
        }
        if (most > 0) {
            swap(from, bestMiddle, bestTo);
            place(from, bestTo);
            cost -= most;
        }
        return most > 0;
    }

    private void swap(int from, int middle, int to) {
        System.arraycopy(order, from, part, 0, middle - from);
        System.arraycopy(order, middle, order, from, to - middle);
        System.arraycopy(part, 0, order, from + to - middle, middle - from);
    }
}
