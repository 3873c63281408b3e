package shimwright.rebuild.plan.estimate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shimwright.rebuild.plan.Order;
import shimwright.rebuild.unit.model.Consumable;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Why;
import shimwright.rebuild.unit.model.Unit;

/**
 * Work at the bench.
 *
 * @param id of the step
 * @param after tasks and arrivals that it waits for, each with the hours that must pass after it, 0 or more
 * @param minutes how long it takes
 */
public record UncertainTask(String id, Map<String, Double> after, ThreePoint minutes) {

    /**
     * The tasks of a plan: each step waits for what it waits for in the order, and after a cure for as long as it takes.
     *
     * @param order what waits for what
     * @param ahead steps still to be done, in the order of the plan
     * @param ready seconds to get ready for a step (turning the case, walking, tools), by step; none where it is not named
     * @param spread half-width of the time of a step and of getting ready for it, as a share, 0 to 1: 0.3 is ± 30 %
     */
    public static List<UncertainTask> of(
            Unit unit, Order order, List<Step> ahead, Map<String, Double> ready, double spread) {
        List<String> open = ahead.stream().map(Step::id).toList();
        List<UncertainTask> tasks = new ArrayList<>();
        for (Step step : ahead) {
            Map<String, Double> after = new LinkedHashMap<>();
            order.before().getOrDefault(step.id(), Map.of()).forEach((id, why) -> {
                if (open.contains(id)) {
                    after.put(id, why == Why.WAITS ? cure(unit, unit.step(id)) : 0);
                }
            });
            double minutes = (step.duration() + ready.getOrDefault(step.id(), 0.0)) / 60;
            tasks.add(new UncertainTask(step.id(), after, ThreePoint.plusMinus(minutes, spread * minutes)));
        }
        return List.copyOf(tasks);
    }

    private static double cure(Unit unit, Step step) {
        return step.consumables().stream()
                        .map(unit::consumable)
                        .mapToDouble(Consumable::cure)
                        .max()
                        .orElse(0)
                / 3600;
    }
}
