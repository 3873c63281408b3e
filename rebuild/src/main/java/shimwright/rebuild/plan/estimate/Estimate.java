package shimwright.rebuild.plan.estimate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;

/**
 * The finishing day of a job that one person does, evening by evening: of the tasks that can be done the first in the plan is
 * done, a task goes on the next evening where it is not finished, nothing is waited for while something can be done.
 */
public final class Estimate {
    private static final int MOST_DRAWS = 100_000;

    private Estimate() {}

    /**
     * The forecast.
     *
     * @param tasks still to be done, in the order of the plan
     * @param arrivals what comes from elsewhere
     * @param evenings when someone stands at the bench
     * @param from the first evening
     * @param draws 100 to 100 000; refused otherwise
     * @param seed of the draws, to be recorded with the forecast
     * @return refused where a task waits for something unknown or for itself in a circle, takes less than no time, where an id
     *     stands twice, or where nobody ever stands at the bench; all faults at once
     */
    public static Outcome<Forecast> of(
            List<UncertainTask> tasks,
            List<Arrival> arrivals,
            Evenings evenings,
            LocalDate from,
            int draws,
            long seed) {
        List<Refusal> faults = faults(tasks, arrivals, evenings, draws);
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        SplittableRandom random = new SplittableRandom(seed);
        LocalDate[] days = new LocalDate[draws];
        double sum = 0;
        double squares = 0;
        Map<String, Integer> critical = new LinkedHashMap<>();
        Stream.concat(arrivals.stream().map(Arrival::id), tasks.stream().map(UncertainTask::id))
                .forEach(id -> critical.put(id, 0));
        for (int draw = 0; draw < draws; draw++) {
            Draw run = new Draw(tasks, arrivals, evenings, from, random);
            if (!run.whole()) {
                return Outcome.refused(Refusal.of(
                        "evenings", "the job would take more than ten years", "Look at the hours and the days off"));
            }
            days[draw] = run.end();
            sum += run.minutes();
            squares += run.minutes() * run.minutes();
            run.path().forEach(id -> critical.merge(id, 1, Integer::sum));
        }
        Arrays.sort(days);
        Map<String, Double> shares = new LinkedHashMap<>();
        critical.forEach((id, times) -> {
            if (times > 0) {
                shares.put(id, (double) times / draws);
            }
        });
        double mean = sum / draws;
        return Outcome.ok(new Forecast(
                days[rank(draws, 0.1)],
                days[rank(draws, 0.5)],
                days[rank(draws, 0.9)],
                mean,
                Math.sqrt(Math.max(0, squares / draws - mean * mean)),
                shares,
                draws,
                seed));
    }

    private static int rank(int draws, double share) {
        return (int) Math.ceil(share * draws) - 1;
    }

    private static List<Refusal> faults(
            List<UncertainTask> tasks, List<Arrival> arrivals, Evenings evenings, int draws) {
        List<Refusal> faults = new ArrayList<>();
        if (draws < 100 || draws > MOST_DRAWS) {
            faults.add(Refusal.of("draws", draws + " draws", "Take 100 to " + MOST_DRAWS));
        }
        if (!evenings.sound()) {
            faults.add(Refusal.of(
                    "evenings", "no hours at the bench, or more than the day has", "Say which evenings and how long"));
        }
        Set<String> known = new HashSet<>();
        Stream.concat(arrivals.stream().map(Arrival::id), tasks.stream().map(UncertainTask::id))
                .filter(id -> !known.add(id))
                .forEach(id -> faults.add(Refusal.at(id, "it is named twice", "Name each task and arrival once")));
        for (UncertainTask task : tasks) {
            if (!(task.minutes().least() >= 0)) {
                faults.add(Refusal.at(task.id(), "it may take less than no time", "Take a smaller spread"));
            }
            task.after().forEach((id, hours) -> {
                if (!known.contains(id)) {
                    faults.add(Refusal.at(
                            task.id(), "it waits for " + id + ", which is not there", "Name it or take it out"));
                }
                if (!(hours >= 0 && hours <= 24 * 365)) {
                    faults.add(Refusal.at(task.id(), "it waits " + hours + " h after " + id, "Take 0 h to a year"));
                }
            });
        }
        if (faults.isEmpty()) {
            circle(tasks, arrivals)
                    .forEach(id -> faults.add(
                            Refusal.at(id, "it waits for itself by others", "Take one of them out of the circle")));
        }
        return faults;
    }

    private static List<String> circle(List<UncertainTask> tasks, List<Arrival> arrivals) {
        Set<String> gone = new HashSet<>();
        arrivals.forEach(arrival -> gone.add(arrival.id()));
        List<UncertainTask> left = new ArrayList<>(tasks);
        while (left.removeIf(task -> gone.containsAll(task.after().keySet()) && gone.add(task.id()))) {
            if (left.isEmpty()) {
                break;
            }
        }
        return left.stream().map(UncertainTask::id).toList();
    }
}
