package shimwright.rebuild.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.unit.Step;
import shimwright.rebuild.unit.Unit;
import shimwright.rebuild.unit.UnitType.Window;

/**
 * Lays the steps ahead in a lawful order: every step after all it waits for, an open window closed before anything else
 * is begun, otherwise at the station where the case stands, otherwise as the unit file lists them. The same unit, choices
 * and steps done always give the same plan.
 */
public final class Planner {
    private Planner() {}

    /**
     * The plan from here.
     *
     * @param unit resolved unit
     * @param taken side by choice
     * @param done steps that stand done, in whatever order
     * @return refused where the steps wait for each other in a circle, named in their words
     */
    public static Outcome<Plan> lay(Unit unit, Map<String, String> taken, Set<String> done) {
        Order order = Order.of(unit, taken);
        List<Step> ahead = new ArrayList<>();
        Set<String> gone = new LinkedHashSet<>(done);
        Set<String> todo = new LinkedHashSet<>(order.steps().keySet());
        todo.removeAll(done);
        String station = stationOf(order, done);
        while (!todo.isEmpty()) {
            List<Step> free = todo.stream()
                    .map(id -> step(order, id))
                    .filter(step -> order.free(step.id(), gone))
                    .toList();
            if (free.isEmpty()) {
                return circle(order, todo, gone);
            }
            Set<String> urgent = urgent(unit, order, gone);
            String at = station;
            Step next = free.stream()
                    .min(Comparator.<Step>comparingInt(s -> urgent.contains(s.id()) ? 0 : 1)
                            .thenComparingInt(s -> s.at().equals(at) ? 0 : 1))
                    .orElseThrow();
            ahead.add(next);
            gone.add(next.id());
            todo.remove(next.id());
            station = next.at();
        }
        int total = order.steps().size();
        double minutes = ahead.stream().mapToDouble(Step::duration).sum() / 60;
        return Outcome.ok(new Plan(total, total - ahead.size(), List.copyOf(ahead), minutes));
    }

    private static Step step(Order order, String id) {
        Step step = order.steps().get(id);
        if (step == null) {
            throw new IllegalStateException("no step " + id);
        }
        return step;
    }

    private static String stationOf(Order order, Set<String> done) {
        String station = "";
        for (String id : done) {
            Step step = order.steps().get(id);
            station = step == null ? station : step.at();
        }
        return station;
    }

    /** Steps that lead to the closing of a window that is open. */
    private static Set<String> urgent(Unit unit, Order order, Set<String> gone) {
        Set<String> urgent = new LinkedHashSet<>();
        for (Window window : unit.type().windows()) {
            boolean open = gone.contains(window.opens()) && !gone.contains(window.closes());
            if (open && !window.closes().isBlank() && order.steps().containsKey(window.closes())) {
                urgent.add(window.closes());
                urgent.addAll(order.leadingTo(window.closes()));
            }
        }
        urgent.removeAll(gone);
        return urgent;
    }

    private static Outcome<Plan> circle(Order order, Set<String> todo, Set<String> gone) {
        List<String> path = new ArrayList<>();
        String at = todo.iterator().next();
        while (!path.contains(at)) {
            path.add(at);
            at = order.waitsFor(at, gone).keySet().iterator().next().id();
        }
        List<String> circle = path.subList(path.indexOf(at), path.size());
        String words = circle.stream()
                .map(id -> id + " (" + step(order, id).todo() + ")")
                .collect(Collectors.joining(" waits for "));
        return Outcome.refused(
                "plan",
                "these steps wait for each other: " + words + " waits for " + at,
                "Take another side of a choice, or mend the unit file");
    }
}
