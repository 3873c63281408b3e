package shimwright.rebuild.plan.search;

/** One search: beams that widen, and between them exchanges near the best order, until nothing better can be left. */
final class Solver {
    /** Cost of a second. */
    static final double SECOND = 1e3 * Compiled.UNITS;
    /** Up to this width a beam is four times as wide as the one before, then twice. */
    private static final int NARROW = 64;
    /** Tasks taken in exchanges by state made. */
    private static final int TAKEN = 25;

    private static final long MOST_TAKEN = 50_000_000;

    private final Compiled c;
    private final Successors successors;
    private final Watch watch;
    private final Node root;
    private final long fixed;
    private int[] best = new int[0];
    /** True while the best order is the one that was to be kept. */
    private boolean kept;

    private long value = Compiled.NEVER;
    private long bound;
    private boolean exhausted;

    Solver(Compiled c, Watch watch) {
        this.c = c;
        this.watch = watch;
        this.successors = new Successors(c);
        this.root = successors.root();
        this.fixed = Compiled.UNITS * c.work + c.forcedRisk;
        this.bound = root.bound;
    }

    /** An order to keep unless a better one is found; left out where it is not lawful. */
    void keep(int[] order) {
        Evaluation.counted(c, order).ifPresent(cost -> {
            value = cost;
            best = order;
            kept = true;
        });
    }

    /** Looks within a budget. */
    void run(Budget budget) {
        if (!found()) {
            Dive.order(c).ifPresent(order -> {
                keep(order);
                kept = false;
            });
        }
        int width = 1;
        boolean wider = true;
        while (wider && !proven()) {
            long before = successors.made;
            int allowed = Math.min(width, budget.widest());
            wider = beam(allowed, budget)
                    && successors.made < budget.states()
                    && !watch.stop().getAsBoolean();
            width = allowed < NARROW ? allowed * 4 : allowed * 2;
            if (!proven()) {
                near(Math.min(MOST_TAKEN, TAKEN * (successors.made - before)));
            }
        }
    }

    /** Sends a beam; false where a wider one would not fit. */
    private boolean beam(int width, Budget budget) {
        Beam beam = new Beam(c, successors, width, budget.bytes(), watch.stop());
        long states = Math.max(budget.states() - successors.made, (long) c.n * c.n);
        long least = beam.send(root, value, states, (order, cost) -> {
            if (cost < value) {
                better(order, cost);
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
            int[] order = new Exchange(c, best, watch.stop()).best(most);
            Evaluation.counted(c, order).filter(cost -> cost < value).ifPresent(cost -> better(order, cost));
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
        return value < Compiled.NEVER;
    }

    /** True where every order that could have been better was looked at. */
    boolean exhausted() {
        return exhausted;
    }

    long states() {
        return successors.made;
    }

    /** Least cost of any order, as far as known, with the work. */
    long bound() {
        return Math.min(bound, value) + fixed;
    }

    boolean proven() {
        return exhausted || bound >= value;
    }

    private void report() {
        double reached = value == Compiled.NEVER ? Double.POSITIVE_INFINITY : (value + fixed) / SECOND;
        watch.progress().accept(new Watch.Progress(reached, bound() / SECOND, successors.made));
    }
}
