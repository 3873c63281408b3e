package shimwright.rebuild.plan.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.plan.model.Lag;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.model.Task;
import shimwright.rebuild.plan.model.Window;

/** Why no order can be: circles, and windows that what lies in them does not fit. */
final class Infeasibility {
    private static final String PLACE = "plan";

    private Infeasibility() {}

    /** Circles of tasks that wait for each other, one for each knot; empty where there is none. */
    static List<Refusal> circles(SequencingProblem problem) {
        Map<String, Task> left = new LinkedHashMap<>();
        problem.tasks().forEach(task -> left.put(task.id(), task));
        boolean moved = true;
        while (moved) {
            moved = left.values().removeIf(task -> task.after().stream().noneMatch(left::containsKey));
        }
        List<Refusal> refusals = new ArrayList<>();
        Set<String> told = new HashSet<>();
        for (Task task : left.values()) {
            List<String> circle = circle(task, left);
            if (told.addAll(circle) && told.containsAll(circle) && fresh(refusals, circle)) {
                refusals.add(refusal(circle, left));
            }
        }
        return List.copyOf(refusals);
    }

    private static boolean fresh(List<Refusal> refusals, List<String> circle) {
        return refusals.stream().noneMatch(r -> r.fact().contains(" " + circle.get(0) + " ("));
    }

    private static Refusal refusal(List<String> circle, Map<String, Task> left) {
        String words = circle.stream().map(id -> named(left, id)).collect(Collectors.joining(" waits for "));
        return Refusal.at(
                PLACE,
                "these steps wait for each other: " + words + " waits for " + circle.get(0),
                "Take another side of a choice, or mend the unit file");
    }

    private static String named(Map<String, Task> tasks, String id) {
        Task task = tasks.get(id);
        return id + " (" + (task == null ? "" : task.words()) + ")";
    }

    private static List<String> circle(Task first, Map<String, Task> left) {
        List<String> path = new ArrayList<>();
        Task at = first;
        while (!path.contains(at.id())) {
            path.add(at.id());
            at = waitedFor(at, left);
        }
        return path.subList(path.indexOf(at.id()), path.size());
    }

    private static Task waitedFor(Task task, Map<String, Task> left) {
        Set<String> needs = new LinkedHashSet<>();
        left.keySet().stream().filter(task.after()::contains).forEach(needs::add);
        Task found = left.get(needs.iterator().next());
        if (found == null) {
            throw new IllegalStateException("a task that is stuck waits for nothing");
        }
        return found;
    }

    /** Windows that cannot be kept whatever the order: what must be done in them takes longer. */
    static List<Refusal> windows(CompiledProblem c) {
        List<Refusal> refusals = new ArrayList<>();
        for (int w = 0; w < c.spans.count; w++) {
            Window window = c.windows().get(w);
            int opens = c.spans.opens[w];
            boolean sure = opens < 0 || Bits.has(c.ancestors[c.spans.closes[w]], opens);
            if (!sure) {
                continue;
            }
            long[] inside = inside(c, w);
            long work = 0;
            for (int i = Bits.next(inside, 0); i >= 0; i = Bits.next(inside, i + 1)) {
                work += c.duration[i];
            }
            long setUps = opens < 0 ? 0 : new SetUpBound(c, inside).leastFrom(opens);
            long chain = chain(c, w, inside);
            long least = Math.max(work + setUps, chain);
            if (least > c.spans.longest[w] - c.spans.gone[w]) {
                String more = chain > work + setUps ? waits(c, window, inside) : "";
                String setUp = more.isEmpty() && setUps > 0 ? "; set-ups " + time(setUps / 1e3) : "";
                refusals.add(refusal(c, window, inside, least, more + setUp));
            }
        }
        return List.copyOf(refusals);
    }

    /** What must be done between opening and closing, the closing with it. */
    private static long[] inside(CompiledProblem c, int window) {
        long[] inside = c.spans.forced[window].clone();
        int opens = c.spans.opens[window];
        if (opens >= 0) {
            for (int k = 0; k < inside.length; k++) {
                inside[k] &= c.descendants[opens][k];
            }
        }
        return inside;
    }

    /** Time of the longest chain from opening to closing, waits between with it. */
    private static long chain(CompiledProblem c, int window, long[] inside) {
        Map<Integer, Long> ends = new HashMap<>();
        if (c.spans.opens[window] >= 0) {
            ends.put(c.spans.opens[window], 0L);
        }
        for (int task : c.topological) {
            if (Bits.has(inside, task)) {
                long begins = 0;
                for (Map.Entry<Integer, Long> end : ends.entrySet()) {
                    if (Bits.has(c.ancestors[task], end.getKey())) {
                        begins = Math.max(begins, end.getValue());
                    }
                }
                for (int k : c.lagsTo[task]) {
                    Long from = ends.get(c.lagFrom[k]);
                    begins = from == null ? begins : Math.max(begins, from + c.lag[k]);
                }
                ends.put(task, begins + c.duration[task]);
            }
        }
        return ends.getOrDefault(c.spans.closes[window], 0L);
    }

    private static Refusal refusal(CompiledProblem c, Window window, long[] inside, long least, String more) {
        List<String> steps = new ArrayList<>();
        for (int i = Bits.next(inside, 0); i >= 0; i = Bits.next(inside, i + 1)) {
            Task task = c.task(i);
            steps.add(task.id() + " (" + task.words() + ") " + time(task.seconds()));
        }
        String from = window.opens().isEmpty() ? "is open already" : "is opened by " + window.opens();
        return Refusal.at(
                PLACE,
                "no order keeps the window \"" + window.words() + "\", which " + from + ": it stays open "
                        + time(window.seconds()) + ", what must be done in it takes " + time(least / 1e3) + ": "
                        + String.join(", ", steps) + more,
                "Look at the times of these steps and of the window");
    }

    private static String waits(CompiledProblem c, Window window, long[] inside) {
        List<String> lags = new ArrayList<>();
        for (Lag lag : c.problem.lags()) {
            boolean from = Bits.has(inside, c.index(lag.from())) || lag.from().equals(window.opens());
            if (from && Bits.has(inside, c.index(lag.to()))) {
                lags.add(lag.words() + " " + time(lag.seconds()) + " before " + lag.to());
            }
        }
        return "; waiting: " + String.join(", ", lags);
    }

    /** Windows that cannot be kept together, or not with the set-ups and waits that they meet; found by looking at all. */
    static Refusal together(List<Window> windows, long states) {
        String names = windows.stream()
                .map(w -> "\"" + w.words() + "\" (" + (w.opens().isEmpty() ? "open already" : "opened by " + w.opens())
                        + ", closed by " + w.closes() + ", " + time(w.seconds()) + ")")
                .collect(Collectors.joining(" and "));
        String fact = windows.isEmpty()
                ? "no order of these steps keeps what they wait for"
                : "no order keeps the window" + (windows.size() > 1 ? "s " : " ") + names
                        + " with set-ups and waits counted";
        return Refusal.at(
                PLACE,
                fact + "; every order was looked at (" + states + " states)",
                "Look at the times of these steps");
    }

    /** Nothing found, and no proof that there is nothing. */
    static Refusal gaveUp(long states) {
        return Refusal.at(
                PLACE,
                "no order was found in " + states + " states; that there is none is not proven",
                "Give it more time, or look at the windows and their times");
    }

    static String time(double seconds) {
        return seconds < 120
                ? String.format(Locale.ROOT, "%.0f s", seconds)
                : String.format(Locale.ROOT, "%.1f min", seconds / 60).replace(".0 min", " min");
    }
}
