package shimwright.rebuild.plan.search;

import org.jspecify.annotations.Nullable;

/** A state reached: what is done and how things stand, what it cost and how one came there. */
final class Node {
    final long[] done;
    final int hash;
    final int count;
    final int orientation;
    final int place;
    final int kit;
    final int weight;
    /** Cost so far without the working time of what every order does. */
    final long cost;
    /** Left of every wait that runs, then left of every window that is open (-1 where it is not). */
    final long[] clocks;

    final @Nullable Node parent;
    /** Tasks done since the parent, in order. */
    final int[] steps;
    /** Lower bound of the whole. */
    long bound;

    long number;
    boolean beaten;

    @Nullable
    Node next;

    Node(Cursor at, @Nullable Node parent, int[] steps) {
        this.done = at.done.clone();
        this.hash = Bits.hash(done);
        this.count = at.count;
        this.orientation = at.orientation;
        this.place = at.place;
        this.kit = at.kit;
        this.weight = at.weight;
        this.cost = at.cost;
        this.clocks = at.clocks.length == 0 ? at.clocks : at.clocks.clone();
        this.parent = parent;
        this.steps = steps;
    }
}
