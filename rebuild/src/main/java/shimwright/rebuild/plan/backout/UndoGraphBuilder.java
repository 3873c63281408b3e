package shimwright.rebuild.plan.backout;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import shimwright.rebuild.unit.model.Clearance.Position;
import shimwright.rebuild.unit.model.Opening;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Phase;

/** Turns a standing unit and what is asked of it into nodes: one a step done, one an opening to an item, one a target. */
final class UndoGraphBuilder {
    private final AssemblyState standing;
    private final Map<String, Integer> index;
    private final List<Double> cost = new ArrayList<>();
    private final List<List<int[]>> blockers = new ArrayList<>();
    private final List<String> through = new ArrayList<>();

    UndoGraphBuilder(AssemblyState standing, Tariff tariff) {
        this.standing = standing;
        this.index = standing.index();
        for (Step step : standing.done()) {
            double loss = step.oneWay() ? tariff.loss() : 0;
            add(standing.undoMinutes(step, tariff) + step.duration() / 60 + loss, new ArrayList<>(), "");
        }
        for (Step step : standing.done()) {
            int at = node(step);
            Set<String> before =
                    standing.order().before().getOrDefault(step.id(), Map.of()).keySet();
            for (String earlier : before) {
                Integer node = index.get(earlier);
                if (node != null) {
                    blockers.get(node).add(new int[] {at});
                }
            }
        }
    }

    private int node(Step step) {
        Integer node = index.get(step.id());
        if (node == null) {
            throw new IllegalStateException(step.id() + " is not done");
        }
        return node;
    }

    private int add(double price, List<int[]> sets, String name) {
        cost.add(price);
        blockers.add(sets);
        through.add(name);
        return cost.size() - 1;
    }

    private int all(List<Integer> nodes, String name) {
        List<int[]> sets = new ArrayList<>();
        nodes.stream().distinct().forEach(node -> sets.add(new int[] {node}));
        return add(0, sets, name);
    }

    /** The node of a target; its id must be one of the unit's. */
    int of(Target target) {
        if (target instanceof Target.OfStep step) {
            return all(nodes(Stream.of(step.id())), "");
        }
        if (target instanceof Target.OfClearance clearance) {
            return all(clearance(clearance.id()), "");
        }
        Target.OfItem item = (Target.OfItem) target;
        return switch (item.want()) {
            case OUT -> all(holders(item.id(), false), "");
            case RENEW -> all(holders(item.id(), true), "");
            case REACH -> reach(item.id());
        };
    }

    private List<Integer> nodes(Stream<String> steps) {
        return steps.map(index::get).filter(node -> node != null).toList();
    }

    private List<Integer> holders(String item, boolean alone) {
        @Nullable Step fitted = standing.fittedBy().get(item);
        @Nullable Step built = alone ? standing.builtBy().get(item) : null;
        return nodes(Stream.of(fitted, built).filter(step -> step != null).map(Step::id));
    }

    private int reach(String item) {
        List<Integer> ways = new ArrayList<>();
        if (standing.fittedBy().containsKey(item)) {
            for (Opening opening : standing.unit().type().openings()) {
                if (opening.reaches().contains(item)) {
                    ways.add(all(nodes(opening.shutBy().stream()), opening.name()));
                }
            }
        }
        ways.add(all(holders(item, false), ""));
        return add(0, new ArrayList<>(List.of(ways.stream().mapToInt(way -> way).toArray())), "");
    }

    /** The pack out: whatever holds its pieces; and the readings that were taken with it. */
    private List<Integer> clearance(String id) {
        List<Integer> nodes = new ArrayList<>();
        for (Position position : standing.unit().clearance(id).positions()) {
            nodes.addAll(holders(position.item(), true));
        }
        for (Phase phase : List.of(Phase.FINAL, Phase.AGAIN)) {
            nodes.addAll(nodes(standing.unit().stepsReading(id, phase).stream().map(Step::id)));
        }
        return nodes;
    }

    UndoGraph needs() {
        return new UndoGraph(cost.stream().mapToDouble(c -> c).toArray(), blockers);
    }

    /** The steps in a set of nodes, in the order of doing. */
    List<Step> steps(BitSet set) {
        return set.stream()
                .filter(node -> node < standing.done().size())
                .mapToObj(standing.done()::get)
                .toList();
    }

    /** The opening that a set of nodes goes through; empty for none. */
    String through(BitSet set) {
        return set.stream()
                .mapToObj(through::get)
                .filter(name -> !name.isEmpty())
                .findFirst()
                .orElse("");
    }
}
