package shimwright.compare;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CircuitConstraint;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToDoubleBiFunction;
import org.jspecify.annotations.Nullable;
import shimwright.rebuild.plan.model.Lag;
import shimwright.rebuild.plan.model.Risk;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.model.SetUps;
import shimwright.rebuild.plan.model.Task;
import shimwright.rebuild.plan.model.Window;
import shimwright.rebuild.plan.verify.OrderVerifier;

/**
 * A planning problem for the constraint solver: every task has a place in the order, one circuit runs through all of them,
 * and one each through those that need the case, a place, tools, where that is priced; a set-up is what an arc of such a
 * circuit costs. Arcs that the order of tasks rules out are not made, so where set-ups hang on two neighbours alone there is
 * one circuit with its costs. Times are made only where something waits or a window closes. The unit of time is the largest
 * in which all are whole. No alternatives, nothing known of the start, and turning costs the same whatever is in the case.
 */
final class SolverModel {
    private final SequencingProblem problem;
    private final SetUps setUps;
    private final CpModel model = new CpModel();
    private final Map<String, Task> tasks = new LinkedHashMap<>();
    private final Map<String, IntVar> places = new HashMap<>();
    private final Map<String, IntVar> starts = new HashMap<>();
    private final Map<String, LinearExprBuilder> setUp = new HashMap<>();
    private final Map<String, Set<String>> before = new HashMap<>();
    private final Map<String, Integer> hint = new HashMap<>();
    private final boolean timed;
    private final long unit;
    private final long horizon;

