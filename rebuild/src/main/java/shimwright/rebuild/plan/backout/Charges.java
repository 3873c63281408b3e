package shimwright.rebuild.plan.backout;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * What open blocker sets add to the cost at least. Each set in turn charges the nodes of its ways, as much as its cheapest
 * way can still carry, ways behind a way included; no node is charged more than it costs. Whichever way is taken, its nodes
 * carry the charge of the set; so the charges of all sets add up to a lower bound.
 */
final class Charges {

    private final Needs needs;
    private final BitSet[] forced;
    private final List<List<int[]>> behind = new ArrayList<>();

    Charges(Needs needs, BitSet[] forced) {
        this.needs = needs;
        this.forced = forced;
        for (BitSet all : forced) {
            List<int[]> sets = new ArrayList<>();
            for (int node = all.nextSetBit(0); node >= 0; node = all.nextSetBit(node + 1)) {
                for (int[] set : needs.blockers().get(node)) {
                    if (set.length > 1 && !Needs.hit(set, all)) {
                        sets.add(set);
                    }
                }
            }
            behind.add(sets);
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
        double[] left = needs.cost().clone();
        for (int node = taken.nextSetBit(0); node >= 0; node = taken.nextSetBit(node + 1)) {
            left[node] = 0;
        }
        double sum = 0;
        for (int[] set : open) {
            sum += charge(set, left, taken, out, depth);
        }
        return sum;
    }

    /** Charges a set and takes it off what is left of each node. */
    private double charge(int[] set, double[] left, BitSet taken, BitSet out, int depth) {
        double least = Double.POSITIVE_INFINITY;
        List<double[]> carried = new ArrayList<>();
        List<Double> totals = new ArrayList<>();
        for (int way : set) {
            if (!forced[way].intersects(out)) {
                double[] rest = left.clone();
                double total = carry(way, rest, taken, out, depth);
                least = Math.min(least, total);
                carried.add(rest);
                totals.add(total);
            }
        }
        if (least > 0 && !Double.isInfinite(least)) {
            take(left, carried, totals, least);
        }
        return least;
    }

    /** What a way can carry: its own nodes and what the sets behind it charge. */
    private double carry(int way, double[] rest, BitSet taken, BitSet out, int depth) {
        double total = 0;
        BitSet nodes = forced[way];
        for (int node = nodes.nextSetBit(0); node >= 0; node = nodes.nextSetBit(node + 1)) {
            total += rest[node];
            rest[node] = 0;
        }
        if (depth > 0) {
            for (int[] set : behind.get(way)) {
                if (!Needs.hit(set, taken)) {
                    total += charge(set, rest, taken, out, depth - 1);
                }
            }
        }
        return total;
    }

    private static void take(double[] left, List<double[]> carried, List<Double> totals, double charge) {
        for (int node = 0; node < left.length; node++) {
            double most = 0;
            for (int way = 0; way < carried.size(); way++) {
                double total = totals.get(way);
                if (left[node] > 0 && !Double.isInfinite(total)) {
                    most = Math.max(most, (left[node] - carried.get(way)[node]) * charge / total);
                }
            }
            left[node] = Math.max(0, left[node] - most);
        }
    }
}
