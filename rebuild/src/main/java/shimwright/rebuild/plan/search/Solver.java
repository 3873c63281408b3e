package shimwright.rebuild.plan.search;

import java.util.Arrays;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** One search: beams that widen, and between them exchanges near the best order, until nothing better can be left. */
final class Solver {
    /** Cost of a second. */
    static final double SECOND = 1e3 * CompiledProblem.UNITS;
    /** Up to this width a beam is four times as wide as the one before, then twice. */
    private static final int NARROW = 64;
    /** Tasks taken in exchanges by state made. */
    private static final int TAKEN = 25;

    /** States made before it is worth making tables for a bound. */
    private static final long PLAIN = 30_000;
    /** Looks for bounds with tables between two beams at least, and by state made since the beam before. */
    private static final long LOOKS = 1_000_000;

    private static final long LOOKS_BY_STATE = 10;
    /** The part of these where all cost lies between neighbours, of which some tasks say little. */
    private static final long ARCS = 20;

    /** The part of the memory that such tables take, in quarters. */
    private static final long QUARTERS = 3;

    private static final long MOST_TAKEN = 50_000_000;
    /** Stretches of the best order that are put in a better one: how many tasks, and the beam. */
    private static final int SHORTEST = 12;

    private static final int LONGEST = 60;
    private static final int STRETCH_WIDTH = 48;
    private static final long STRETCH_STATES = 20_000;

    private final CompiledProblem c;
    private final long plain;
    private final int first;
    private final Successors successors;
    private final SearchObserver watch;
    private final Random random = new Random(1);
    /** Exchanges where all cost lies between neighbours; null where more counts. */
    private final @Nullable ArcExchange arcs;

    private Node root;
    private final long fixed;
    private int[] best = new int[0];
    /** True while the best order is the one that was to be kept. */
    private boolean kept;

    private long value = CompiledProblem.NEVER;
    private long bound;
    private boolean exhausted;
    private boolean tables;
    private boolean grows;
    /** Bounds with tables; null before it is time for them, and where there are none. */
    private @Nullable SubsetBounds some;

    Solver(CompiledProblem c, SearchObserver watch) {
        this(c, watch, PLAIN, SubsetBounds.FIRST);
    }

    /**
     * A search not yet begun.
     *
     * @param plain states made before the bound is made sharper by tables; less than 0 for at once
     * @param first looks for the first of the bounds in them
     */
    Solver(CompiledProblem c, SearchObserver watch, long plain, int first) {
        this.c = c;
        this.plain = plain;
        this.first = first;
        this.watch = watch;
        this.successors = new Successors(c);
        this.arcs = ArcExchange.of(c).orElse(null);
        this.root = successors.root();
        this.fixed = CompiledProblem.UNITS * c.work + c.forcedRisk;
        this.bound = root.bound;
    }

    /** An order to keep unless a better one is found; left out where it is not possible. */
    void keep(int[] order) {
        Evaluation.counted(c, order).ifPresent(cost -> {
            value = cost;
            best = order;
            kept = true;
        });
    }

    /** Looks within a budget. */
    void run(SearchBudget budget) {
        if (!found()) {
            Dive.order(c).ifPresent(order -> {
                keep(order);
                kept = false;
            });
        }
        sharpen(budget, looks(0));
        int width = 1;
        boolean wider = true;
        while (wider && !proven()) {
            long before = successors.made;
            int allowed = Math.min(width, budget.widest());
            wider = beam(allowed, budget)
                    && states() < budget.states()
                    && !watch.stop().getAsBoolean();
            sharpen(budget, looks(successors.made - before));
            width = allowed < NARROW ? allowed * 4 : allowed * 2;
            if (!proven()) {
                near(Math.min(MOST_TAKEN, TAKEN * (successors.made - before)));
                stretches((successors.made - before) / 2, budget.bytes());
            }
        }
    }

    private long looks(long states) {
        return Math.max(LOOKS, LOOKS_BY_STATE * states) / (arcs == null ? 1 : ARCS);
    }

