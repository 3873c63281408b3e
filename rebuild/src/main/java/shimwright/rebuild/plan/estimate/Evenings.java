package shimwright.rebuild.plan.estimate;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Map;
import java.util.Set;

/**
 * When someone stands at the bench.
 *
 * @param begin time of day at which every evening begins
 * @param hours hours by day of the week, 0 to what is left of the day; a day left out has none
 * @param off days on which there is none after all
 */
public record Evenings(LocalTime begin, Map<DayOfWeek, Double> hours, Set<LocalDate> off) {
    double minutes(LocalDate day) {
        return off.contains(day) ? 0 : 60 * hours.getOrDefault(day.getDayOfWeek(), 0.0);
    }

    boolean sound() {
        double left = 24 - begin.toSecondOfDay() / 3600.0;
        return hours.values().stream().allMatch(h -> h >= 0 && h <= left)
                && hours.values().stream().anyMatch(h -> h > 0);
    }
}
