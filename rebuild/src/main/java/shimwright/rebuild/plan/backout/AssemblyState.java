package shimwright.rebuild.plan.backout;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shimwright.rebuild.plan.Order;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/**
 * How the unit stands: the steps done in the order in which they were done, and which of them holds each item.
 *
 * @param unit resolved unit
 * @param order what waits for what
 * @param done steps done; those that the choices leave out are passed over
 * @param fittedBy for each item in the unit the step that put it there
 * @param builtBy for each item on a sub-assembly the step that put it there
 */
record AssemblyState(Unit unit, Order order, List<Step> done, Map<String, Step> fittedBy, Map<String, Step> builtBy) {

    static AssemblyState of(Unit unit, Map<String, String> taken, Collection<String> done) {
        Order order = Order.of(unit, taken);
        List<Step> steps = new ArrayList<>();
        Map<String, Step> fitted = new LinkedHashMap<>();
        Map<String, Step> built = new LinkedHashMap<>();
        for (String id : done) {
            Step step = order.steps().get(id);
            if (step != null && !steps.contains(step)) {
                steps.add(step);
                step.removes().forEach(fitted::remove);
                step.installs().forEach(item -> fitted.put(item, step));
                step.builds().forEach(item -> built.put(item, step));
            }
        }
        return new AssemblyState(unit, order, List.copyOf(steps), fitted, built);
    }

    /** Place of each step done in the order of doing. */
    Map<String, Integer> index() {
        Map<String, Integer> index = new HashMap<>();
        for (int i = 0; i < done.size(); i++) {
            index.put(done.get(i).id(), i);
        }
        return index;
    }

    /** Items that a step holds now. */
    List<String> held(Step step) {
        List<String> held = new ArrayList<>();
        step.installs().stream().filter(item -> step.equals(fittedBy.get(item))).forEach(held::add);
        step.builds().stream()
                .filter(item -> step.equals(builtBy.get(item)) && !held.contains(item))
                .forEach(held::add);
        return held;
    }

    /**
     * Minutes to undo a step: none for a reading, for a step that takes out, and where what it put in came out again since.
     */
    double undoMinutes(Step step, Tariff tariff) {
        boolean puts = !step.installs().isEmpty() || !step.builds().isEmpty();
        boolean bolts = !step.fasteners().isEmpty() || step.undo() != Step.Undo.FREE;
        boolean stands = puts ? !held(step).isEmpty() : bolts && step.removes().isEmpty();
        double seconds = step.undoTime() > 0 ? step.undoTime() : tariff.share(step.undo()) * step.duration();
        return stands ? seconds / 60 : 0;
    }
}
