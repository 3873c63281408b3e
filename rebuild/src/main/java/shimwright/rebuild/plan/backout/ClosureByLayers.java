package shimwright.rebuild.plan.backout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;

/**
 * The cheapest closed set, node by node along the order of doing: what blocks a node always comes after it, so after each
 * node all that matters of the past is which blocker sets are still to be hit. Of all pasts with the same open sets the
 * cheapest is kept, and of all of them the most promising. Fast where what blocks a step was done soon after it, as in a stack
 * of parts on a shaft.
 */
final class ClosureByLayers {
    private static final double EQUAL = 1e-9;
    private static final Comparator<Map.Entry<Open, Past>> PROMISING = Map.Entry.comparingByValue(
            Comparator.comparingDouble(Past::bound).thenComparingDouble(past -> -past.cost()));

    private final int[] order;
    private final double[] cost;
    /** By place in the order: what undoing forces, as a set of places. */
    private final long[][] forced;
    /** By place in the order: its blocker sets, each as places from the next one on, the first as bit 0. */
    private final long[][] blockers;
    /** Words of a blocker set. */
    private final int words;

    private final double dear;
    private long[] scratch;
    private int filled;
    private final long[] single;
    private final long[] used;
    private final long[] all;

    private ClosureByLayers(UndoGraph needs, BitSet[] forced, List<Integer> order, double dear) {
        int n = order.size();
        this.dear = dear;
        this.order = order.stream().mapToInt(Integer::intValue).toArray();
        this.cost = Arrays.stream(this.order)
                .mapToDouble(node -> needs.cost()[node])
                .toArray();
        int[] place = new int[needs.cost().length];
        for (int p = 0; p < n; p++) {
            place[this.order[p]] = p;
        }
        int span = 0;
        this.forced = new long[n][(n + 63) >> 6];
        for (int p = 0; p < n; p++) {
            for (int node : forced[this.order[p]].stream().toArray()) {
                this.forced[p][place[node] >> 6] |= 1L << place[node];
            }
            for (int[] set : needs.blockers().get(this.order[p])) {
                span = Math.max(
                        span, Arrays.stream(set).map(node -> place[node]).max().orElse(p) - p);
            }
        }
        this.words = (span + 63) >> 6;
        this.blockers = new long[n][];
        for (int p = 0; p < n; p++) {
            List<int[]> sets = needs.blockers().get(this.order[p]);
            blockers[p] = new long[sets.size() * words];
            for (int s = 0; s < sets.size(); s++) {
                for (int node : sets.get(s)) {
                    int bit = place[node] - p - 1;
                    blockers[p][s * words + (bit >> 6)] |= 1L << bit;
                }
            }
        }
        this.scratch = new long[16 * words];
        this.single = new long[words];
        this.used = new long[(n + 63) >> 6];
        this.all = used.clone();
    }

    /** Blocker sets still to be hit, sorted, none within another, as places from the next one on. */
    private static final class Open {
        final long[] sets;

        Open(long[] sets) {
            this.sets = sets;
        }

        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof Open open && Arrays.equals(sets, open.sets);
        }

