package shimwright.rebuild.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Why;

/** What can no longer be reached, or no longer be measured, once a step is taken. */
public final class LastCall {
    private LastCall() {}

    /**
     * One thing shut in by a step.
     *
     * @param step the earlier step that cannot be done or read any more afterwards
     * @param measured true where it is a reading that is lost, false where it is access
     */
    public record Call(Step step, boolean measured) {}

    /**
     * What the step shuts in: the earlier steps that had to be done or read before it for reasons of access or
     * measurement.
     */
    public static List<Call> at(Order order, String step) {
        List<Call> calls = new ArrayList<>();
        Map<String, Why> needs = order.before().getOrDefault(step, Map.of());
        needs.forEach((id, why) -> {
            Step earlier = order.steps().get(id);
            if (earlier != null && (why == Why.BLOCKED || why == Why.MEASURE_FIRST)) {
                calls.add(new Call(earlier, why == Why.MEASURE_FIRST));
            }
        });
        return List.copyOf(calls);
    }
}
