package shimwright.rebuild.plan.backout;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The cheapest closed set that holds a node: branch and bound over the ways. Forced nodes are taken at once; of the blocker
 * sets still open the one with the fewest ways is branched on, cheapest way first; a way tried is shut out of the later
 * branches, so that no set is met twice. Lower bound: what is taken, and the {@link ClosureLowerBound} of the open sets. The same needs
 * always give the same set. Of equal cost the first one met is kept.
 */
final class ClosureBranchAndBound {
    private static final double EQUAL = 1e-9;
    private static final int DEPTH = 1;
    private static final long FIRST = 20;
    private static final long MORE = 8;
    /** States kept after each node in the order of doing, by share of the tree, and at most. */
    private static final long WIDTH = 2;

    private static final long WIDEST = 25_000;

    private final UndoGraph needs;
    private final BitSet[] forced;
    private final ClosureLowerBound charges;
    private BitSet best = new BitSet();
    private double bestCost = Double.POSITIVE_INFINITY;
    private long looked;
    private long allowed;

    private ClosureBranchAndBound(UndoGraph needs, ClosureLowerBound charges) {
        this.needs = needs;
        this.forced = charges.forced();
        this.charges = charges;
    }

    /**
     * What was found.
     *
     * @param set nodes to undo, closed
     * @param cost of the set
     * @param proven true where nothing cheaper exists
     * @param looked nodes of the search tree
     */
    record Found(BitSet set, double cost, boolean proven, long looked) {}

    /**
     * The cheapest closed set with the target in it.
     *
     * @param budget most nodes of the search tree; when it is used up the best set so far is handed back, not proven
     */
    static Found set(UndoGraph needs, int target, long budget) {
        return set(needs, new ClosureLowerBound(needs, needs.forced()), target, budget);
    }

    /** The same, with what does not hang on the target worked out before; not by two threads at once. */
    static Found set(UndoGraph needs, ClosureLowerBound charges, int target, long budget) {
        ClosureBranchAndBound search = new ClosureBranchAndBound(needs, charges);
        BitSet[] forced = search.forced;
        BitSet start = (BitSet) forced[target].clone();
        if (search.open(start).isEmpty()) {
            return new Found(start, needs.of(start), true, 0);
        }
        search.greedy(start);
        long looked = 0;
        for (long share = Math.min(FIRST, budget); looked < budget; share *= MORE) {
            long width = Math.min(WIDTH * share, WIDEST);
            ClosureByLayers.Result layers = ClosureByLayers.cheaper(needs, forced, target, search.bestCost, width);
            layers.found().ifPresent(search::better);
            if (layers.whole()) {
                return new Found(search.best, search.bestCost, true, looked);
            }
            search.allowed = Math.min(share, budget - looked);
            search.looked = 0;
            search.branch(start, new BitSet());
            looked += search.looked;
            if (search.looked <= search.allowed) {
                return new Found(search.best, search.bestCost, true, looked);
            }
        }
        return new Found(search.best, search.bestCost, false, looked);
    }

    /** A first closed set: always the way that adds least. */
    private void greedy(BitSet start) {
        BitSet taken = (BitSet) start.clone();
        List<int[]> open = open(taken);
        while (!open.isEmpty()) {
            int way = -1;
            double least = Double.POSITIVE_INFINITY;
            for (int node : open.get(0)) {
                double more = needs.beyond(forced[node], taken);
                if (more < least) {
                    least = more;
                    way = node;
                }
            }
            taken.or(forced[way]);
            open = open(taken);
        }
        better(taken);
    }

    private void better(BitSet set) {
        best = set;
        bestCost = needs.of(set);
    }

    private List<int[]> open(BitSet taken) {
        List<int[]> open = new ArrayList<>();
        for (int node = taken.nextSetBit(0); node >= 0; node = taken.nextSetBit(node + 1)) {
            for (int[] set : needs.blockers().get(node)) {
                if (set.length > 1 && !UndoGraph.hit(set, taken)) {
                    open.add(set);
                }
            }
        }
        return open;
    }

    /** An open blocker set: the ways that are left, cheapest first, with what each adds. */
    private record Fork(List<Way> ways) {
        double least() {
            return ways.get(0).more();
        }
    }

    private record Way(int node, double more) {}

    private void branch(BitSet taken, BitSet out) {
        if (++looked > allowed) {
            return;
        }
        double cost = needs.of(taken);
        if (cost >= bestCost - EQUAL) {
            return;
        }
        List<int[]> open = open(taken);
        List<Fork> forks = new ArrayList<>();
        for (int[] set : open) {
            Fork fork = fork(set, taken, out);
            if (fork == null) {
                return;
            }
            forks.add(fork);
        }
        if (forks.isEmpty()) {
            better((BitSet) taken.clone());
            return;
        }
        if (cost + charges.over(open, taken, out, DEPTH) >= bestCost - EQUAL) {
            return;
        }
        Fork fork = forks.stream()
                .min(Comparator.<Fork>comparingInt(f -> f.ways().size()).thenComparing(f -> -f.least()))
                .orElseThrow();
        BitSet shut = (BitSet) out.clone();
        for (Way way : fork.ways()) {
            BitSet next = (BitSet) taken.clone();
            next.or(forced[way.node()]);
            branch(next, shut);
            if (looked > allowed) {
                return;
            }
            shut.set(way.node());
        }
    }

    /** The ways of a set; null where every way leads through a node that is shut out. */
    private @Nullable Fork fork(int[] set, BitSet taken, BitSet out) {
        List<Way> ways = new ArrayList<>();
        for (int node : set) {
            if (!forced[node].intersects(out) && !covered(node, set, out)) {
                ways.add(new Way(node, needs.beyond(forced[node], taken)));
            }
        }
        if (ways.isEmpty()) {
            return null;
        }
        ways.sort(Comparator.comparingDouble(Way::more).thenComparingInt(Way::node));
        return new Fork(ways);
    }

    /** True where taking the way takes another way of the same set as well, so that the other branch holds it. */
    private boolean covered(int node, int[] set, BitSet out) {
        for (int other : set) {
            boolean mutual = forced[other].get(node) && other > node;
            if (other != node && forced[node].get(other) && !mutual && !forced[other].intersects(out)) {
                return true;
            }
        }
        return false;
    }
}