        @Override
        public int hashCode() {
            long h = 0;
            for (long word : sets) {
                h = (h ^ word) * 0x9E3779B97F4A7C15L;
                h ^= h >>> 29;
            }
            return (int) (h ^ h >>> 32);
        }
    }

    /** The nodes taken on one way to a state, what they cost, and the cost at least of all that will be taken. */
    private record Past(
            double cost, double bound, int node, @Nullable Past before) {}

    /**
     * What came out.
     *
     * @param found the cheapest set met; empty where none was cheaper than what was asked for
     * @param whole false where something was passed over, so that there may be a cheaper one, or where the nodes block each
     *     other in a circle
     */
    record Result(Optional<BitSet> found, boolean whole) {
        private static final Result CIRCLE = new Result(Optional.empty(), false);
    }

    /**
     * The cheapest closed set that holds the target.
     *
     * @param dear nothing as dear as this is looked for
     * @param most states kept after each node
     */
    static Result cheaper(UndoGraph needs, BitSet[] forced, int target, double dear, long most) {
        List<Integer> order = order(needs, target);
        return order.isEmpty() ? Result.CIRCLE : new ClosureByLayers(needs, forced, order, dear).run(most);
    }

    /** The nodes that can matter, each before what blocks it; empty where they block each other in a circle. */
    private static List<Integer> order(UndoGraph needs, int target) {
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

    private Result run(long most) {
        Map<Open, Past> layer = new LinkedHashMap<>();
        filled = 0;
        add(blockers[0]);
        put(0, new Past(cost[0], 0, order[0], null), layer);
        boolean whole = true;
        for (int p = 1; p < order.length; p++) {
            Map<Open, Past> next = new LinkedHashMap<>();
            for (Map.Entry<Open, Past> state : promising(layer, most)) {
                step(p, state.getKey().sets, state.getValue(), next);
            }
            whole &= layer.size() <= most;
            layer = next;
        }
        return new Result(
                layer.values().stream()
                        .min(Comparator.comparingDouble(Past::cost))
                        .map(ClosureByLayers::nodes),
                whole);
    }

    private static Iterable<Map.Entry<Open, Past>> promising(Map<Open, Past> layer, long most) {
        return layer.size() <= most
                ? layer.entrySet()
                : layer.entrySet().stream().sorted(PROMISING).limit(most).toList();
    }

    private static BitSet nodes(Past last) {
        BitSet nodes = new BitSet();
        for (@Nullable Past past = last; past != null; past = past.before()) {
            nodes.set(past.node());
        }
        return nodes;
    }

    private void step(int p, long[] open, Past past, Map<Open, Past> next) {
        boolean named = false;
        boolean must = false;
        for (int at = 0; at < open.length; at += words) {
            if ((open[at] & 1) != 0) {
                named = true;
                must |= count(open, at) == 1;
            }
        }
        if (named) {
            filled = 0;
            shifted(open, false);
            add(blockers[p]);
            put(p, new Past(past.cost() + cost[p], 0, order[p], past), next);
        }
        if (!must) {
            filled = 0;
            shifted(open, true);
            put(p, past, next);
        }
    }

    /** Adds the sets as seen from the next place; those with the first bit only where it says so, without that bit. */
    private void shifted(long[] open, boolean all) {
        for (int at = 0; at < open.length; at += words) {
            if (all || (open[at] & 1) == 0) {
                for (int w = 0; w < words; w++) {
                    long above = w + 1 < words ? open[at + w + 1] << 63 : 0;
                    single[w] = open[at + w] >>> 1 | above;
                }
                add(single, 0);
            }
        }
    }

    private void add(long[] sets) {
        for (int at = 0; at < sets.length; at += words) {
            add(sets, at);
        }
    }

    /** Adds a set to those to be hit; a set that another one lies within is hit with it and falls away. */
    private void add(long[] sets, int from) {
        int kept = 0;
        for (int at = 0; at < filled; at += words) {
            if (within(scratch, at, sets, from)) {
                return;
            }
        }
        for (int at = 0; at < filled; at += words) {
            if (!within(sets, from, scratch, at)) {
                System.arraycopy(scratch, at, scratch, kept, words);
                kept += words;
            }
        }
        int place = kept;
        while (place > 0 && Arrays.compare(scratch, place - words, place, sets, from, from + words) > 0) {
            place -= words;
        }
        if (kept + words > scratch.length) {
            scratch = Arrays.copyOf(scratch, 2 * scratch.length);
        }
        System.arraycopy(scratch, place, scratch, place + words, kept - place);
        System.arraycopy(sets, from, scratch, place, words);
        filled = kept + words;
    }

    private boolean within(long[] small, int at, long[] large, int from) {
        for (int w = 0; w < words; w++) {
            if ((small[at + w] & ~large[from + w]) != 0) {
                return false;
            }
        }
        return true;
    }

    private int count(long[] sets, int at) {
        int count = 0;
        for (int w = 0; w < words; w++) {
            count += Long.bitCount(sets[at + w]);
        }
        return count;
    }

    private void put(int p, Past past, Map<Open, Past> next) {
        Open open = new Open(Arrays.copyOf(scratch, filled));
        Past known = next.get(open);
        if (known != null && known.cost() <= past.cost()) {
            return;
        }
        double bound = past.cost() + (known == null ? least(p) : known.bound() - known.cost());
        if (known != null || bound < dear - EQUAL) {
            next.put(open, new Past(past.cost(), bound, past.node(), past.before()));
        }
    }

    /** What the sets to be hit cost at least: all that must be taken, and the dearest of the others over that. */
    private double least(int p) {
        Arrays.fill(used, 0);
        double sum = 0;
        for (int at = 0; at < filled; at += words) {
            if (count(scratch, at) == 1) {
                int way = p + 1 + next(at, 0);
                sum += beyond(way);
                join(used, forced[way]);
            }
        }
        for (int at = 0; at < filled; at += words) {
            if (count(scratch, at) > 1) {
                double least = Double.POSITIVE_INFINITY;
                System.arraycopy(used, 0, all, 0, used.length);
                for (int bit = next(at, 0); bit >= 0; bit = next(at, bit + 1)) {
                    least = Math.min(least, beyond(p + 1 + bit));
                    join(all, forced[p + 1 + bit]);
                }
                sum += least;
                System.arraycopy(all, 0, used, 0, used.length);
            }
        }
        return sum;
    }

    private int next(int at, int bit) {
        for (int w = bit >> 6; w < words; w++) {
            long word = scratch[at + w] & (w == bit >> 6 ? -1L << bit : -1L);
            if (word != 0) {
                return (w << 6) + Long.numberOfTrailingZeros(word);
            }
        }
        return -1;
    }

    /** Cost of what taking a place forces beyond what is counted already. */
    private double beyond(int way) {
        double sum = 0;
        for (int w = 0; w < used.length; w++) {
            for (long word = forced[way][w] & ~used[w]; word != 0; word &= word - 1) {
                sum += cost[(w << 6) + Long.numberOfTrailingZeros(word)];
            }
        }
        return sum;
    }

    private static void join(long[] set, long[] other) {
        for (int w = 0; w < set.length; w++) {
            set[w] |= other[w];
        }
    }
}
