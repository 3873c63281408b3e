package shimwright.rebuild.rules;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.plan.BuildState;
import shimwright.rebuild.supply.HeldUp;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/** What a plan starts from, as the job's log has it. */
public final class BuildStateFromLog {
    private static final double DAY = Duration.ofDays(1).toSeconds();

    private BuildStateFromLog() {}

    /**
     * What stands done, how long ago each step was done, and what is on its way: what was ordered or sent out comes at noon
     * of the day on which it is due or, where that has passed, a day from now; so does, at the earliest, what must be new and nobody has
     * ordered.
     *
     * @param unit as the job builds it
     * @param now steps said to be done after it count as done now
     * @param zone of the shop, in which days begin
     */
    public static BuildState present(Job job, Unit unit, Instant now, ZoneId zone) {
        Map<String, Double> ago = new LinkedHashMap<>();
        job.doneAt().forEach((step, at) -> ago.put(step, Math.max(0, seconds(at, now))));
        Map<String, Double> arrives = new LinkedHashMap<>();
        for (Step step : unit.type().steps()) {
            job.awaited(step).forEach(said -> {
                Instant due =
                        said.what().due().atTime(LocalTime.NOON).atZone(zone).toInstant();
                double wait = due.isAfter(now) ? seconds(now, due) : DAY;
                arrives.merge(step.id(), wait, Math::max);
            });
        }
        HeldUp.of(unit, job).keySet().forEach(step -> arrives.merge(step, DAY, Math::max));
        return new BuildState(List.copyOf(job.stepsDone()), true, ago, arrives);
    }

    private static double seconds(Instant from, Instant to) {
        return Duration.between(from, to).toMillis() / 1000.0;
    }
}
