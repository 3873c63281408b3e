package shimwright.rebuild.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shimwright.rebuild.unit.model.Step.Why;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType.Window;

/** Clocks that run of which nobody says since when. */
final class UnknownTimes {
    private UnknownTimes() {}

    /** The remark that a clock is counted from now; empty where every time is known. */
    static Optional<String> unknown(Unit unit, Order order, BuildState present) {
        Set<String> done = Set.copyOf(present.done());
        Set<String> steps = new LinkedHashSet<>();
        for (Window window : unit.type().windows()) {
            boolean runs = done.contains(window.opens())
                    && order.steps().containsKey(window.closes())
                    && !done.contains(window.closes());
            if (runs) {
                steps.add(window.opens());
            }
        }
        order.before().forEach((to, needs) -> {
            if (!done.contains(to)) {
                needs.forEach((from, why) -> {
                    if (why == Why.WAITS && done.contains(from)) {
                        steps.add(from);
                    }
                });
            }
        });
        List<String> unknown = new ArrayList<>(steps);
        unknown.removeAll(Map.copyOf(present.ago()).keySet());
        return unknown.isEmpty()
                ? Optional.empty()
                : Optional.of("How long ago " + String.join(", ", unknown)
                        + " was done is not known here, so its clock counts from now.");
    }
}
