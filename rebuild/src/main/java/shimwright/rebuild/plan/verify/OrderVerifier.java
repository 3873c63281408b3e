package shimwright.rebuild.plan.verify;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shimwright.rebuild.plan.model.Cost;
import shimwright.rebuild.plan.model.Lag;
import shimwright.rebuild.plan.model.Risk;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.model.SetUps;
import shimwright.rebuild.plan.model.Task;
import shimwright.rebuild.plan.model.Window;

/** Follows an order task by task, by the definitions of the problem alone, and says what is wrong with it. */
public final class OrderVerifier {
    private static final double DUST = 0.001;

    private final SequencingProblem problem;
    private final SetUps setUps;
    private final Map<String, Task> tasks = new LinkedHashMap<>();
    private final Map<String, Double> ended = new HashMap<>();
    private final List<String> faults = new ArrayList<>();
    private String orientation;
    private String stand;
    private Set<String> laid;
    private int weight;
    private double now;
    private double work;
    private double turning;
    private double walking;
    private double tooling;
    private double waiting;
    private int turns;
    private int walks;
    private int changes;

    private OrderVerifier(SequencingProblem problem) {
        this.problem = problem;
        this.setUps = problem.setUps();
        problem.tasks().forEach(task -> tasks.put(task.id(), task));
        this.orientation = problem.start().orientation();
        this.stand = problem.start().stand();
        this.laid = problem.start().tools();
        this.weight = problem.start().weight();
    }

    /**
     * Everything that is wrong with an order, as sentences; empty where it is possible, whole and costs what is said.
     *
     * @param order ids of tasks
     * @param said what it is said to cost
     */
    public static List<String> faults(SequencingProblem problem, List<String> order, Cost said) {
        OrderVerifier check = new OrderVerifier(problem);
        Cost found = check.follow(order);
        check.same("work", said.work(), found.work());
        check.same("turning", said.turning(), found.turning());
        check.same("walking", said.walking(), found.walking());
        check.same("tools", said.tools(), found.tools());
        check.same("waiting", said.waiting(), found.waiting());
        check.same("delay", said.delay(), found.delay());
        check.same("risk", said.risk(), found.risk());
        check.same("turns", said.turns(), found.turns());
        check.same("walks", said.walks(), found.walks());
        check.same("tool changes", said.toolChanges(), found.toolChanges());
        return List.copyOf(check.faults);
    }

    /**
     * An order followed.
     *
     * @param faults what is wrong with it; empty where it is possible and whole
     * @param cost what it costs as far as it could be followed
     */
    public record Followed(List<String> faults, Cost cost) {}

    /** Follows an order of which nothing is said. */
    public static Followed follow(SequencingProblem problem, List<String> order) {
        OrderVerifier check = new OrderVerifier(problem);
        Cost cost = check.follow(order);
        return new Followed(List.copyOf(check.faults), cost);
    }

    private void same(String what, double said, double found) {
        if (!(Math.abs(said - found) <= DUST * (10 + problem.tasks().size()))) {
            faults.add(what + " is said to be " + said + " and is " + found);
        }
    }

    private Cost follow(List<String> order) {
        for (String id : order) {
            Task task = tasks.get(id);
            if (task == null || ended.containsKey(id)) {
                faults.add(id + (task == null ? " is unknown" : " is done twice"));
            } else {
                waitsFor(task);
                windowsOpen(task);
                begin(task);
            }
        }
        whole();
        return new Cost(
                work,
                turning,
                walking,
                tooling,
                waiting,
                problem.waiting() * waiting,
                risk(order),
                turns,
                walks,
                changes);
    }

    private void waitsFor(Task task) {
        for (String need : task.after()) {
            if (!ended.containsKey(need)) {
                faults.add(task.id() + " is done before " + need);
            }
        }
    }

    private boolean open(Window window) {
        return (window.opens().isEmpty() || ended.containsKey(window.opens())) && !ended.containsKey(window.closes());
    }

    private void windowsOpen(Task task) {
        List<Window> strict =
                problem.windows().stream().filter(w -> w.alone() && open(w)).toList();
        if (!strict.isEmpty()
                && strict.stream().noneMatch(w -> leadsTo(w.closes()).contains(task.id()))) {
            faults.add(task.id() + " is begun while " + strict.get(0).id() + " is open");
        }
    }

