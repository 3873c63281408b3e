package shimwright.rebuild.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import shimwright.rebuild.plan.model.Cost;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.verify.OrderVerifier;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType.Window;

/** What it takes to get ready for each step of a plan. */
public final class StepSetUps {
    private StepSetUps() {}

    /**
     * Turning the case over, walking and laying out tools just before each step, in the order of the plan; together they are
     * what the plan's cost has of the three.
     *
     * @param taken side by choice
     * @param present what is done and on its way, as the plan was laid for it
     * @return seconds by step, 0 or more, in the order of the plan
     */
    public static Map<String, Double> before(Unit unit, Map<String, String> taken, BuildState present, Plan plan) {
        Set<String> late = plan.late().stream().map(Window::id).collect(Collectors.toSet());
        SequencingProblem problem = UnitProblem.of(unit, Order.of(unit, taken), present, late);
        Map<String, Double> ready = new LinkedHashMap<>();
        List<String> sofar = new ArrayList<>();
        double told = 0;
        for (Step step : plan.ahead()) {
            sofar.add(step.id());
            Cost cost = OrderVerifier.follow(problem, sofar).cost();
            double all = cost.turning() + cost.walking() + cost.tools();
            ready.put(step.id(), Math.max(0, all - told));
            told = all;
        }
        return ready;
    }
}
