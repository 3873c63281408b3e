package shimwright.rebuild.money;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.Mistakes;
import shimwright.rebuild.learn.Memories;

/**
 * Time at the bench as the log tells it: from one entry to the next where they lie close enough together. What was done and not kept
 * is not in it, nor is the time before the first entry of an evening.
 *
 * @param byDay hours, by day of the shop's zone
 */
public record WorkTime(Map<LocalDate, Double> byDay) {
    private static final double MILLIS_AN_HOUR = 3_600_000;

    public WorkTime {
        byDay = Collections.unmodifiableMap(new LinkedHashMap<>(byDay));
    }

    /** The time of a job; what was struck does not count. */
    public static WorkTime of(Job job, ZoneId zone) {
        Map<LocalDate, Double> days = new LinkedHashMap<>();
        Set<String> mistakes = Mistakes.of(job);
        @Nullable Instant before = null;
        for (LogEntry kept : job.entries()) {
            if (mistakes.contains(kept.draft().id())) {
                continue;
            }
            Instant at = kept.draft().at();
            if (before != null) {
                Duration gap = Duration.between(before, at);
                if (!gap.isNegative() && gap.compareTo(Memories.AT_ONE_GO) <= 0) {
                    days.merge(at.atZone(zone).toLocalDate(), gap.toMillis() / MILLIS_AN_HOUR, Double::sum);
                }
            }
            before = at;
        }
        days.values().removeIf(hours -> hours == 0);
        return new WorkTime(days);
    }

    /** All of it, hours. */
    public double hours() {
        return byDay.values().stream().mapToDouble(hours -> hours).sum();
    }
}
