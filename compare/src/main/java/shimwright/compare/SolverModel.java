package shimwright.compare;

import com.google.ortools.sat.CircuitConstraint;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToLongBiFunction;
import org.jspecify.annotations.Nullable;
import shimwright.rebuild.plan.model.Lag;
import shimwright.rebuild.plan.model.Problem;
import shimwright.rebuild.plan.model.Risk;
import shimwright.rebuild.plan.model.SetUps;
import shimwright.rebuild.plan.model.Task;
import shimwright.rebuild.plan.model.Window;

/**
 * A planning problem for the constraint solver: starting times, one circuit through all tasks and one each through those that
 * need the case, a place, tools; the set-up before a task is what the arcs into it cost, and all of it with the work lies before
 * the end (not needed, but without it the solver's bounds are poor). No alternatives, and turning costs
 * the same whatever is in the case.
 */
final class SolverModel {
    private final Problem problem;
    private final SetUps setUps;
    private final CpModel model = new CpModel();
    private final Map<String, IntVar> starts = new HashMap<>();
    private final Map<String, LinearExprBuilder> setUp = new HashMap<>();
    private final Map<String, Set<String>> before = new HashMap<>();
    private final long horizon;

    /** What the solver says, in seconds. */
    record Result(String status, double value, double bound, double seconds) {}

    SolverModel(Problem problem) {
        this.problem = problem;
        this.setUps = problem.setUps();
        double sum = 3600;
        for (Task task : problem.tasks()) {
            sum += task.seconds() + setUps.walk();
            sum += task.tools().stream()
                    .mapToDouble(t -> setUps.tools().getOrDefault(t, 0.0))
                    .sum();
            sum += setUps.turn().getOrDefault(task.stand(), Map.of()).values().stream()
                    .mapToDouble(x -> x)
                    .max()
                    .orElse(0);
        }
        sum += problem.lags().stream().mapToDouble(Lag::seconds).sum();
        this.horizon = ms(sum);
        problem.tasks().forEach(task -> leading(task.id()));
        build();
    }

    private static long ms(double seconds) {
        return Math.round(seconds * 1000);
    }

    private Set<String> leading(String id) {
        Set<String> known = before.get(id);
        if (known != null) {
            return known;
        }
        Set<String> found = new HashSet<>();
        for (String need : task(id).after()) {
            found.add(need);
            found.addAll(leading(need));
        }
        before.put(id, found);
        return found;
    }