    /** What may be needed for a task, itself and the closings of windows opened on the way with it. */
    private Set<String> leadsTo(String id) {
        Set<String> found = new HashSet<>();
        collect(id, found);
        return found;
    }

    private void collect(String id, Set<String> found) {
        Task task = tasks.get(id);
        if (task == null || !found.add(id)) {
            return;
        }
        task.after().forEach(need -> collect(need, found));
        problem.windows().stream().filter(w -> w.opens().equals(id)).forEach(w -> collect(w.closes(), found));
    }

    private void begin(Task task) {
        double ready = now + setUp(task);
        double may = mayStart(task);
        for (Window window : problem.windows()) {
            if (window.opens().equals(task.id()) && !ended.containsKey(window.closes())) {
                for (String inside : leadsTo(window.closes())) {
                    boolean toDo = !ended.containsKey(inside);
                    may = toDo ? Math.max(may, mayStart(task(inside))) : may;
                }
            }
        }
        waiting += Math.max(0, may - ready);
        now = Math.max(may, ready) + task.seconds();
        work += task.seconds();
        ended.put(task.id(), now);
        weight += task.weight();
        for (Window window : problem.windows()) {
            if (window.closes().equals(task.id())) {
                closed(window);
            }
        }
    }

    private Task task(String id) {
        Task task = tasks.get(id);
        if (task == null) {
            throw new IllegalArgumentException("nothing is called " + id);
        }
        return task;
    }

    /** When the waits that run by now let a task start. */
    private double mayStart(Task task) {
        double may = problem.start().waits().getOrDefault(task.id(), 0.0);
        for (Lag lag : problem.lags()) {
            Double from = ended.get(lag.from());
            may = lag.to().equals(task.id()) && from != null ? Math.max(may, from + lag.seconds()) : may;
        }
        return may;
    }

    private void closed(Window window) {
        Double opened = window.opens().isEmpty()
                ? Double.valueOf(-problem.start().open().getOrDefault(window.id(), 0.0))
                : ended.get(window.opens());
        if (opened != null && now - opened > window.seconds() + DUST * (1 + tasks.size())) {
            faults.add(window.id() + " is open " + (now - opened) + " s, longer than " + window.seconds() + " s");
        }
    }

    private double setUp(Task task) {
        double seconds = 0;
        if (setUps.orientations().contains(task.stand()) && !task.stand().equals(orientation)) {
            double turn = orientation.isEmpty() ? 0 : setUps.turning(orientation, task.stand());
            turn *= weight > 0 ? setUps.heavyFactor() : 1;
            turns += orientation.isEmpty() ? 0 : 1;
            turning += turn;
            seconds += turn;
            orientation = task.stand();
        }
        if (!task.stand().isEmpty()) {
            if (!stand.isEmpty() && !place(stand).equals(place(task.stand()))) {
                walks++;
                walking += setUps.walk();
                seconds += setUps.walk();
            }
            stand = task.stand();
        }
        if (!task.tools().isEmpty()) {
            for (String tool : task.tools()) {
                double lay = laid.contains(tool) ? 0 : setUps.tools().getOrDefault(tool, 0.0);
                changes += lay > 0 ? 1 : 0;
                tooling += lay;
                seconds += lay;
            }
            laid = task.tools();
        }
        return seconds;
    }

    private String place(String where) {
        return setUps.orientations().contains(where) ? "the case" : where;
    }

    private double risk(List<String> order) {
        double sum = 0;
        for (Risk risk : problem.risks()) {
            int early = order.indexOf(risk.early());
            int hold = order.indexOf(risk.hold());
            sum += early >= 0 && hold > early ? risk.seconds() : 0;
        }
        return sum;
    }

    private void whole() {
        for (Task task : problem.tasks()) {
            if (!ended.containsKey(task.id())) {
                faults.add(task.id() + " is never done");
            }
        }
        for (Window window : problem.windows()) {
            if (open(window)) {
                faults.add(window.id() + " is never closed");
            }
        }
    }
}
