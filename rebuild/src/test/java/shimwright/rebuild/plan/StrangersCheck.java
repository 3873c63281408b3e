package shimwright.rebuild.plan;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import shimwright.rebuild.plan.model.Cost;
import shimwright.rebuild.plan.model.InitialState;
import shimwright.rebuild.plan.model.Lag;
import shimwright.rebuild.plan.model.Risk;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.model.SetUps;
import shimwright.rebuild.plan.model.Task;
import shimwright.rebuild.plan.model.Window;

/**
 * Whether an order is possible and what it costs, written from the words of the model alone by someone who had read neither
 * the search nor the checks that stood before. It knows the records of the problem and nothing else of the program, and
 * goes through the order by what has happened (who ended when), not by states.
 */
public final class StrangersCheck {
    /** Seconds within which two times are the same. */
    private static final double SAME = 1e-6;

    private static final int NEVER = Integer.MAX_VALUE;

    /**
     * What was found.
     *
     * @param reasons why the order is not possible, each as a sentence; empty where it is
     * @param begins when each task is begun, in seconds from now, in the order's own order
     * @param ends when each task is ended
     * @param cost what the order costs, also where it is not possible; nothing where it is no order of the tasks
     */
    public record Verdict(List<String> reasons, Map<String, Double> begins, Map<String, Double> ends, Cost cost) {
        public boolean lawful() {
            return reasons.isEmpty();
        }

        /** Where the cost that is claimed is another one, part by part; empty where it is the same. */
        public List<String> against(Cost claimed) {
            List<String> differences = new ArrayList<>();
            same(differences, "work", claimed.work(), cost.work());
            same(differences, "turning", claimed.turning(), cost.turning());
            same(differences, "walking", claimed.walking(), cost.walking());
            same(differences, "tools", claimed.tools(), cost.tools());
            same(differences, "waiting", claimed.waiting(), cost.waiting());
            same(differences, "delay", claimed.delay(), cost.delay());
            same(differences, "risk", claimed.risk(), cost.risk());
            same(differences, "turns", claimed.turns(), cost.turns());
            same(differences, "walks", claimed.walks(), cost.walks());
            same(differences, "tool changes", claimed.toolChanges(), cost.toolChanges());
            same(differences, "total", claimed.total(), cost.total());
            return differences;
        }

        private static void same(List<String> differences, String what, double claimed, double found) {
            if (Math.abs(claimed - found) > SAME * Math.max(1, Math.abs(found))) {
                differences.add(what + ": claimed " + claimed + ", found " + found);
            }
        }
    }

    private final SequencingProblem problem;
    private final Map<String, Task> tasks = new LinkedHashMap<>();
    private final List<String> order;
    private final List<String> reasons = new ArrayList<>();
    private final Map<String, Double> begins = new LinkedHashMap<>();
    private final Map<String, Double> ends = new LinkedHashMap<>();
    private String orientation;
    private String place;
    private Set<String> laidOut;
    private int heavy;
    private double turning;
    private double walking;
    private double layingOut;
    private int turns;
    private int walks;
    private int toolChanges;

    private StrangersCheck(SequencingProblem problem, List<String> order) {
        this.problem = problem;
        this.order = order;
        problem.tasks().forEach(task -> tasks.put(task.id(), task));
        InitialState start = problem.start();
        this.orientation = start.orientation();
        this.place = where(problem, start.stand());
        this.laidOut = start.tools();
        this.heavy = start.weight();
    }

    /** Goes through a whole order, each task begun as early as it can be. What is no order of the tasks is not priced. */
    public static Verdict check(SequencingProblem problem, List<String> order) {
        return check(problem, order, true);
    }

    /** Goes through the beginning of an order, with which one stops: no window is open then. */
    public static Verdict begun(SequencingProblem problem, List<String> order) {
        return check(problem, order, false);
    }

    private static Verdict check(SequencingProblem problem, List<String> order, boolean whole) {
        StrangersCheck check = new StrangersCheck(problem, order);
        if (!check.eachOnce(whole)) {
            return new Verdict(check.reasons, Map.of(), Map.of(), new Cost(0, 0, 0, 0, 0, 0, 0, 0, 0, 0));
        }
        check.sequence();
        Cost cost = check.priced();
        check.windows();
        return new Verdict(check.reasons, check.begins, check.ends, cost);
    }

    private boolean eachOnce(boolean whole) {
        Set<String> seen = new HashSet<>();
        for (String id : order) {
            if (!tasks.containsKey(id)) {
                reasons.add(id + " is no task");
            } else if (!seen.add(id)) {
                reasons.add(id + " is done twice");
            }
        }
        for (String id : tasks.keySet()) {
            if (whole && !seen.contains(id)) {
                reasons.add(id + " is never done");
            }
        }
        return reasons.isEmpty();
    }

    /** What comes before what. A wait after a task that is not done yet has not run: from stands before to, at 0 s as well. */
    private void sequence() {
        for (Task task : problem.tasks()) {
            for (String earlier : task.after()) {
                if (place(task.id()) < NEVER && place(earlier) > place(task.id())) {
                    reasons.add(task.id() + " is done before " + earlier);
                }
            }
        }
        for (Lag lag : problem.lags()) {
            if (place(lag.to()) < NEVER && place(lag.from()) > place(lag.to())) {
                reasons.add(lag.to() + " does not wait for " + lag.words() + " after " + lag.from());
            }
        }
    }

    /** Where a task stands in the order. */
    private int place(String id) {
        int at = order.indexOf(id);
        return at < 0 ? NEVER : at;
    }

