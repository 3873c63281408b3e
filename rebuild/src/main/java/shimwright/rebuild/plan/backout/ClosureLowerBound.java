package shimwright.rebuild.plan.backout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * What open blocker sets add to the cost at least. Each set in turn charges the nodes of its ways, as much as its cheapest
 * way can still carry, ways behind a way included; no node is charged more than it costs. Whichever way is taken, its nodes
 * carry the charge of the set; so the charges of all sets add up to a lower bound.
 */
final class ClosureLowerBound {

    private final UndoGraph needs;
    private final BitSet[] forced;
    private final int[][] nodes;
    private final int[][][] behind;
    /** What each node can still carry. */
    private final double[] left;

    /** What was changed, to be taken back: the node and what it could carry before. */
    private int[] changed = new int[64];

    private double[] before = new double[64];
    private int changes;
    private final int[] seen;
    private int round;
    private final double[] most;

    ClosureLowerBound(UndoGraph needs, BitSet[] forced) {
        this.needs = needs;
        this.forced = forced;
        int n = forced.length;
        this.nodes = new int[n][];
        this.behind = new int[n][][];
        this.left = new double[n];
        this.seen = new int[n];
        this.most = new double[n];
    }

    /** What undoing each node forces. */
    BitSet[] forced() {
        return forced;
    }

    /** What a way takes with it and what it opens, worked out when it is first looked at. */
    private void look(int way) {
        if (nodes[way] != null) {
            return;
        }
        BitSet all = forced[way];
        nodes[way] = all.stream().toArray();
        List<int[]> sets = new ArrayList<>();
        for (int node : nodes[way]) {
            for (int[] set : needs.blockers().get(node)) {
                if (set.length > 1 && !UndoGraph.hit(set, all)) {
                    sets.add(set);
                }
            }
        }
        behind[way] = sets.toArray(int[][]::new);
    }

    /** What one way carries: its nodes with what each gives, and the sum. */
    private static final class Load {
        final int[] nodes;
        final double[] given;
        final double total;

        Load(int[] nodes, double[] given, double total) {
            this.nodes = nodes;
            this.given = given;
            this.total = total;
        }
    }

    /**
     * The bound.
     *
     * @param open blocker sets that no node taken hits
     * @param depth how many sets behind one another are charged
     * @param out nodes that may not be taken; infinity where a set cannot be hit without one
     */
    double over(List<int[]> open, BitSet taken, BitSet out, int depth) {
        System.arraycopy(needs.cost(), 0, left, 0, left.length);
        for (int node = taken.nextSetBit(0); node >= 0; node = taken.nextSetBit(node + 1)) {
            left[node] = 0;
        }
        double sum = 0;
        for (int[] set : open) {
            changes = 0;
            sum += charge(set, taken, out, depth);
        }
        return sum;
    }

    /** Charges a set and takes it off what is left of each node. */
    private double charge(int[] set, BitSet taken, BitSet out, int depth) {
        double least = Double.POSITIVE_INFINITY;
        List<Load> loads = new ArrayList<>(set.length);
        for (int way : set) {
            if (!forced[way].intersects(out)) {
                int from = changes;
                double total = carry(way, taken, out, depth);
                least = Math.min(least, total);
                loads.add(takeBack(from, total));
                if (least == 0) {
                    return 0;
                }
            }
        }
        if (least > 0 && !Double.isInfinite(least)) {
            take(loads, least);
        }
        return least;
    }

    /** What a way can carry: its own nodes and what the sets behind it charge. */
    private double carry(int way, BitSet taken, BitSet out, int depth) {
        look(way);
        double total = 0;
        for (int node : nodes[way]) {
            if (left[node] > 0) {
                total += left[node];
                change(node, 0);
            }
        }
        if (depth > 0) {
            for (int[] set : behind[way]) {
                if (!UndoGraph.hit(set, taken)) {
                    total += charge(set, taken, out, depth - 1);
                }
            }
        }
        return total;
    }

    private void change(int node, double to) {
        if (changes == changed.length) {
            changed = Arrays.copyOf(changed, 2 * changes);
            before = Arrays.copyOf(before, 2 * changes);
        }
        changed[changes] = node;
        before[changes++] = left[node];
        left[node] = to;
    }

    /** Takes changes back and says what each node had given. */
    private Load takeBack(int from, double total) {
        int[] which = new int[changes - from];
        double[] given = new double[changes - from];
        int count = 0;
        round++;
        for (int k = from; k < changes; k++) {
            int node = changed[k];
            if (seen[node] != round) {
                seen[node] = round;
                which[count] = node;
                given[count++] = before[k] - left[node];
            }
        }
        while (changes > from) {
            changes--;
            left[changed[changes]] = before[changes];
        }
        return new Load(Arrays.copyOf(which, count), given, total);
    }

    private void take(List<Load> loads, double charge) {
        for (Load load : loads) {
            for (int k = 0; k < load.nodes.length && !Double.isInfinite(load.total); k++) {
                int node = load.nodes[k];
                most[node] = Math.max(most[node], load.given[k] * charge / load.total);
            }
        }
        for (Load load : loads) {
            for (int node : load.nodes) {
                if (most[node] > 0) {
                    change(node, Math.max(0, left[node] - most[node]));
                    most[node] = 0;
                }
            }
        }
    }
}
