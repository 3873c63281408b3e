package shimwright.rebuild.plan.backout;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * What undoing one thing asks of others, as numbers: a node is a step done (or a way to a part), {@code cost} what undoing
 * it costs, and of every blocker set of an undone node at least one must be undone as well. A set of one is plain order;
 * a larger one is a choice between ways.
 */
final class UndoGraph {
    private final double[] cost;
    private final List<List<int[]>> blockers;

    /**
     * The needs of some nodes.
     *
     * @param cost of each node, 0 or more, finite; not changed afterwards
     * @param blockers for each node its blocker sets, each not empty
     */
    UndoGraph(double[] cost, List<List<int[]>> blockers) {
        this.cost = cost;
        this.blockers = blockers;
        if (cost.length != blockers.size()) {
            throw new IllegalArgumentException("costs and blockers differ in number");
        }
        for (double c : cost) {
            if (!(c >= 0) || Double.isInfinite(c)) {
                throw new IllegalArgumentException("cost " + c);
            }
        }
    }

    double[] cost() {
        return cost;
    }

    List<List<int[]>> blockers() {
        return blockers;
    }

    /** The least set that undoing a node alone forces, whatever ways are chosen, for every node. */
    BitSet[] forced() {
        BitSet[] forced = new BitSet[cost.length];
        for (int node = 0; node < cost.length; node++) {
            if (forced[node] == null) {
                force(node, forced);
            }
        }
        return forced;
    }

    private void force(int first, BitSet[] forced) {
        BitSet in = new BitSet(cost.length);
        List<Integer> open = new ArrayList<>(List.of(first));
        in.set(first);
        while (!open.isEmpty()) {
            int node = open.remove(open.size() - 1);
            BitSet known = forced[node];
            if (known != null) {
                in.or(known);
                continue;
            }
            for (int[] set : blockers.get(node)) {
                if (set.length == 1 && !in.get(set[0])) {
                    in.set(set[0]);
                    open.add(set[0]);
                }
            }
        }
        forced[first] = in;
    }

    /** Cost of a set of nodes. */
    double of(BitSet set) {
        double sum = 0;
        for (int node = set.nextSetBit(0); node >= 0; node = set.nextSetBit(node + 1)) {
            sum += cost[node];
        }
        return sum;
    }

    /** Cost of the nodes of a set that are not in another. */
    double beyond(BitSet set, BitSet have) {
        double sum = 0;
        for (int node = set.nextSetBit(0); node >= 0; node = set.nextSetBit(node + 1)) {
            if (!have.get(node)) {
                sum += cost[node];
            }
        }
        return sum;
    }

    static boolean hit(int[] blocker, BitSet set) {
        for (int node : blocker) {
            if (set.get(node)) {
                return true;
            }
        }
        return false;
    }
}