    /** What the solver says, in seconds. */
    record Result(String status, double value, double bound, double seconds) {
        /** As cells of a table. */
        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT, "%.1f, %.1f | %s | %.2f", value, bound, status.toLowerCase(Locale.ROOT), seconds);
        }
    }

    /**
     * The model.
     *
     * @param order an order to begin with, all tasks in it; empty for none
     */
    SolverModel(SequencingProblem problem, List<String> order) {
        this.problem = problem;
        this.setUps = problem.setUps();
        problem.tasks().forEach(task -> tasks.put(task.id(), task));
        order.forEach(id -> hint.put(id, hint.size()));
        this.timed = !problem.lags().isEmpty() || !problem.windows().isEmpty();
        List<Double> times = times();
        this.unit = times.stream()
                .map(t -> BigInteger.valueOf(ms(t)))
                .reduce(BigInteger.ZERO, BigInteger::gcd)
                .longValueExact();
        this.horizon = times.stream().mapToLong(this::units).sum();
        problem.tasks().forEach(task -> leading(task.id()));
        build(order);
    }

    private List<Double> times() {
        List<Double> times = new ArrayList<>(List.of(setUps.walk()));
        for (Task task : problem.tasks()) {
            times.addAll(List.of(task.seconds(), setUps.walk()));
            task.tools().forEach(tool -> times.add(setUps.tools().getOrDefault(tool, 0.0)));
            times.addAll(setUps.turn().getOrDefault(task.stand(), Map.of()).values());
        }
        problem.lags().forEach(lag -> times.add(lag.seconds()));
        problem.windows().forEach(window -> times.add(window.seconds()));
        problem.risks().forEach(risk -> times.add(risk.seconds()));
        return times;
    }

    private static long ms(double seconds) {
        return Math.round(seconds * 1000);
    }

    private long units(double seconds) {
        return ms(seconds) / unit;
    }

    private Set<String> leading(String id) {
        Set<String> known = before.get(id);
        if (known != null) {
            return known;
        }
        Set<String> found = new HashSet<>();
        for (String need : of(tasks, id).after()) {
            found.add(need);
            found.addAll(leading(need));
        }
        before.put(id, found);
        return found;
    }

    private static <T> T of(Map<String, T> map, String id) {
        T found = map.get(id);
        if (found == null) {
            throw new IllegalArgumentException(id);
        }
        return found;
    }

    private IntVar place(String id) {
        return of(places, id);
    }

    private void build(List<String> order) {
        int last = tasks.size() - 1;
        IntVar end = model.newIntVar(0, horizon, "end");
        for (String id : tasks.keySet()) {
            long after = tasks.keySet().stream()
                    .filter(other -> leading(other).contains(id))
                    .count();
            places.put(id, model.newIntVar(leading(id).size(), last - after, "place " + id));
            hint(place(id), hint.getOrDefault(id, 0));
            setUp.put(id, LinearExpr.newBuilder());
            starts.put(id, timed ? model.newIntVar(0, horizon, "start " + id) : place(id));
        }
        if (timed && !order.isEmpty()) {
            hintTimes(order, end);
        }
        model.addAllDifferent(places.values().toArray(new IntVar[0]));
        circuits();
        LinearExprBuilder least = LinearExpr.newBuilder();
        tasks.values().forEach(task -> least.add(of(setUp, task.id()).build()).add(units(task.seconds())));
        if (timed) {
            tasks.values().forEach(task -> {
                model.addLessOrEqual(after(task), end);
                model.addLessOrEqual(of(setUp, task.id()).build(), of(starts, task.id()));
            });
            model.addLessOrEqual(least.build(), end);
        }
        order();
        LinearExprBuilder cost = LinearExpr.newBuilder().add(timed ? end : least.build());
        for (Risk risk : problem.risks()) {
            if (leading(risk.early()).contains(risk.hold())) {
                continue;
            }
            BoolVar early = model.newBoolVar("risk");
            precedes(risk.hold(), risk.early(), early.not());
            hint(early, hint.getOrDefault(risk.hold(), 0) > hint.getOrDefault(risk.early(), 0) ? 1 : 0);
            cost.addTerm(early, units(risk.seconds()));
        }
        model.minimize(cost);
    }

    private void hint(IntVar of, long value) {
        if (!hint.isEmpty()) {
            model.addHint(of, value);
        }
    }

    private void hintTimes(List<String> order, IntVar end) {
        for (int k = 0; k < order.size(); k++) {
            double ends = OrderVerifier.follow(problem, order.subList(0, k + 1))
                    .cost()
                    .elapsed();
            Task task = of(tasks, order.get(k));
            model.addHint(of(starts, task.id()), units(ends - task.seconds()));
            if (k == order.size() - 1) {
                model.addHint(end, units(ends));
            }
        }
    }

    private LinearExpr after(Task task) {
        return LinearExpr.newBuilder()
                .add(of(starts, task.id()))
                .add(units(task.seconds()))
                .build();
    }

    private void precedes(String first, String second, Literal when) {
        LinearExpr next = LinearExpr.newBuilder().add(place(first)).add(1).build();
        model.addLessOrEqual(next, place(second)).onlyEnforceIf(when);
    }

    private void order() {
        for (Task task : tasks.values()) {
            for (String need : task.after()) {
                precedes(need, task.id(), model.trueLiteral());
                if (timed) {
                    model.addLessOrEqual(after(of(tasks, need)), of(starts, task.id()));
                }
            }
        }
        for (Lag lag : problem.lags()) {
            LinearExpr over = LinearExpr.newBuilder()
                    .add(after(of(tasks, lag.from())))
                    .add(units(lag.seconds()))
                    .build();
            model.addLessOrEqual(over, of(starts, lag.to()));
        }
        for (Window window : problem.windows()) {
            LinearExpr last = LinearExpr.newBuilder()
                    .add(after(of(tasks, window.opens())))
                    .add(units(window.seconds()))
                    .build();
            model.addLessOrEqual(after(of(tasks, window.closes())), last);
            if (window.alone()) {
                alone(window);
            }
        }
    }

    private void alone(Window window) {
        for (String id : tasks.keySet()) {
            boolean needed =
                    id.equals(window.closes()) || leading(window.closes()).contains(id);
            if (!needed) {
                BoolVar earlier = model.newBoolVar("earlier");
                precedes(id, window.opens(), earlier);
                precedes(window.closes(), id, earlier.not());
                boolean first = hint.getOrDefault(id, 0) < hint.getOrDefault(window.opens(), 0);
                hint(earlier, first ? 1 : 0);
            }
        }
    }

    private void circuits() {
        boolean turns = !setUps.turn().isEmpty();
        boolean walks = setUps.walk() > 0;
        boolean lays = setUps.tools().values().stream().anyMatch(t -> t > 0);
        Predicate<Task> stands = t -> setUps.orientations().contains(t.stand());
        boolean neighbours = !walks && !lays && tasks.values().stream().allMatch(stands);
        if (turns && !neighbours) {
            circuit(stands, this::turning, false);
        }
        if (walks) {
            circuit(t -> !t.stand().isEmpty(), this::walking, false);
        }
        if (lays) {
            circuit(t -> !t.tools().isEmpty(), this::laying, false);
        }
        circuit(t -> true, neighbours ? this::turning : (a, b) -> 0, true);
    }

    /** A circuit through some tasks in the order of their places; the one through all of them also spaces them. */
    private void circuit(Predicate<Task> which, ToDoubleBiFunction<@Nullable Task, Task> price, boolean whole) {
        List<Task> some = tasks.values().stream().filter(which).toList();
        CircuitConstraint circuit = model.addCircuit();
        List<Task> hinted = new ArrayList<>(some);
        hinted.sort((a, b) -> Integer.compare(hint.getOrDefault(a.id(), 0), hint.getOrDefault(b.id(), 0)));
        for (int j = 0; j < some.size(); j++) {
            Task task = some.get(j);
            if (some.stream().noneMatch(t -> leading(task.id()).contains(t.id()))) {
                BoolVar first = model.newBoolVar("first");
                circuit.addArc(0, j + 1, first);
                of(setUp, task.id()).addTerm(first, units(price.applyAsDouble(null, task)));
                hint(first, hinted.get(0).equals(task) ? 1 : 0);
            }
            if (some.stream().noneMatch(t -> leading(t.id()).contains(task.id()))) {
                BoolVar last = model.newBoolVar("last");
                circuit.addArc(j + 1, 0, last);
                hint(last, hinted.get(hinted.size() - 1).equals(task) ? 1 : 0);
            }
        }
        List<Runnable> spacing = new ArrayList<>();
        for (int i = 0; i < some.size(); i++) {
            for (int j = 0; j < some.size(); j++) {
                Task from = some.get(i);
                Task to = some.get(j);
                if (i != j && mayFollow(some, from.id(), to.id())) {
                    BoolVar arc = model.newBoolVar("arc");
                    circuit.addArc(i + 1, j + 1, arc);
                    of(setUp, to.id()).addTerm(arc, units(price.applyAsDouble(from, to)));
                    hint(arc, hinted.indexOf(to) == hinted.indexOf(from) + 1 ? 1 : 0);
                    spacing.add(() -> space(from, to, arc, whole));
                }
            }
        }
        spacing.forEach(Runnable::run);
    }

    private boolean mayFollow(List<Task> some, String from, String to) {
        return !leading(from).contains(to)
                && some.stream()
                        .noneMatch(t ->
                                leading(t.id()).contains(from) && leading(to).contains(t.id()));
    }

    private void space(Task from, Task to, Literal arc, boolean whole) {
        if (!whole) {
            precedes(from.id(), to.id(), arc);
            return;
        }
        LinearExpr next = LinearExpr.newBuilder().add(place(from.id())).add(1).build();
        model.addEquality(next, place(to.id())).onlyEnforceIf(arc);
        if (timed) {
            LinearExpr least = LinearExpr.newBuilder()
                    .add(after(from))
                    .add(of(setUp, to.id()).build())
                    .build();
            model.addLessOrEqual(least, of(starts, to.id())).onlyEnforceIf(arc);
        }
    }

    private double turning(@Nullable Task from, Task to) {
        String orientation = from == null ? problem.start().orientation() : from.stand();
        return orientation.isEmpty() ? 0 : setUps.turning(orientation, to.stand());
    }

    private double walking(@Nullable Task from, Task to) {
        String at = from == null ? problem.start().stand() : from.stand();
        return at.isEmpty() || standing(at).equals(standing(to.stand())) ? 0 : setUps.walk();
    }

    private String standing(String stand) {
        return setUps.orientations().contains(stand) ? "the case" : stand;
    }

    private double laying(@Nullable Task from, Task to) {
        Set<String> laid = from == null ? problem.start().tools() : from.tools();
        return to.tools().stream()
                .filter(tool -> !laid.contains(tool))
                .mapToDouble(tool -> setUps.tools().getOrDefault(tool, 0.0))
                .sum();
    }

    Result solve(double seconds) {
        CpSolver solver = new CpSolver();
        solver.getParameters().setMaxTimeInSeconds(seconds).setNumWorkers(2).setRandomSeed(1);
        CpSolverStatus status = solver.solve(model);
        boolean found = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
        double scale = unit / 1e3;
        return new Result(
                status.name(),
                found ? solver.objectiveValue() * scale : Double.NaN,
                solver.bestObjectiveBound() * scale,
                solver.wallTime());
    }
}
