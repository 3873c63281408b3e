package shimwright.rebuild.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType.Choice;
import shimwright.rebuild.unit.model.UnitType.Side;
import shimwright.rebuild.unit.model.UnitType.Window;

/** Checks a plan against the edges of the unit file alone, without the planner's own order. */
final class PlanCheck {
    private PlanCheck() {}

    /** The edges that hold with these choices: for each step that is to be done, what must be done before. */
    static Map<String, Set<String>> edges(Unit unit, Map<String, String> taken) {
        Set<String> skipped = new HashSet<>();
        List<List<String>> added = new ArrayList<>();
        List<List<String>> dropped = new ArrayList<>();
        for (Choice choice : unit.type().choices()) {
            Side side = Objects.requireNonNull(choice.sides().get(taken.getOrDefault(choice.id(), choice.usual())));
            skipped.addAll(side.skips());
            added.addAll(side.before());
            dropped.addAll(side.drops());
        }
        Map<String, Set<String>> all = new LinkedHashMap<>();
        unit.type()
                .steps()
                .forEach(step ->
                        all.put(step.id(), new LinkedHashSet<>(step.after().keySet())));
        all.values().forEach(before -> before.retainAll(all.keySet()));
        // a step left out counts as done: whoever waited for it waits for what it waited for
        for (String left : skipped) {
            Set<String> its = all.remove(left);
            for (Set<String> before : all.values()) {
                if (before.remove(left)) {
                    before.addAll(its == null ? Set.of() : its);
                }
            }
        }
        for (List<String> pair : added) {
            if (all.containsKey(pair.get(0)) && all.containsKey(pair.get(1))) {
                all.get(pair.get(1)).add(pair.get(0));
            }
        }
        for (List<String> pair : dropped) {
            if (all.containsKey(pair.get(1))) {
                all.get(pair.get(1)).remove(pair.get(0));
            }
        }
        return all;
    }

    /** Fails where the plan is not possible, not whole, or leaves an open window waiting. */
    static void check(Unit unit, Map<String, String> taken, Set<String> done, Plan plan) {
        Map<String, Set<String>> edges = edges(unit, taken);
        Set<String> wanted = new HashSet<>(edges.keySet());
        wanted.removeAll(done);
        assertThat(plan.ahead()).extracting(Step::id).containsExactlyInAnyOrderElementsOf(wanted);
        Set<String> gone = new HashSet<>(done);
        for (Step step : plan.ahead()) {
            Set<String> missing = new HashSet<>(edges.get(step.id()));
            missing.removeAll(gone);
            assertThat(missing).as("what %s still waits for", step.id()).isEmpty();
            windows(unit, edges, gone, step);
            gone.add(step.id());
        }
    }

    private static void windows(Unit unit, Map<String, Set<String>> edges, Set<String> gone, Step step) {
        boolean open = false;
        boolean closing = false;
        for (Window window : unit.type().windows()) {
            if (gone.contains(window.opens())
                    && !window.closes().isBlank()
                    && edges.containsKey(window.closes())
                    && !gone.contains(window.closes())) {
                open = true;
                closing |= leadsTo(edges, step.id(), window.closes());
            }
        }
        assertThat(!open || closing)
                .as("%s is begun while a window is open", step.id())
                .isTrue();
    }

    private static boolean leadsTo(Map<String, Set<String>> edges, String from, String to) {
        if (from.equals(to)) {
            return true;
        }
        Set<String> seen = new HashSet<>(Set.of(to));
        List<String> open = new ArrayList<>(List.of(to));
        while (!open.isEmpty()) {
            for (String before : edges.getOrDefault(open.remove(open.size() - 1), Set.of())) {
                if (before.equals(from)) {
                    return true;
                }
                if (edges.containsKey(before) && seen.add(before)) {
                    open.add(before);
                }
            }
        }
        return false;
    }
}
