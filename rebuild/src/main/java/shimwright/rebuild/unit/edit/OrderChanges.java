package shimwright.rebuild.unit.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import shimwright.rebuild.unit.model.Fastener;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.UnitType;

/**
 * What a strip-down changes in a unit file, in sentences.
 *
 * @param added what now waits for what
 * @param dropped what no longer waits for what
 * @param parts new parts, new steps and steps with other words
 * @param bolts bolts with their torque
 */
public record OrderChanges(List<String> added, List<String> dropped, List<String> parts, List<Fastener> bolts) {
    /** The changes from one file to the other. */
    public static OrderChanges of(UnitType was, UnitType now) {
        Map<String, Step> before = byId(was);
        Map<String, Step> then = byId(now);
        List<String> added = new ArrayList<>();
        List<String> dropped = new ArrayList<>();
        List<String> parts = new ArrayList<>();
        List<String> known = was.items().stream().map(Item::id).toList();
        now.items().stream()
                .filter(item -> !known.contains(item.id()))
                .forEach(item -> parts.add("New part: " + item.name() + "."));
        then.forEach((id, step) -> {
            Step old = before.get(id);
            Map<String, Step.Why> had = old == null ? Map.of() : old.after();
            step.after().forEach((other, why) -> {
                if (had.get(other) != why) {
                    String how = why == Step.Why.HABIT ? " (habit)" : "";
                    added.add(words(then, id) + " after " + words(then, other) + how);
                }
            });
            had.forEach((other, why) -> {
                if (!step.after().containsKey(other)) {
                    dropped.add(words(then, id) + " need not wait for " + words(then, other));
                }
            });
            if (old == null) {
                parts.add("New step: " + step.todo());
            } else if (!old.todo().equals(step.todo())) {
                parts.add("Step " + id + " now says: " + step.todo());
            }
        });
        List<String> had = was.fasteners().stream().map(Fastener::id).toList();
        List<Fastener> bolts = now.fasteners().stream()
                .filter(bolt -> !had.contains(bolt.id()))
                .toList();
        return new OrderChanges(List.copyOf(added), List.copyOf(dropped), List.copyOf(parts), bolts);
    }

    /** True where the file says all of it already. */
    public boolean none() {
        return added.isEmpty() && dropped.isEmpty() && parts.isEmpty() && bolts.isEmpty();
    }

    private static Map<String, Step> byId(UnitType type) {
        return type.steps().stream()
                .collect(Collectors.toMap(Step::id, step -> step, (one, two) -> one, LinkedHashMap::new));
    }

    private static String words(Map<String, Step> steps, String id) {
        Step step = steps.get(id);
        String todo = step == null ? id : StripWords.bare(step.todo());
        String less = todo.startsWith("Fit ") ? todo.substring(4) : todo;
        return less.endsWith(".") ? less.substring(0, less.length() - 1) : less;
    }
}