    private Cost priced() {
        double now = 0;
        double work = 0;
        double waiting = 0;
        for (String id : order) {
            Task task = Objects.requireNonNull(tasks.get(id));
            double ready = now + walk(task) + turn(task) + layOut(task);
            double begin = Math.max(ready, earliest(task));
            waiting += begin - ready;
            work += task.seconds();
            now = begin + task.seconds();
            heavy += task.weight();
            begins.put(id, begin);
            ends.put(id, now);
        }
        double delay = problem.waiting() * waiting;
        return new Cost(work, turning, walking, layingOut, waiting, delay, risk(), turns, walks, toolChanges);
    }

    private double walk(Task task) {
        if (task.stand().isEmpty()) {
            return 0;
        }
        boolean known = !place.isEmpty();
        boolean there = place.equals(where(problem, task.stand()));
        place = where(problem, task.stand());
        if (!known || there) {
            return 0;
        }
        walks++;
        walking += problem.setUps().walk();
        return problem.setUps().walk();
    }

    private double turn(Task task) {
        SetUps setUps = problem.setUps();
        if (!setUps.orientations().contains(task.stand())) {
            return 0;
        }
        String from = orientation;
        orientation = task.stand();
        if (from.isEmpty() || from.equals(orientation)) {
            return 0;
        }
        double light = setUps.turn().getOrDefault(from, Map.of()).getOrDefault(orientation, 0.0);
        double seconds = heavy > 0 ? light * setUps.heavyFactor() : light;
        turns++;
        turning += seconds;
        return seconds;
    }

    private double layOut(Task task) {
        double seconds = 0;
        if (!task.tools().isEmpty()) {
            for (String tool : task.tools()) {
                double takes =
                        laidOut.contains(tool) ? 0 : problem.setUps().tools().getOrDefault(tool, 0.0);
                toolChanges += takes > 0 ? 1 : 0;
                seconds += takes;
            }
            laidOut = task.tools();
        }
        layingOut += seconds;
        return seconds;
    }

    /** All orientations of the case are one place; no name of a place is that one's. */
    private static String where(SequencingProblem problem, String stand) {
        return problem.setUps().orientations().contains(stand) ? "\u0000case" : stand;
    }

    /** When a task may begin for what it waits for, and for the windows it opens. Those before it have been gone through. */
    private double earliest(Task task) {
        double earliest = clock(task.id());
        for (Window window : problem.windows()) {
            if (window.opens().equals(task.id())) {
                for (String inside : leadingTo(window.closes())) {
                    earliest = ends.containsKey(inside) ? earliest : Math.max(earliest, clock(inside));
                }
            }
        }
        return earliest;
    }

    /** Until when a task waits for what has begun to run. */
    private double clock(String id) {
        double until = problem.start().waits().getOrDefault(id, 0.0);
        for (Lag lag : problem.lags()) {
            Double end = ends.get(lag.from());
            if (lag.to().equals(id) && end != null) {
                until = Math.max(until, end + lag.seconds());
            }
        }
        return until;
    }

    /** A task and all that it waits for, and the same of the closing of every window that one of these opens. */
    private Set<String> leadingTo(String closes) {
        Set<String> found = new HashSet<>(Set.of(closes));
        Deque<String> open = new ArrayDeque<>(found);
        while (!open.isEmpty()) {
            String id = open.pop();
            List<String> earlier =
                    new ArrayList<>(Objects.requireNonNull(tasks.get(id)).after());
            for (Window window : problem.windows()) {
                if (window.opens().equals(id)) {
                    earlier.add(window.closes());
                }
            }
            for (String one : earlier) {
                if (found.add(one)) {
                    open.push(one);
                }
            }
        }
        return found;
    }

    private double risk() {
        double sum = 0;
        for (Risk risk : problem.risks()) {
            if (place(risk.early()) < place(risk.hold()) && place(risk.hold()) < NEVER) {
                sum += risk.seconds();
            }
        }
        return sum;
    }

    private void windows() {
        for (Window window : problem.windows()) {
            if (opening(window) > place(window.closes())) {
                reasons.add(window.words() + " is closed before it is opened");
            } else if (place(window.closes()) < NEVER) {
                kept(window);
            } else if (opening(window) < NEVER) {
                reasons.add(window.words() + " stays open");
            }
        }
        for (int k = 0; k < order.size(); k++) {
            servedAlone(k);
        }
    }

    private void kept(Window window) {
        double opened = window.opens().isEmpty()
                ? -Objects.requireNonNull(problem.start().open().get(window.id()))
                : Objects.requireNonNull(ends.get(window.opens()));
        double open = Objects.requireNonNull(ends.get(window.closes())) - opened;
        if (open > window.seconds() + SAME) {
            reasons.add(window.words() + " is open for " + open + " s, at most " + window.seconds());
        }
    }

    /** Where in the order a window is opened; before the first where it is open at the start. */
    private int opening(Window window) {
        return window.opens().isEmpty() ? -1 : place(window.opens());
    }

    private void servedAlone(int place) {
        List<Window> open = new ArrayList<>();
        for (Window window : problem.windows()) {
            if (window.alone() && opening(window) < place && place <= place(window.closes())) {
                open.add(window);
            }
        }
        boolean leads = open.isEmpty();
        for (Window window : open) {
            leads |= leadingTo(window.closes()).contains(order.get(place));
        }
        if (!leads) {
            reasons.add(order.get(place) + " is begun while " + open.get(0).words() + " is open");
        }
    }
}
