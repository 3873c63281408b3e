package shimwright.rebuild.plan.search;

import org.jspecify.annotations.Nullable;

/** A state reached: what is done and how things stand, what it cost and where one came from. */
final class Node {
    private static final int OBJECT = 96;
    private static final int ARRAY = 16;

    final long[] done;
    final int hash;
    final int count;
    final int orientation;
    final int place;
    final int kit;
    final int weight;
    /** Cost so far without the working time of what every order does. */
    final long cost;
    /** Time waited so far. */
    final long waited;
    /** Left of every wait that runs, then left of every window that is open (-1 where it is not). */
    final long[] clocks;

    /** Where the state it follows stands in the trail; less than 0 for the start. */
    final int from;
    /** Task done since; what was done at once after it follows from it. */
    final int task;
    /** Lower bound of the whole. */
    long bound;

    long number;
    boolean beaten;

    @Nullable
    Node next;

    Node(StateCursor at, int from, int task) {
        this.done = at.done.clone();
        this.hash = Bits.hash(done);
        this.count = at.count;
        this.orientation = at.orientation;
        this.place = at.place;
        this.kit = at.kit;
        this.weight = at.weight;
        this.cost = at.cost;
        this.waited = at.waited;
        this.clocks = at.clocks.length == 0 ? at.clocks : at.clocks.clone();
        this.from = from;
        this.task = task;
    }

    /** Bytes that a state of a problem takes, its place in the lists it stands in with it. */
    static long bytes(CompiledProblem c) {
        int clocks = c.lag.length + c.spans.count;
        return OBJECT + ARRAY + 8L * c.all.length + (clocks == 0 ? 0 : ARRAY + 8L * clocks);
    }
}
