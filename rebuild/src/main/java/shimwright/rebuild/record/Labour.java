package shimwright.rebuild.record;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.unit.model.Unit;

/**
 * What the steps done come to at the shop's rate. The time is that of the unit file, not of a clock.
 *
 * @param hours of the steps done, by the durations of the unit file
 * @param amount hours × rate, in the currency
 * @param currency as the rate was typed; empty where none was
 */
public record Labour(double hours, double amount, String currency) {
    private static final Pattern RATE = Pattern.compile("(\\D*?)\\s*(\\d+(?:[.,]\\d{1,2})?)\\s*(\\D*)");
    private static final double HOUR = 3600;

    /** True for a rate with one number in it, such as "60 EUR". */
    public static boolean isRate(String rate) {
        return RATE.matcher(rate.strip()).matches();
    }

    /**
     * Hours × rate of a job.
     *
     * @param rate an hour, as the shop typed it
     * @return empty where no rate is kept or it cannot be read
     */
    public static Optional<Labour> of(Job job, Unit unit, String rate) {
        Matcher read = RATE.matcher(rate.strip());
        if (!read.matches()) {
            return Optional.empty();
        }
        double seconds = job.stepsDone().stream()
                .flatMap(id -> unit.findStep(id).stream())
                .mapToDouble(step -> step.duration())
                .sum();
        double hours = seconds / HOUR;
        double each = Double.parseDouble(read.group(2).replace(',', '.'));
        return Optional.of(new Labour(hours, hours * each, (read.group(1) + read.group(3)).strip()));
    }
}
