package shimwright.rebuild.complaint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The order in which to look so that the cause is found soonest on average.
 *
 * <p>A look at a suspect takes its minutes once its opening is there; an opening is made once and serves every look behind it. What is
 * least is Σ chance · sees · minutes until that look has ended. Openings form a tree, so the least is found exactly by joining, again
 * and again, the piece of work with the highest chance a minute to what must go before it (W. A. Horn, Single-machine job sequencing
 * with treelike precedence ordering and linear delay penalties, SIAM J. Appl. Math. 23, 1972). Of two as good the one that comes first
 * in the list stands first.
 *
 * <p>A look that an opening ends (play and drag while the shafts lie in their bearings, what only the vehicle shows) is taken before that opening
 * where it is worth it, though by the mean alone it might come later: afterwards it cannot be had.
 */
public final class LookOrder {
    /** A look that finds less than this is not taken early because it would be lost. */
    private static final double WORTH = 0.02;

    private LookOrder() {}

    /**
     * One look.
     *
     * @param suspects whom it shows, the likeliest first
     * @param look what is looked at
     * @param opening from which it can be had
     * @param opens openings to be made for it that were not there before, in order
     * @param minutes of those openings and of the look
     * @param until minutes from the beginning until it has ended
     * @param found chance that what is wrong is found by then
     */
    public record Look(
            List<Suspect> suspects,
            String look,
            StripDepth opening,
            List<StripDepth> opens,
            double minutes,
            double until,
            double found) {
        public Look {
            suspects = List.copyOf(suspects);
            opens = List.copyOf(opens);
        }
    }

    private static final class Piece {
        final int first;
        final double minutes;
        final double weight;
        final List<Integer> nodes;

        Piece(int first, double minutes, double weight, List<Integer> nodes) {
            this.first = first;
            this.minutes = minutes;
            this.weight = weight;
            this.nodes = nodes;
        }

        /** True where it finds more a minute; what takes no time and finds something goes before everything. */
        boolean before(Piece other) {
            return weight * other.minutes > other.weight * minutes;
        }
    }

    /** Openings and looks as nodes of one tree; −1 is the root. */
    private static final class Tree {
        final List<StripDepth> openings = new ArrayList<>();
        final List<List<Suspect>> looks = new ArrayList<>();
        final List<Integer> parents = new ArrayList<>();
        final List<Double> minutes = new ArrayList<>();
        final List<Double> weights = new ArrayList<>();

        void add(StripDepth opening, List<Suspect> look, int parent, double takes, double weight) {
            openings.add(opening);
            looks.add(look);
            parents.add(parent);
            minutes.add(takes);
            weights.add(weight);
        }
    }

    /**
     * The looks in their order.
     *
     * @param there openings that are there already; those before them count as there too
     * @param suspects with their chances; one that was looked at is the caller's to leave out
     */
    public static List<Look> of(CauseTables tables, Set<String> there, List<Suspect> suspects) {
        Set<String> made = withThoseBefore(tables, there);
        Tree tree = tree(tables, made, suspects);
        List<Look> order = new ArrayList<>();
        List<StripDepth> opens = new ArrayList<>();
        double begun = 0;
        double until = 0;
        double found = 0;
        for (int node : inTime(tree, made, horn(tree))) {
            until += tree.minutes.get(node);
            List<Suspect> shown = tree.looks.get(node);
            if (shown.isEmpty()) {
                if (!made.contains(tree.openings.get(node).id())) {
                    opens.add(tree.openings.get(node));
                }
                continue;
            }
            found += tree.weights.get(node);
            order.add(
                    new Look(shown, shown.get(0).look(), tree.openings.get(node), opens, until - begun, until, found));
            opens = new ArrayList<>();
            begun = until;
        }
        return List.copyOf(order);
    }

    private static List<String> pathTo(CauseTables tables, String opening) {
        List<String> path = new ArrayList<>();
        for (String at = opening;
                !at.isEmpty();
                at = tables.opening(at).orElseThrow().after()) {
            path.add(0, at);
        }
        return path;
    }

    private static Set<String> withThoseBefore(CauseTables tables, Set<String> there) {
        Set<String> all = new LinkedHashSet<>();
        there.forEach(opening -> all.addAll(pathTo(tables, opening)));
        return all;
    }

    private static Tree tree(CauseTables tables, Set<String> there, List<Suspect> suspects) {
        Tree tree = new Tree();
        Map<String, Integer> nodes = new LinkedHashMap<>();
        for (StripDepth opening : tables.openings()) {
            nodes.put(opening.id(), nodes.size());
            tree.add(
                    opening,
                    List.of(),
                    nodes.getOrDefault(opening.after(), -1),
                    there.contains(opening.id()) ? 0 : opening.minutes(),
                    0);
        }
        Map<String, List<Suspect>> looks = new LinkedHashMap<>();
        suspects.forEach(
                suspect -> looks.computeIfAbsent(suspect.after() + "\n" + suspect.look(), l -> new ArrayList<>())
                        .add(suspect));
        looks.values().forEach(shown -> {
            int parent = nodes.getOrDefault(shown.get(0).after(), -1);
            double weight = shown.stream()
                    .mapToDouble(suspect -> suspect.chance() * suspect.sees())
                    .sum();
            tree.add(tree.openings.get(parent), shown, parent, shown.get(0).minutes(), weight);
        });
        return tree;
    }

    /** The same nodes with looks that an opening ends before it. */
    private static List<Integer> inTime(Tree tree, Set<String> made, List<Integer> nodes) {
        List<Integer> order = new ArrayList<>();
        List<Integer> left = new ArrayList<>(nodes);
        while (!left.isEmpty()) {
            int next = left.remove(0);
            StripDepth opening = tree.openings.get(next);
            if (tree.looks.get(next).isEmpty() && !made.contains(opening.id())) {
                List<Integer> lost = left.stream()
                        .filter(node -> tree.weights.get(node) >= WORTH)
                        .filter(node -> tree.looks.get(node).stream()
                                .anyMatch(suspect -> opening.ends().contains(suspect.id())))
                        .toList();
                order.addAll(lost);
                left.removeAll(lost);
            }
            order.add(next);
        }
        return order;
    }

    /** Nodes in the order of least weighted completion. */
    private static List<Integer> horn(Tree tree) {
        Map<Integer, Piece> pieces = new LinkedHashMap<>();
        int[] pieceOf = new int[tree.parents.size()];
        for (int i = 0; i < pieceOf.length; i++) {
            pieces.put(i, new Piece(i, tree.minutes.get(i), tree.weights.get(i), List.of(i)));
            pieceOf[i] = i;
        }
        List<Integer> order = new ArrayList<>();
        while (!pieces.isEmpty()) {
            Piece best = pieces.values().stream()
                    .reduce((one, other) -> other.before(one) ? other : one)
                    .orElseThrow();
            pieces.remove(best.first);
            int parent = tree.parents.get(best.first);
            Piece under = parent < 0 ? null : pieces.get(pieceOf[parent]);
            if (under == null) {
                order.addAll(best.nodes);
                continue;
            }
            List<Integer> nodes = new ArrayList<>(under.nodes);
            nodes.addAll(best.nodes);
            pieces.put(
                    under.first,
                    new Piece(under.first, under.minutes + best.minutes, under.weight + best.weight, nodes));
            for (int node : best.nodes) {
                pieceOf[node] = under.first;
            }
        }
        return order;
    }
}
