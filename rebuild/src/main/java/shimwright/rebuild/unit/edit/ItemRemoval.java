package shimwright.rebuild.unit.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shimwright.rebuild.unit.model.Component;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Section;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.UnitType;

/** A unit type without one of its items. */
final class ItemRemoval {
    private ItemRemoval() {}

    static UnitType of(UnitType type, String id) {
        List<Item> items =
                type.items().stream().filter(item -> !item.id().equals(id)).toList();
        List<Step> without = new ArrayList<>();
        Map<String, Step> gone = new LinkedHashMap<>();
        for (Step step : type.steps()) {
            Step less = without(step, id);
            boolean fits = fits(step)
                    && !fits(less)
                    && less.fasteners().isEmpty()
                    && less.clearance().isEmpty();
            if (fits) {
                gone.put(step.id(), step);
            } else {
                without.add(less);
            }
        }
        List<Step> steps = without.stream().map(step -> passed(step, gone)).toList();
        return Component.with(undrawn(Component.with(type, "items", items), id), "steps", steps);
    }

    private static Step without(Step step, String id) {
        Step less = Component.with(step, "builds", less(step.builds(), id));
        less = Component.with(less, "installs", less(step.installs(), id));
        return Component.with(less, "removes", less(step.removes(), id));
    }

    private static List<String> less(List<String> ids, String id) {
        return ids.stream().filter(one -> !one.equals(id)).toList();
    }

    private static boolean fits(Step step) {
        return !step.builds().isEmpty()
                || !step.installs().isEmpty()
                || !step.removes().isEmpty();
    }

    /** What waited for a step that is gone waits for what that one waited for. */
    private static Step passed(Step step, Map<String, Step> gone) {
        Map<String, Step.Why> after = new LinkedHashMap<>();
        Map<String, String> because = new LinkedHashMap<>();
        pass(step, gone, after, because, new LinkedHashSet<>());
        return Component.with(Component.with(step, "after", after), "because", because);
    }

    private static void pass(
            Step step,
            Map<String, Step> gone,
            Map<String, Step.Why> after,
            Map<String, String> because,
            Set<String> seen) {
        step.after().forEach((before, why) -> {
            Step through = gone.get(before);
            if (through == null) {
                after.putIfAbsent(before, why);
                if (step.because().containsKey(before)) {
                    because.putIfAbsent(before, step.because().get(before));
                }
            } else if (seen.add(before)) {
                pass(through, gone, after, because, seen);
            }
        });
    }

    /** The drawing without what named the item. */
    private static UnitType undrawn(UnitType type, String id) {
        Section section = type.section();
        List<Section.Shaft> shafts = section.shafts().stream()
                .map(s -> s.item().equals(id) ? Component.with(s, "item", "") : s)
                .toList();
        List<Section.Outline> castings = section.castings().stream()
                .filter(outline -> !outline.item().equals(id))
                .toList();
        return Component.with(type, "section", new Section(shafts, castings, section.scheme()));
    }
}
