package shimwright.rebuild.unit.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Section;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.UnitKeys;
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
            Step less = TypeParts.fitting(step, without(step.parts(), id));
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
        return TypeParts.withSteps(undrawn(TypeParts.withItems(type, items), id), steps);
    }

    private static Step.Parts without(Step.Parts p, String id) {
        return new Step.Parts(
                less(p.builds(), id),
                less(p.installs(), id),
                less(p.removes(), id),
                p.fasteners(),
                p.tightened(),
                p.consumables());
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
        return TypeParts.ordered(step, new Step.Order(after, because));
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
                .map(s -> s.item().equals(id)
                        ? new Section.Shaft(s.id(), s.name(), s.axis(), s.at(), s.steps(), s.bores(), "", s.drawn())
                        : s)
                .toList();
        List<Section.Outline> castings = section.castings().stream()
                .filter(outline -> !outline.item().equals(id))
                .toList();
        UnitKeys.Parts p = type.parts();
        return TypeParts.with(
                type,
                new UnitKeys.Parts(
                        p.items(),
                        new Section(shafts, castings, section.scheme()),
                        p.gears(),
                        p.bearings(),
                        p.seals(),
                        p.splines(),
                        p.fits(),
                        p.fasteners()));
    }
}
