package shimwright.rebuild.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shimwright.rebuild.plan.model.Risk;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Why;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType.HoldPoint;

/**
 * The price of late finds: where a hold point is not accepted, the steps that it reopens are done again, and what stands on
 * them comes apart first. A step that stands on one of them and is done before the hold point though it need not be costs,
 * on average, the chance times the time to undo it and to do it again.
 */
final class LateFindRisk {
    private final Order order;
    private final Map<String, Set<String>> leading;
    /** Of each step those that stand right upon it. */
    private final Map<String, List<String>> upon = new HashMap<>();

    private LateFindRisk(Order order, Map<String, Set<String>> leading) {
        this.order = order;
        this.leading = leading;
        order.before()
                .forEach((later, needs) -> needs.forEach((earlier, why) -> {
                    if (physical(why)) {
                        upon.computeIfAbsent(earlier, key -> new ArrayList<>()).add(later);
                    }
                }));
    }

    /**
     * Risks among the steps still to be done.
     *
     * @param leading of each step all that leads to it
     */
    static List<Risk> of(Unit unit, Order order, Set<String> done, Map<String, Set<String>> leading) {
        LateFindRisk finds = new LateFindRisk(order, leading);
        List<Risk> risks = new ArrayList<>();
        for (Step find : order.steps().values()) {
            if (!find.hold().isEmpty() && !done.contains(find.id())) {
                HoldPoint hold = unit.holdPoint(find.hold());
                if (hold.chance() > 0) {
                    finds.standingOn(finds.culprits(find, hold), find).forEach(step -> {
                        if (!done.contains(step.id())) {
                            double again = hold.chance() * (step.undoTime() + step.duration());
                            risks.add(new Risk(step.id(), find.id(), again));
                        }
                    });
                }
            }
        }
        return risks;
    }

    private Set<String> before(String id) {
        return leading.getOrDefault(id, Set.of());
    }

    private Set<String> culprits(Step find, HoldPoint hold) {
        Set<String> culprits = new LinkedHashSet<>();
        for (String id : hold.reopens()) {
            if (id.equals(find.id()) || before(find.id()).contains(id)) {
                culprits.add(id);
            }
        }
        return culprits;
    }

    /** Steps that stand on the culprits and need not come after the find, in file order. */
    private List<Step> standingOn(Set<String> culprits, Step find) {
        Set<String> on = new HashSet<>(culprits);
        List<String> further = new ArrayList<>(culprits);
        while (!further.isEmpty()) {
            for (String next : upon.getOrDefault(further.remove(further.size() - 1), List.of())) {
                if (on.add(next)) {
                    further.add(next);
                }
            }
        }
        on.removeAll(culprits);
        on.remove(find.id());
        return order.steps().values().stream()
                .filter(step -> on.contains(step.id()))
                .filter(step -> !before(step.id()).contains(find.id()) && !outAgain(step, find))
                .toList();
    }

    private static boolean physical(Why why) {
        return why != Why.HABIT && why != Why.WAITS;
    }

    /** True where what the step put in is out again before the find in every order. */
    private boolean outAgain(Step step, Step find) {
        return !step.installs().isEmpty()
                && order.steps().values().stream()
                        .anyMatch(out -> before(find.id()).contains(out.id())
                                && before(out.id()).contains(step.id())
                                && out.removes().containsAll(step.installs()));
    }
}
