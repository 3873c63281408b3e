package shimwright.rebuild.unit.edit;

import java.util.List;
import java.util.Map;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.unit.model.Component;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.UnitType;

/**
 * What steps took in this shop takes the place of the usual times.
 *
 * @param seconds by step; of a step that the file does not have it is left
 * @param origin where they come from: measured, on which jobs
 */
public record OwnTimes(Map<String, Double> seconds, String origin) implements UnitEdit {
    public OwnTimes {
        seconds = Map.copyOf(seconds);
    }

    @Override
    public Outcome<UnitType> on(UnitType type) {
        List<Step> steps = type.steps().stream()
                .map(step -> {
                    Double own = seconds.get(step.id());
                    return own == null ? step : timed(step, own);
                })
                .toList();
        return Outcome.ok(Component.with(type, "steps", steps));
    }

    private Step timed(Step step, double own) {
        return Component.with(Component.with(step, "duration", own), "origin", origin);
    }

    @Override
    public String words() {
        return "the shop's own times";
    }
}
