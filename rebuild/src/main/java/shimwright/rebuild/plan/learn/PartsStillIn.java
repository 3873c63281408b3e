package shimwright.rebuild.plan.learn;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/**
 * What is still in a box while it is stripped.
 *
 * @param next parts that nothing known holds, the one that goes in last first: they are the likeliest to come off next
 * @param later the others, in the same order
 */
public record PartsStillIn(List<Item> next, List<Item> later) {
    /** So many of the last things off are offered as having been in the way of the next. */
    public static final int LARGE = 6;

    public PartsStillIn {
        next = List.copyOf(next);
        later = List.copyOf(later);
    }

    /**
     * The parts of a unit that have not come off.
     *
     * @param off items that came off, by id
     */
    public static PartsStillIn of(Unit unit, Set<String> off) {
        List<Step> steps = unit.type().steps();
        Map<String, Step> fitted = new LinkedHashMap<>();
        Map<Step, Set<String>> brings = new LinkedHashMap<>();
        for (Step step : steps) {
            Set<String> items = new HashSet<>();
            Stream.concat(step.builds().stream(), step.installs().stream())
                    .filter(item -> fitted.putIfAbsent(item, step) == null)
                    .forEach(items::add);
            brings.put(step, items);
        }
        Set<String> held = held(steps, brings, off);
        List<Item> next = new ArrayList<>();
        List<Item> later = new ArrayList<>();
        List<Item> all = unit.type().items().stream()
                .filter(item -> !item.trial() && !off.contains(item.id()))
                .sorted((a, b) -> Integer.compare(place(steps, fitted, b), place(steps, fitted, a)))
                .toList();
        all.forEach(item -> {
            Step step = fitted.get(item.id());
            (step != null && !held.contains(step.id()) ? next : later).add(item);
        });
        return new PartsStillIn(next, later);
    }

    private static int place(List<Step> steps, Map<String, Step> fitted, Item item) {
        Step step = fitted.get(item.id());
        return step == null ? -1 : steps.indexOf(step);
    }

    /** Steps that stand under another one which still holds a part; habit holds nothing. */
    private static Set<String> held(List<Step> steps, Map<Step, Set<String>> brings, Set<String> off) {
        Set<String> held = new HashSet<>();
        for (int i = steps.size() - 1; i >= 0; i--) {
            Step step = steps.get(i);
            boolean stands = held.contains(step.id()) || !off.containsAll(brings.getOrDefault(step, Set.of()));
            if (stands) {
                step.after().forEach((before, why) -> {
                    if (why != Step.Why.HABIT) {
                        held.add(before);
                    }
                });
            }
        }
        return held;
    }
}
