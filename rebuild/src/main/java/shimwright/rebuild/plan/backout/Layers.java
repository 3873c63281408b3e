package shimwright.rebuild.plan.backout;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The cheapest closed set, node by node along the order of doing: what blocks a node always comes after it, so after each
 * node all that matters of the past is which blocker sets are still to be hit. Of all pasts with the same open sets the
 * cheapest is kept. Fast where what blocks a step was done soon after it, as in a stack of parts on a shaft.
 */
final class Layers {
    private static final double EQUAL = 1e-9;

    private final Needs needs;
    private final BitSet[] forced;
    private final long most;

    private Layers(Needs needs, BitSet[] forced, long most) {
        this.needs = needs;
        this.forced = forced;
        this.most = most;
    }

    /** The nodes taken on one way to a state, and what they cost. */
    private record Past(double cost, int node, @Nullable Past before) {}

    /**
     * What came out.
     *
     * @param found the cheapest set; empty where none is cheaper than what was asked for
     * @param whole false where it was given up or the nodes block each other in a circle
     */
    record Result(Optional<BitSet> found, boolean whole) {
        private static final Result GIVEN_UP = new Result(Optional.empty(), false);
    }

    /**
     * The cheapest closed set that holds the target.
     *
     * @param dear nothing as dear as this is looked for
     * @param most states before giving up
     */
    static Result cheaper(Needs needs, BitSet[] forced, int target, double dear, long most) {
        List<Integer> order = order(needs, target);
        return order.isEmpty() ? Result.GIVEN_UP : new Layers(needs, forced, most).run(order, target, dear);
    }

    /** The nodes that can matter, each before what blocks it; empty where they block each other in a circle. */
    private static List<Integer> order(Needs needs, int target) {
        int[] waiting = new int[needs.cost().length];
        BitSet seen = new BitSet();
        List<Integer> open = new ArrayList<>(List.of(target));
        seen.set(target);
        while (!open.isEmpty()) {
            for (int[] set : needs.blockers().get(open.remove(open.size() - 1))) {
                for (int node : set) {
                    waiting[node]++;
                    if (!seen.get(node)) {
                        seen.set(node);
                        open.add(node);
                    }
                }
            }
        }
        List<Integer> order = new ArrayList<>();
        PriorityQueue<Integer> free = new PriorityQueue<>();
        if (waiting[target] == 0) {
            free.add(target);
        }
        while (!free.isEmpty()) {
            int node = free.remove();
            order.add(node);
            for (int[] set : needs.blockers().get(node)) {
                for (int next : set) {
                    if (--waiting[next] == 0) {
                        free.add(next);
                    }
                }
            }
        }
        return order.size() == seen.cardinality() ? order : List.of();
    }

    private Result run(List<Integer> order, int target, double dear) {
        Map<Set<BitSet>, Past> layer = new LinkedHashMap<>();
        BitSet first = new BitSet();
        first.set(target);
        layer.put(Set.of(first), new Past(0, -1, null));
        long states = 0;
        for (int node : order) {
            Map<Set<BitSet>, Past> next = new LinkedHashMap<>();
            for (Map.Entry<Set<BitSet>, Past> state : layer.entrySet()) {
                step(node, state.getKey(), state.getValue(), dear, next);
            }
            layer = next;
            states += layer.size();
            if (states > most) {
                return Result.GIVEN_UP;
            }
        }
        return new Result(
                layer.values().stream()
                        .min(Comparator.comparingDouble(Past::cost))
                        .map(Layers::nodes),
                true);
    }

    private static BitSet nodes(Past last) {
        BitSet nodes = new BitSet();
        for (@Nullable Past past = last; past != null; past = past.before()) {
            if (past.node() >= 0) {
                nodes.set(past.node());
            }
        }
        return nodes;
    }

    private void step(int node, Set<BitSet> open, Past past, double dear, Map<Set<BitSet>, Past> next) {
        boolean named = false;
        boolean must = false;
        for (BitSet set : open) {
            if (set.get(node)) {
                named = true;
                must |= set.cardinality() == 1;
            }
        }
        if (!named) {
            next.merge(open, past, Layers::cheaper);
            return;
        }
        put(taken(node, open), new Past(past.cost() + needs.cost()[node], node, past), dear, next);
        if (!must) {
            Set<BitSet> left = new HashSet<>();
            for (BitSet set : open) {
                BitSet rest = (BitSet) set.clone();
                rest.clear(node);
                add(rest, left);
            }
            put(left, past, dear, next);
        }
    }

    private Set<BitSet> taken(int node, Set<BitSet> open) {
        Set<BitSet> left = new HashSet<>();
        for (BitSet set : open) {
            if (!set.get(node)) {
                left.add(set);
            }
        }
        for (int[] blocker : needs.blockers().get(node)) {
            BitSet set = new BitSet();
            for (int other : blocker) {
                set.set(other);
            }
            add(set, left);
        }
        return left;
    }

    /** Adds a set to those to be hit; a set that another one lies within is hit with it and falls away. */
    private static void add(BitSet set, Set<BitSet> sets) {
        for (BitSet other : sets) {
            if (within(other, set)) {
                return;
            }
        }
        sets.removeIf(other -> within(set, other));
        sets.add(set);
    }

    private static boolean within(BitSet small, BitSet large) {
        BitSet rest = (BitSet) small.clone();
        rest.andNot(large);
        return rest.isEmpty();
    }

    private void put(Set<BitSet> open, Past past, double dear, Map<Set<BitSet>, Past> next) {
        Past known = next.get(open);
        if (known != null && known.cost() <= past.cost()) {
            return;
        }
        if (known != null || past.cost() + least(open) < dear - EQUAL) {
            next.put(open, past);
        }
    }

    private static Past cheaper(Past one, Past two) {
        return two.cost() < one.cost() ? two : one;
    }

    /** What open sets cost at least: all that must be taken, and the dearest of the others over that. */
    private double least(Set<BitSet> open) {
        BitSet must = new BitSet();
        for (BitSet set : open) {
            if (set.cardinality() == 1) {
                must.or(forced[set.nextSetBit(0)]);
            }
        }
        double sum = needs.of(must);
        BitSet used = must;
        for (BitSet set : open) {
            if (set.cardinality() > 1) {
                BitSet all = new BitSet();
                double least = Double.POSITIVE_INFINITY;
                for (int node = set.nextSetBit(0); node >= 0; node = set.nextSetBit(node + 1)) {
                    least = Math.min(least, needs.beyond(forced[node], used));
                    all.or(forced[node]);
                }
                sum += least;
                used.or(all);
            }
        }
        return sum;
    }
}