    private Task task(String id) {
        return problem.tasks().stream()
                .filter(t -> t.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private IntVar start(String id) {
        IntVar start = starts.get(id);
        if (start == null) {
            throw new IllegalArgumentException(id);
        }
        return start;
    }

    private void build() {
        IntVar end = model.newIntVar(0, horizon, "end");
        for (Task task : problem.tasks()) {
            starts.put(task.id(), model.newIntVar(0, horizon, task.id()));
            setUp.put(task.id(), LinearExpr.newBuilder());
            model.addLessOrEqual(after(task), end);
        }
        List<Task> turned = problem.tasks().stream()
                .filter(t -> setUps.orientations().contains(t.stand()))
                .toList();
        boolean all = turned.size() == problem.tasks().size();
        circuit(turned, this::turning, all);
        circuit(problem.tasks().stream().filter(t -> !t.stand().isEmpty()).toList(), this::walking, false);
        circuit(problem.tasks().stream().filter(t -> !t.tools().isEmpty()).toList(), this::laying, false);
        if (!all) {
            circuit(problem.tasks(), (a, b) -> 0, true);
        }
        order();
        LinearExprBuilder least = LinearExpr.newBuilder();
        problem.tasks().forEach(task -> least.add(setUpOf(task)).add(ms(task.seconds())));
        model.addLessOrEqual(least, end);
        LinearExprBuilder cost = LinearExpr.newBuilder().add(end);
        for (Risk risk : problem.risks()) {
            Literal early = model.newBoolVar("risk");
            Task find = task(risk.hold());
            model.addLessOrEqual(after(find), start(risk.early())).onlyEnforceIf(early.not());
            cost.addTerm(early, ms(risk.seconds()));
        }
        model.minimize(cost);
    }

    private LinearExpr after(Task task) {
        return LinearExpr.newBuilder()
                .add(start(task.id()))
                .add(ms(task.seconds()))
                .build();
    }

    private void order() {
        for (Task task : problem.tasks()) {
            task.after().forEach(need -> model.addLessOrEqual(after(task(need)), start(task.id())));
        }
        for (Lag lag : problem.lags()) {
            model.addLessOrEqual(
                    LinearExpr.newBuilder()
                            .add(after(task(lag.from())))
                            .add(ms(lag.seconds()))
                            .build(),
                    start(lag.to()));
        }
        for (Window window : problem.windows()) {
            LinearExpr last = LinearExpr.newBuilder()
                    .add(after(task(window.opens())))
                    .add(ms(window.seconds()))
                    .build();
            model.addLessOrEqual(after(task(window.closes())), last);
            if (window.alone()) {
                alone(window);
            }
        }
    }

    private void alone(Window window) {
        for (Task task : problem.tasks()) {
            boolean needed = task.id().equals(window.closes())
                    || leading(window.closes()).contains(task.id());
            if (!needed) {
                Literal earlier = model.newBoolVar("earlier");
                model.addLessOrEqual(after(task), start(window.opens())).onlyEnforceIf(earlier);
                model.addLessOrEqual(after(task(window.closes())), start(task.id()))
                        .onlyEnforceIf(earlier.not());
            }
        }
    }

    /** A circuit through some tasks in the order of their times; one that spaces them holds the set-ups between. */
    private void circuit(List<Task> tasks, ToLongBiFunction<@Nullable Task, Task> price, boolean spaces) {
        if (tasks.isEmpty()) {
            return;
        }
        CircuitConstraint circuit = model.addCircuit();
        for (int j = 0; j < tasks.size(); j++) {
            Task to = tasks.get(j);
            Literal first = model.newBoolVar("first");
            circuit.addArc(0, j + 1, first);
            setUpOf(to).addTerm(first, price.applyAsLong(null, to));
            circuit.addArc(j + 1, 0, model.newBoolVar("last"));
        }
        List<Runnable> spacing = new ArrayList<>();
        for (int i = 0; i < tasks.size(); i++) {
            for (int j = 0; j < tasks.size(); j++) {
                Task from = tasks.get(i);
                Task to = tasks.get(j);
                if (i != j && !leading(from.id()).contains(to.id())) {
                    Literal arc = model.newBoolVar("arc");
                    circuit.addArc(i + 1, j + 1, arc);
                    setUpOf(to).addTerm(arc, price.applyAsLong(from, to));
                    spacing.add(() -> space(from, to, arc, spaces));
                }
            }
        }
        if (spaces) {
            tasks.forEach(task -> model.addLessOrEqual(setUpOf(task), start(task.id())));
        }
        spacing.forEach(Runnable::run);
    }

    private void space(Task from, Task to, Literal arc, boolean spaces) {
        LinearExprBuilder least = LinearExpr.newBuilder().add(after(from));
        if (spaces) {
            least.add(setUpOf(to).build());
        }
        model.addLessOrEqual(least.build(), start(to.id())).onlyEnforceIf(arc);
    }

    private LinearExprBuilder setUpOf(Task task) {
        LinearExprBuilder sum = setUp.get(task.id());
        if (sum == null) {
            throw new IllegalArgumentException(task.id());
        }
        return sum;
    }

    private long turning(@Nullable Task from, Task to) {
        String orientation = from == null ? problem.start().orientation() : from.stand();
        return orientation.isEmpty() ? 0 : ms(setUps.turning(orientation, to.stand()));
    }

    private long walking(@Nullable Task from, Task to) {
        String at = from == null ? problem.start().stand() : from.stand();
        return at.isEmpty() || place(at).equals(place(to.stand())) ? 0 : ms(setUps.walk());
    }

    private String place(String stand) {
        return setUps.orientations().contains(stand) ? "the case" : stand;
    }

    private long laying(@Nullable Task from, Task to) {
        Set<String> laid = from == null ? problem.start().tools() : from.tools();
        return to.tools().stream()
                .filter(tool -> !laid.contains(tool))
                .mapToLong(tool -> ms(setUps.tools().getOrDefault(tool, 0.0)))
                .sum();
    }

    Result solve(double seconds) {
        CpSolver solver = new CpSolver();
        solver.getParameters().setMaxTimeInSeconds(seconds).setNumWorkers(2).setRandomSeed(1);
        CpSolverStatus status = solver.solve(model);
        boolean found = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
        return new Result(
                status.name(),
                found ? solver.objectiveValue() / 1000 : Double.NaN,
                solver.bestObjectiveBound() / 1000,
                solver.wallTime());
    }
}
