package shimwright.rebuild.money;

import java.util.Collection;
import java.util.Optional;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/**
 * What the steps done come to at the shop's rate. The time is that of the unit file, not of a clock.
 *
 * @param hours of the steps done, by the durations of the unit file
 * @param amount hours × rate, in the currency
 * @param currency as the rate was typed; empty where none was
 */
public record Labour(double hours, double amount, String currency) {
    private static final double HOUR = 3600;

    /**
     * Hours × rate of a job.
     *
     * @param rate an hour, as the shop typed it
     * @return empty where no rate is kept or it cannot be read
     */
    public static Optional<Labour> of(Job job, Unit unit, String rate) {
        double hours = planned(unit, job.stepsDone());
        return Rate.of(rate).map(each -> new Labour(hours, hours * each.cents() / 100.0, each.currency()));
    }

    /** Hours of steps by the unit file. */
    static double planned(Unit unit, Collection<String> steps) {
        return steps.stream()
                        .flatMap(id -> unit.findStep(id).stream())
                        .mapToDouble(Step::duration)
                        .sum()
                / HOUR;
    }
}
