package shimwright.rebuild.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Why;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType.Choice;
import shimwright.rebuild.unit.model.UnitType.Side;

/**
 * What must come before what, for one unit with its choices taken: the steps that are to be done and, for each, the steps
 * it waits for and why.
 *
 * @param steps steps to be done in file order, by id
 * @param before for each step the steps that must be done first
 */
public record Order(Map<String, Step> steps, Map<String, Map<String, Why>> before) {
    /** What was asked last: one page asks many times, always for one unit with the same choices. */
    private static volatile @Nullable Known last;

    private record Known(Unit unit, Map<String, String> taken, Order order) {}

    /**
     * The order of a unit.
     *
     * @param unit resolved unit
     * @param taken side by choice; a choice without an entry takes its usual side
     */
    public static Order of(Unit unit, Map<String, String> taken) {
        Known known = last;
        if (known != null && known.unit().equals(unit) && known.taken().equals(taken)) {
            return known.order();
        }
        Order order = worked(unit, taken);
        last = new Known(unit, Map.copyOf(taken), order);
        return order;
    }

    private static Order worked(Unit unit, Map<String, String> taken) {
        Set<String> skipped = new LinkedHashSet<>();
        List<List<String>> added = new ArrayList<>();
        List<List<String>> dropped = new ArrayList<>();
        for (Choice choice : unit.type().choices()) {
            Side side = choice.sides().get(taken.getOrDefault(choice.id(), choice.usual()));
            if (side != null) {
                skipped.addAll(side.skips());
                added.addAll(side.before());
                dropped.addAll(side.drops());
            }
        }
        Map<String, Step> steps = new LinkedHashMap<>();
        unit.type().steps().stream()
                .filter(step -> !skipped.contains(step.id()))
                .forEach(step -> steps.put(step.id(), step));
        Map<String, Map<String, Why>> before = new LinkedHashMap<>();
        for (Step step : steps.values()) {
            Map<String, Why> needs = new LinkedHashMap<>();
            step.after().forEach((id, why) -> bridge(unit, steps, id, why, needs, new LinkedHashSet<>()));
            before.put(step.id(), needs);
        }
        for (List<String> pair : added) {
            Map<String, Why> needs = before.get(pair.get(1));
            if (needs != null && steps.containsKey(pair.get(0))) {
                needs.putIfAbsent(pair.get(0), Why.HABIT);
            }
        }
        for (List<String> pair : dropped) {
            Map<String, Why> needs = before.get(pair.get(1));
            if (needs != null) {
                needs.remove(pair.get(0));
            }
        }
        before.replaceAll((id, needs) -> Collections.unmodifiableMap(needs));
        return new Order(Collections.unmodifiableMap(steps), Collections.unmodifiableMap(before));
    }

    /** A step that is left out counts as done, so whoever waited for it waits for what it waited for. */
    private static void bridge(
            Unit unit, Map<String, Step> steps, String id, Why why, Map<String, Why> needs, Set<String> seen) {
        if (steps.containsKey(id)) {
            needs.putIfAbsent(id, why);
        } else if (seen.add(id)) {
            unit.type().steps().stream()
                    .filter(left -> left.id().equals(id))
                    .forEach(
                            left -> left.after().forEach((further, w) -> bridge(unit, steps, further, w, needs, seen)));
        }
    }

    /** Steps this one still waits for, in file order, with why. */
    public Map<Step, Why> waitsFor(String step, Collection<String> done) {
        Map<Step, Why> waiting = new LinkedHashMap<>();
        Map<String, Why> needs = before.getOrDefault(step, Map.of());
        for (Step other : steps.values()) {
            Why why = needs.get(other.id());
            if (why != null && !done.contains(other.id())) {
                waiting.put(other, why);
            }
        }
        return waiting;
    }

    /** True where everything the step waits for is done. */
    public boolean free(String step, Collection<String> done) {
        return done.containsAll(before.getOrDefault(step, Map.of()).keySet());
    }

    /** Steps that wait for this one. */
    public List<Step> waiting(String step) {
        return steps.values().stream()
                .filter(other -> before.getOrDefault(other.id(), Map.of()).containsKey(step))
                .toList();
    }

    /** Everything that leads to a step, the step itself left out. */
    public Set<String> leadingTo(String step) {
        Set<String> found = new LinkedHashSet<>();
        List<String> open = new ArrayList<>(before.getOrDefault(step, Map.of()).keySet());
        while (!open.isEmpty()) {
            String id = open.remove(open.size() - 1);
            if (found.add(id)) {
                open.addAll(before.getOrDefault(id, Map.of()).keySet());
            }
        }
        return found;
    }
}
