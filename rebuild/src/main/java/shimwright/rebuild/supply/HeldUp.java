package shimwright.rebuild.supply;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.LastAsked;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/**
 * Steps that cannot be done because something that they fit must be new and is neither ordered nor here. What is reused holds nothing
 * up, nor does what the unit file does not list.
 */
public final class HeldUp {
    private static final LastAsked<Map<String, List<Need>>> LAST = new LastAsked<>();

    private HeldUp() {}

    /** What holds up each step that is not done, in the order of the unit's steps; a step that nothing holds up is not there. */
    public static Map<String, List<Need>> of(Unit unit, Job job) {
        return LAST.of(unit, job, () -> byStep(unit, job));
    }

    private static Map<String, List<Need>> byStep(Unit unit, Job job) {
        List<Need> needs = Needs.of(unit, job, true, OneNumber.EACH);
        Map<String, List<Need>> byStep = new LinkedHashMap<>();
        for (Step step : needs.isEmpty() ? List.<Step>of() : unit.type().steps()) {
            List<Need> missing =
                    needs.stream().filter(need -> fits(step, need.items())).toList();
            if (!missing.isEmpty() && !job.stepsDone().contains(step.id())) {
                byStep.put(step.id(), missing);
            }
        }
        return Collections.unmodifiableMap(byStep);
    }

    /** Whether a step puts one of the items in, or onto something that goes in. */
    public static boolean fits(Step step, List<String> items) {
        return Stream.concat(step.installs().stream(), step.builds().stream()).anyMatch(items::contains);
    }
}
