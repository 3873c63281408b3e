package shimwright.rebuild.plan.search;

import java.util.Arrays;
import java.util.Random;
import java.util.function.BooleanSupplier;

/**
 * A better order near a given one: two stretches that lie side by side change places as long as that costs less, then a few
 * change places by chance (always the same chance) and it begins again. What is priced is the change until things stand as
 * before.
 */
final class Exchange {
    private static final int KICKS = 3;
    private static final int TRIES = 50;
    /** After so many rounds by the number of tasks without anything better it ends. */
    private static final int ROUNDS = 4;
    /** Longest stretch that changes places with another one. */
    private static final int LONGEST = 40;

    private final CompiledProblem c;
    private final BooleanSupplier stop;
    private final Random random = new Random(1);
    private final StateCursor trial;
    private final StateCursor[] before;
    private int[] order;
    private final int[] part;
    private final long[] stretch;
    private long left;

    Exchange(CompiledProblem c, int[] order, BooleanSupplier stop) {
        this.c = c;
        this.stop = stop;
        this.order = order.clone();
        this.part = new int[order.length];
        this.stretch = Bits.empty(c.n);
        this.trial = new StateCursor(c);
        this.before = new StateCursor[order.length + 1];
        for (int k = 0; k < before.length; k++) {
            before[k] = new StateCursor(c);
        }
        follow(0);
    }

    /**
     * The best order found, never dearer than the given one.
     *
     * @param most most tasks to take on the way
     */
    int[] best(long most) {
        left = order.length < 3 ? 0 : most;
        descend();
        int[] best = order.clone();
        long cost = cost();
        int vain = 0;
        while (left > 0 && vain++ < ROUNDS * order.length && !stop.getAsBoolean()) {
            boolean moved = false;
            for (int k = 0; k < KICKS; k++) {
                moved |= kick();
            }
            if (!moved) {
                return best;
            }
            descend();
            if (cost() <= cost) {
                vain = cost() < cost ? 0 : vain;
                cost = cost();
                best = order.clone();
            } else {
                order = best.clone();
                follow(0);
            }
        }
        return best;
    }

    private long cost() {
        return before[order.length].cost;
    }

    private void follow(int from) {
        for (int k = from; k < order.length; k++) {
            before[k + 1].set(before[k]);
            if (!before[k + 1].take(order[k])) {
                throw new IllegalStateException("an order that breaks a window was taken for a possible one");
            }
        }
    }

    private void descend() {
        boolean better = true;
        while (better && left > 0 && !stop.getAsBoolean()) {
            better = false;
            for (int from = 0; from < order.length - 1 && left > 0; from++) {
                better |= improve(from);
            }
        }
    }

    /** Takes the first exchange that costs less, of those whose first stretch begins here. */
    private boolean improve(int from) {
        Arrays.fill(stretch, 0);
        for (int middle = from + 1; middle < Math.min(order.length, from + LONGEST); middle++) {
            Bits.add(stretch, order[middle - 1]);
            int most = Math.min(order.length, middle + LONGEST);
            for (int to = middle + 1; to <= most && !Bits.meets(c.ancestors[order[to - 1]], stretch); to++) {
                if (change(from, middle, to) < 0) {
                    swap(from, middle, to);
                    return true;
                }
                if (left <= 0) {
                    return false;
                }
            }
        }
        return false;
    }

    /** Changes some two stretches; false where none were found that may. */
    private boolean kick() {
        for (int tries = 0; tries < TRIES; tries++) {
            int from = random.nextInt(order.length - 1);
            int middle = from + 1 + random.nextInt(Math.min(LONGEST, order.length - 1 - from));
            int end = Math.min(order.length, middle + 1 + random.nextInt(LONGEST));
            Arrays.fill(stretch, 0);
            for (int k = from; k < middle; k++) {
                Bits.add(stretch, order[k]);
            }
            int to = middle;
            while (to < end && !Bits.meets(c.ancestors[order[to]], stretch)) {
                to++;
            }
            if (to > middle && change(from, middle, to) < CompiledProblem.NEVER) {
                swap(from, middle, to);
                return true;
            }
        }
        return false;
    }

    /** What it would cost more if two stretches changed places; NEVER where that is not possible. */
    private long change(int from, int middle, int to) {
        trial.set(before[from]);
        for (int k = from; k < order.length; k++) {
            int task = k < to ? order[k - from < to - middle ? k - from + middle : k - (to - middle)] : order[k];
            left--;
            boolean possible = k >= to || (trial.free(task) && trial.allowed(task));
            if (!possible || !trial.take(task)) {
                return CompiledProblem.NEVER;
            }
            if (k + 1 >= to && stands(trial, before[k + 1])) {
                return trial.cost - before[k + 1].cost;
            }
        }
        return trial.cost - cost();
    }

    /** True where, the same being done, nothing to come would cost anything else. */
    private static boolean stands(StateCursor a, StateCursor b) {
        return a.orientation == b.orientation
                && a.place == b.place
                && a.kit == b.kit
                && Arrays.equals(a.clocks, b.clocks);
    }

    private void swap(int from, int middle, int to) {
        System.arraycopy(order, from, part, 0, middle - from);
        System.arraycopy(order, middle, order, from, to - middle);
        System.arraycopy(part, 0, order, from + to - middle, middle - from);
        follow(from);
    }
}
