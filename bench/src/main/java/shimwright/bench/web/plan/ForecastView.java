package shimwright.bench.web.plan;

import io.javalin.http.Context;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.web.kit.Door;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.plan.BuildState;
import shimwright.rebuild.plan.Plan;
import shimwright.rebuild.plan.StepSetUps;
import shimwright.rebuild.plan.estimate.Arrival;
import shimwright.rebuild.plan.estimate.Estimate;
import shimwright.rebuild.plan.estimate.Evenings;
import shimwright.rebuild.plan.estimate.Forecast;
import shimwright.rebuild.plan.estimate.ThreePoint;
import shimwright.rebuild.plan.estimate.UncertainTask;
import shimwright.rebuild.unit.model.Step;

/**
 * When the job will be done, asked for on the plan page; nothing is worked out before the hours are said.
 *
 * @param asked what was typed, or what was typed last time
 * @param forecast the answer; null where nothing was asked or it was refused
 * @param faults why it was refused
 * @param path steps and arrivals that set the last day, the most frequent first, with their share
 * @param open steps for which something must be new that is neither ordered nor here, and for which no day was typed
 */
public record ForecastView(
        Map<String, String> asked,
        @Nullable Forecast forecast,
        List<Refusal> faults,
        Map<String, Double> path,
        List<String> open) {
    private static final int DRAWS = 2000;
    private static final long SEED = 20260101L;
    private static final int MOST_SHOWN = 12;
    private static final int LONGEST_BAR = 60;
    /** What stands in the form before anyone typed anything; it is seen, and kept once it is changed. */
    private static final Map<String, String> FIRST = Map.of("begin", "18:00", "hours", "2", "spread", "30");

    private static final Pattern TIME = Pattern.compile("(\\d{1,2})(?:[:.](\\d{2}))?");

    /** How long the bar of a share is, in percent of the line. */
    public static long barWidth(double share) {
        return Math.round(share * LONGEST_BAR);
    }

    static ForecastView of(Context ctx, Door door, JobOnBench bench, Plan plan, LocalDate today) {
        Map<String, String> asked = new LinkedHashMap<>();
        for (String name : List.of("begin", "hours", "spread", "arrives")) {
            String typed = ctx.queryParam(name);
            String kept = FIRST.containsKey(name) ? door.remembered(ctx, "evening-" + name) : "";
            String known = name.equals("arrives") ? awaited(bench, plan, today) : first(bench, name);
            String first = kept.isEmpty() ? known : kept;
            asked.put(name, typed == null ? first : typed.strip());
        }
        if (ctx.queryParam("hours") == null) {
            return new ForecastView(asked, null, List.of(), Map.of(), List.of());
        }
        List<Refusal> faults = new ArrayList<>();
        Evenings evenings = evenings(asked.getOrDefault("begin", ""), asked.getOrDefault("hours", ""), faults);
        double spread = number(
                        asked.getOrDefault("spread", ""),
                        "spread",
                        "how far a step may take longer or shorter",
                        0,
                        90,
                        faults)
                / 100;
        Map<String, Arrival> arrivals = arrivals(asked.getOrDefault("arrives", ""), bench, faults);
        if (!faults.isEmpty()) {
            return new ForecastView(asked, null, List.copyOf(faults), Map.of(), List.of());
        }
        FIRST.keySet().forEach(name -> door.remember(ctx, "evening-" + name, asked.getOrDefault(name, "")));
        BuildState present = BuildState.inOrder(List.copyOf(bench.job().stepsDone()));
        Map<String, Double> ready = StepSetUps.before(bench.unit(), bench.job().sides(), present, plan);
        List<UncertainTask> tasks = UncertainTask.of(bench.unit(), bench.order(), plan.ahead(), ready, spread).stream()
                .map(task -> waiting(task, arrivals))
                .toList();
        Outcome<Forecast> forecast = Estimate.of(tasks, List.copyOf(arrivals.values()), evenings, today, DRAWS, SEED);
        return forecast instanceof Outcome.Ok<Forecast> ok
                ? new ForecastView(asked, ok.value(), List.of(), path(ok.value()), open(bench, plan, arrivals))
                : new ForecastView(asked, null, forecast.refusals(), Map.of(), List.of());
    }

    private static List<String> open(JobOnBench bench, Plan plan, Map<String, Arrival> arrivals) {
        return plan.ahead().stream()
                .map(Step::id)
                .filter(id -> bench.bench().heldUp().containsKey(id) && !arrivals.containsKey(id))
                .toList();
    }

    /** What was ordered and is not here yet, as one would type it; what is overdue comes tomorrow at the earliest. */
    private static String awaited(JobOnBench bench, Plan plan, LocalDate today) {
        Map<String, String> lines = new LinkedHashMap<>();
        for (Step step : plan.ahead()) {
            for (Job.Said<Entry.Sent> said : bench.job().awaited(step)) {
                LocalDate due = said.what().due().isBefore(today)
                        ? today.plusDays(1)
                        : said.what().due();
                lines.putIfAbsent(
                        said.id(), step.id() + " " + due + " " + said.what().late());
            }
        }
        return String.join("\n", lines.values());
    }

    private static LocalDate end(Arrival arrival) {
        return arrival.due().plusDays(Math.round(arrival.late().most()));
    }

    private static Map<String, Double> path(Forecast forecast) {
        Map<String, Double> path = new LinkedHashMap<>();
        forecast.critical().entrySet().stream()
                .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
                .limit(MOST_SHOWN)
                .forEach(e -> path.put(e.getKey(), e.getValue()));
        return path;
    }

    private static UncertainTask waiting(UncertainTask task, Map<String, Arrival> arrivals) {
        Arrival arrival = arrivals.get(task.id());
        if (arrival == null) {
            return task;
        }
        Map<String, Double> after = new LinkedHashMap<>(task.after());
        after.put(arrival.id(), 0.0);
        return new UncertainTask(task.id(), after, task.minutes());
    }

    /** What the shop says of its evenings, else what is usual. */
    private static String first(JobOnBench bench, String name) {
        String fact = name.equals("begin") ? "begins" : name.equals("hours") ? "evening" : "";
        String said = bench.shop().facts().getOrDefault(fact, "");
        return said.isBlank() ? FIRST.getOrDefault(name, "") : said;
    }

    /** When an evening begins, and seven numbers of hours, Monday first, or one for every day. */
    private static Evenings evenings(String begin, String text, List<Refusal> faults) {
        Matcher time = TIME.matcher(begin);
        int minutes = time.matches()
                ? 60 * Integer.parseInt(time.group(1)) + (time.group(2) == null ? 0 : Integer.parseInt(time.group(2)))
                : 24 * 60;
        if (minutes >= 24 * 60) {
            faults.add(new Refusal(
                    "begin",
                    "when an evening begins",
                    begin.isEmpty() ? "nothing typed" : "\"" + begin + "\" is not a time of day",
                    "Write it as 18:00"));
            minutes = 0;
        }
        String[] parts = text.split("[\\s,;]+");
        Map<DayOfWeek, Double> hours = new LinkedHashMap<>();
        if (parts.length != 1 && parts.length != 7) {
            faults.add(Refusal.of(
                    "hours", parts.length + " numbers", "Give one for every day, or seven from Monday to Sunday"));
        } else {
            double most = Math.floor((24 * 60 - minutes) / 6.0) / 10;
            List<Double> read = Arrays.stream(parts)
                    .map(part -> number(part, "hours", "hours", 0, most, faults))
                    .toList();
            for (DayOfWeek day : DayOfWeek.values()) {
                hours.put(day, read.get(read.size() == 1 ? 0 : day.getValue() - 1));
            }
        }
        return new Evenings(LocalTime.ofSecondOfDay(minutes * 60L), hours, Set.of());
    }

    private static double number(
            String text, String key, String place, double least, double most, List<Refusal> faults) {
        String hint = "Give a number from " + Math.round(least) + " to " + most;
        try {
            double value = Double.parseDouble(text);
            if (value >= least && value <= most) {
                return value;
            }
            faults.add(new Refusal(key, place, text + " is out of range", hint));
        } catch (NumberFormatException letters) {
            faults.add(new Refusal(
                    key, place, text.isEmpty() ? "nothing typed" : "\"" + text + "\" is not a number", hint));
        }
        return 0;
    }

    /** Lines of: step, day, days it may be late. */
    private static Map<String, Arrival> arrivals(String text, JobOnBench bench, List<Refusal> faults) {
        Map<String, Arrival> arrivals = new LinkedHashMap<>();
        for (String line : text.lines().filter(l -> !l.isBlank()).toList()) {
            String[] part = line.strip().split("[\\s,;]+");
            String hint = "Write a line as: step, day as 2026-12-24, days it may be late";
            if (part.length != 3 || !bench.order().steps().containsKey(part[0])) {
                faults.add(new Refusal(
                        "arrives", "what has to arrive", "\"" + line.strip() + "\" is not understood", hint));
                continue;
            }
            try {
                double late = number(part[2], "arrives", "days late", 0, 365, faults);
                Arrival one = new Arrival(
                        "what " + part[0] + " waits for", LocalDate.parse(part[1]), new ThreePoint(0, late / 3, late));
                // a step that waits for several things waits for the last
                arrivals.merge(part[0], one, (a, b) -> end(a).isAfter(end(b)) ? a : b);
            } catch (DateTimeParseException noDay) {
                faults.add(new Refusal("arrives", "what has to arrive", "\"" + part[1] + "\" is not a day", hint));
            }
        }
        return arrivals;
    }
}
