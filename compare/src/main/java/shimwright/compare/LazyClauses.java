package shimwright.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BooleanSupplier;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Settings;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import org.chocosolver.solver.variables.Task;
import shimwright.rebuild.plan.crew.Activity;
import shimwright.rebuild.plan.crew.ChangeOver;
import shimwright.rebuild.plan.crew.Link;
import shimwright.rebuild.plan.crew.Project;
import shimwright.rebuild.plan.crew.Resource;

/**
 * A project for a general lazy-clause solver: a start of every activity, lags as differences of two starts, a cumulative
 * constraint for every resource, and for two that never run together one of the two orders.
 */
final class LazyClauses {
    private final Model model = new Model("crew", Settings.init().setLCG(true));
    private final Map<String, IntVar> starts = new LinkedHashMap<>();
    private final Map<String, Task> tasks = new LinkedHashMap<>();
    private final IntVar span;
    private final Project project;

    /** How it chooses what to settle next. */
    enum Choice {
        /** Its own way. */
        OWN,
        /** The activity that can start first, there. */
        SOONEST
    }

    /**
     * What it found.
     *
     * @param span of the best timetable; -1 where it found none
     * @param finished true where it looked at everything
     */
    record Result(int span, boolean finished) {}

    /**
     * The model.
     *
     * @param limit no timetable longer than this is sought
     */
    LazyClauses(Project project, int limit) {
        this.project = project;
        this.span = model.intVar("span", 0, limit, true);
        for (Activity one : project.activities()) {
            IntVar start = model.intVar(one.id(), 0, limit, true);
            IntVar end = model.intVar(one.id() + " ends", 0, limit, true);
            starts.put(one.id(), start);
            tasks.put(one.id(), model.taskVar(start, one.duration(), end));
            model.arithm(span, ">=", end).post();
        }
        project.links().forEach(this::link);
        project.aparts().forEach(this::apart);
        project.resources().forEach(this::share);
    }

    private IntVar start(String id) {
        return Objects.requireNonNull(starts.get(id));
    }

    private void link(Link link) {
        if (link.from().isEmpty()) {
            model.arithm(start(link.to()), ">=", link.least()).post();
        } else if (link.to().isEmpty()) {
            model.arithm(start(link.from()), "<=", -link.least()).post();
        } else {
            model.arithm(start(link.to()), "-", start(link.from()), ">=", link.least())
                    .post();
        }
    }

    private void apart(ChangeOver pair) {
        BoolVar first = before(pair.a(), pair.b(), pair.afterA());
        BoolVar second = before(pair.b(), pair.a(), pair.afterB());
        model.addClausesBoolOrArrayEqualTrue(new BoolVar[] {first, second});
    }

    private BoolVar before(String a, String b, int gap) {
        int duration = Objects.requireNonNull(tasks.get(a)).getDuration().getValue();
        BoolVar first = model.boolVar(a + " before " + b);
        model.reifyXltYC(start(a), start(b), 1 - duration - gap, first);
        return first;
    }

    private void share(Resource resource) {
        List<Task> users = new ArrayList<>();
        List<IntVar> heights = new ArrayList<>();
        for (Activity one : project.activities()) {
            int need = one.needs().getOrDefault(resource.id(), 0);
            if (need > 0 && one.duration() > 0) {
                users.add(Objects.requireNonNull(tasks.get(one.id())));
                heights.add(model.intVar(need));
            }
        }
        model.cumulative(users, heights, model.intVar(resource.capacity())).post();
    }

    /**
     * Looks for the shortest.
     *
     * @param stop asked often
     */
    Result shortest(Choice choice, BooleanSupplier stop) {
        Solver solver = model.getSolver();
        model.setObjective(Model.MINIMIZE, span);
        if (choice == Choice.SOONEST) {
            IntVar[] all = starts.values().toArray(new IntVar[0]);
            solver.setSearch(
                    Search.intVarSearch(LazyClauses::soonest, IntVar::getLB, all), Search.minDomLBSearch(span));
        }
        solver.addStopCriterion(stop::getAsBoolean);
        int best = -1;
        while (solver.solve()) {
            best = span.getValue();
        }
        return new Result(best, !solver.isStopCriterionMet());
    }

    private static @org.jspecify.annotations.Nullable IntVar soonest(IntVar[] all) {
        IntVar found = null;
        for (IntVar one : all) {
            boolean sooner = found == null
                    || one.getLB() < found.getLB()
                    || (one.getLB() == found.getLB() && one.getUB() < found.getUB());
            found = !one.isInstantiated() && sooner ? one : found;
        }
        return found;
    }
}
