package shimwright.rebuild.plan.estimate;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SplittableRandom;

/** One draw of a job: times in minutes since midnight before the first evening. */
final class Draw {
    private static final double DAY = 24 * 60;
    private static final int LONGEST = 3653;
    private static final double DUST = 1e-9;

    private final Evenings evenings;
    private final LocalDate from;
    private final Map<String, Double> done = new HashMap<>();
    private final Map<String, String> cause = new HashMap<>();
    private double now;
    private String last = "";
    private double minutes;
    private boolean whole = true;

    Draw(
            List<UncertainTask> tasks,
            List<Arrival> arrivals,
            Evenings evenings,
            LocalDate from,
            SplittableRandom random) {
        this.evenings = evenings;
        this.from = from;
        for (Arrival arrival : arrivals) {
            double days = from.until(arrival.due(), ChronoUnit.DAYS)
                    + Math.ceil(arrival.late().draw(random) - DUST);
            done.put(arrival.id(), Math.max(0, days) * DAY);
        }
        Map<String, Double> takes = new LinkedHashMap<>();
        tasks.forEach(task -> takes.put(task.id(), task.minutes().draw(random)));
        now = bench(0);
        List<UncertainTask> left = new ArrayList<>(tasks);
        while (!left.isEmpty() && whole) {
            UncertainTask next = next(left);
            left.remove(next);
            work(next, Objects.requireNonNull(takes.get(next.id())));
        }
    }

    /** The first that can be done now; else the one that can be done soonest. */
    private UncertainTask next(List<UncertainTask> left) {
        UncertainTask soonest = left.get(0);
        double when = Double.POSITIVE_INFINITY;
        for (UncertainTask task : left) {
            double ready = ready(task);
            if (ready <= now + DUST) {
                return task;
            }
            if (ready < when) {
                when = ready;
                soonest = task;
            }
        }
        return soonest;
    }

    /** When all that the task waits for is there; infinity where some of it is not done. */
    private double ready(UncertainTask task) {
        double ready = 0;
        for (Map.Entry<String, Double> wait : task.after().entrySet()) {
            double end = done.getOrDefault(wait.getKey(), Double.POSITIVE_INFINITY);
            ready = Math.max(ready, end + 60 * wait.getValue());
        }
        return ready;
    }

    private void work(UncertainTask task, double takes) {
        double ready = ready(task);
        String why = last;
        if (ready > now + DUST) {
            for (Map.Entry<String, Double> wait : task.after().entrySet()) {
                double end = done.getOrDefault(wait.getKey(), 0.0) + 60 * wait.getValue();
                why = end >= ready - DUST ? wait.getKey() : why;
            }
            now = bench(ready);
        }
        cause.put(task.id(), why);
        double open = takes;
        while (open > DUST && whole) {
            double until = Math.floor(now / DAY) * DAY + begin() + length(now);
            double part = Math.min(open, until - now);
            open -= part;
            now += part;
            if (open > DUST) {
                now = bench(now);
            }
        }
        minutes += takes;
        done.put(task.id(), now);
        last = task.id();
    }

    private double begin() {
        return evenings.begin().toSecondOfDay() / 60.0;
    }

    private double length(double at) {
        return evenings.minutes(from.plusDays((long) Math.floor(at / DAY)));
    }

    /** The first moment at or after this one at which someone stands at the bench with time left. */
    private double bench(double at) {
        double day = Math.floor(at / DAY);
        for (int tried = 0; tried < LONGEST && day < LONGEST; tried++, day++) {
            double start = Math.max(at, day * DAY + begin());
            if (start < day * DAY + begin() + length(day * DAY) - DUST) {
                return start;
            }
        }
        whole = false;
        return at;
    }

    boolean whole() {
        return whole;
    }

    LocalDate end() {
        return from.plusDays((long) Math.floor(Math.max(0, now - DUST) / DAY));
    }

    double minutes() {
        return minutes;
    }

    /** What set the end: from the last task back, each time what it waited for or the task before it at the bench. */
    Set<String> path() {
        Set<String> path = new LinkedHashSet<>();
        for (String at = last; !at.isEmpty() && path.add(at); ) {
            at = cause.getOrDefault(at, "");
        }
        return path;
    }
}