    /** Bounds with tables from now on, where it is time, and sharper ones each time. */
    private void sharpen(SearchBudget budget, long looks) {
        if (!tables && successors.made > plain && found() && !proven()) {
            tables = true;
            some = SubsetBounds.of(c, budget.bytes() * QUARTERS / 4, first, watch.stop());
            grows = some != null;
            if (some != null) {
                successors.sharpen(some);
            }
        }
        if (some != null && grows && !proven()) {
            grows = some.grow(value, Math.min(looks, Math.max(0, budget.states() - states())));
            bound = Math.max(bound, some.low());
            keepIfBetter(some.order());
            successors.wanted(value);
            root = successors.root();
            bound = Math.max(bound, root.bound);
            report();
        }
    }

    private void keepIfBetter(int[] order) {
        Evaluation.counted(c, order).filter(cost -> cost < value).ifPresent(cost -> better(order, cost));
    }

    /** Sends a beam; false where a wider one would not fit. */
    private boolean beam(int width, SearchBudget budget) {
        long bytes = tables ? budget.bytes() * (4 - QUARTERS) / 4 : budget.bytes();
        Beam beam = new Beam(c, successors, width, bytes, watch.stop());
        long states = Math.max(budget.states() - states(), (long) c.n * c.n);
        long least = beam.send(root, value, states, c.n, (tasks, end) -> {
            if (end.cost < value) {
                better(successors.path(tasks), end.cost);
            }
            return value;
        });
        exhausted |= least >= value;
        bound = Math.max(bound, Math.min(least, value));
        report();
        return !beam.narrowed() && width < budget.widest();
    }

    /** Looks for better orders near the best one. */
    private void near(long most) {
        if (found()) {
            int[] order =
                    arcs == null ? new Exchange(c, best, watch.stop()).best(most) : arcs.best(best, most, watch.stop());
            keepIfBetter(order);
        }
    }

    /** Puts stretches of the best order in a better one each, by beams from where it stands before them. */
    private void stretches(long states, long bytes) {
        long last = successors.made + states - STRETCH_STATES;
        while (found() && successors.made < last && !proven() && !watch.stop().getAsBoolean()) {
            int length = Math.min(c.n, SHORTEST + random.nextInt(LONGEST - SHORTEST));
            int from = random.nextInt(c.n - length + 1);
            int[] order = best.clone();
            long[] tasks = Bits.empty(c.n);
            for (int k = from; k < from + length; k++) {
                Bits.add(tasks, order[k]);
            }
            successors.only(tasks);
            Node begin = successors.at(order, from);
            new Beam(c, successors, STRETCH_WIDTH, bytes, watch.stop())
                    .send(begin, value, STRETCH_STATES, from + length, (path, end) -> {
                        int[] other = Arrays.copyOf(successors.path(order, from, path), c.n);
                        System.arraycopy(order, from + length, other, from + length, c.n - from - length);
                        Evaluation.counted(c, other)
                                .filter(cost -> cost < value)
                                .ifPresent(cost -> better(other, cost));
                        return value;
                    });
            successors.only(null);
        }
    }

    private void better(int[] order, long cost) {
        value = cost;
        best = order;
        kept = false;
        report();
    }

    /** The best order, nearer to the order in which the tasks were written unless it was to be kept. */
    int[] best() {
        return kept ? best : TieBreak.of(c, best);
    }

    /** True where there is an order. */
    boolean found() {
        return value < CompiledProblem.NEVER;
    }

    /** True where every order that could have been better was looked at. */
    boolean exhausted() {
        return exhausted;
    }

    long states() {
        return successors.made + (some == null ? 0 : some.made());
    }

    /** Least cost of any order, as far as known, with the work. */
    long bound() {
        return Math.min(bound, value) + fixed;
    }

    boolean proven() {
        return exhausted || bound >= value;
    }

    private void report() {
        double reached = value == CompiledProblem.NEVER ? Double.POSITIVE_INFINITY : (value + fixed) / SECOND;
        watch.progress().accept(new SearchObserver.Progress(reached, bound() / SECOND, states()));
    }
}
