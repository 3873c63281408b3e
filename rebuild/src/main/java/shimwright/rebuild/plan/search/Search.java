package shimwright.rebuild.plan.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.plan.model.Cost;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.model.Window;

/**
 * The order of least cost, by complete anytime beam search: beams over states (what is done, how the case stands, what is
 * laid out, which clocks run), each wider than the one before, of states that are no better than another only one, with lower
 * bounds that never overrate; between the beams stretches of the best order change places for a better one. Once a beam
 * drops nothing that could have been better, the best order is proven. The same problem, budget and hint always give the same
 * answer. Times count in whole milliseconds.
 */
public final class Search {
    private Search() {}

    /** The best order found within the budget. */
    public static Outcome<Solution> best(SequencingProblem problem, SearchBudget budget, SearchObserver watch) {
        return best(problem, budget, watch, List.of());
    }

    /**
     * The best order found within the budget.
     *
     * @param hint an order to keep unless a better one is found; what it names that is not to be done is passed over, and
     *     where it is not possible it counts for nothing
     * @return refused where there is no order, with the circle or the windows, or where none was found
     */
    public static Outcome<Solution> best(
            SequencingProblem problem, SearchBudget budget, SearchObserver watch, List<String> hint) {
        return attempt(problem, budget, watch, hint).outcome();
    }

    /** The same, with what is impossible and what was only not found told apart. */
    public static SearchResult attempt(
            SequencingProblem problem, SearchBudget budget, SearchObserver watch, List<String> hint) {
        List<Refusal> circles = Infeasibility.circles(problem);
        if (!circles.isEmpty()) {
            return SearchResult.none(circles, true);
        }
        CompiledProblem c = CompiledProblem.of(problem);
        List<Refusal> windows = Infeasibility.windows(c);
        if (!windows.isEmpty()) {
            return SearchResult.none(windows, true);
        }
        Solver solver = new Solver(c, watch);
        if (!hint.isEmpty()) {
            solver.keep(hinted(c, hint));
        }
        solver.run(budget);
        if (solver.found()) {
            return SearchResult.found(answer(c, solver, solver.best()));
        }
        return SearchResult.none(
                List.of(
                        solver.exhausted()
                                ? Infeasibility.together(fewest(problem, budget, watch), solver.states())
                                : Infeasibility.gaveUp(solver.states())),
                solver.exhausted());
    }

    /** Some possible order, whatever it costs, found at once; empty where none was found so, which does not say that there is none. */
    public static Optional<List<String>> any(SequencingProblem problem) {
        if (!Infeasibility.circles(problem).isEmpty()) {
            return Optional.empty();
        }
        CompiledProblem c = CompiledProblem.of(problem);
        return Dive.order(c)
                .map(order ->
                        Arrays.stream(order).mapToObj(task -> c.task(task).id()).toList());
    }

    /**
     * An order from before, kept as far as it can be, without looking for a better one: what is named and not to be done is
     * passed over, what is to be done and not named comes as soon as it can, and where that keeps no window some other possible
     * order is taken.
     *
     * @return empty where none was found so, which does not say that there is none
     */
    public static Optional<Solution> kept(SequencingProblem problem, List<String> before) {
        if (!Infeasibility.circles(problem).isEmpty()) {
            return Optional.empty();
        }
        CompiledProblem c = CompiledProblem.of(problem);
        int[] rank = new int[c.n];
        Arrays.fill(rank, -1);
        int[] named = hinted(c, before);
        for (int k = 0; k < named.length; k++) {
            rank[named[k]] = k;
        }
        Solver solver = new Solver(c, SearchObserver.nobody());
        solver.keep(inRank(c, rank));
        if (!solver.found()) {
            Dive.order(c).ifPresent(solver::keep);
        }
        return solver.found() ? Optional.of(answer(c, solver, solver.best())) : Optional.empty();
    }

    /** Each time the first of what is free, by rank. */
    private static int[] inRank(CompiledProblem c, int[] rank) {
        StateCursor at = new StateCursor(c);
        int[] order = new int[c.n];
        int filled = 0;
        while (filled < c.n) {
            int first = -1;
            for (int task = 0; task < c.n; task++) {
                boolean sooner = first < 0 || rank[task] < rank[first];
                first = sooner && at.free(task) && at.allowed(task) ? task : first;
            }
            if (first < 0) {
                break;
            }
            at.take(first);
            order[filled++] = first;
        }
        return Arrays.copyOf(order, filled);
    }

    /** Tasks that wait for each other in a circle, in words; empty where there are none. */
    public static List<Refusal> circles(SequencingProblem problem) {
        return Infeasibility.circles(problem);
    }

    /** What orders cost, for many orders of one problem, which must have no circle. */
    public static Function<List<String>, Optional<Cost>> prices(SequencingProblem problem) {
        CompiledProblem c = CompiledProblem.of(problem);
        return order -> Evaluation.cost(c, order);
    }

    private static int[] hinted(CompiledProblem c, List<String> hint) {
        List<String> known = c.problem.tasks().stream().map(task -> task.id()).toList();
        return hint.stream()
                .filter(known::contains)
                .distinct()
                .mapToInt(c::index)
                .toArray();
    }

    private static Solution answer(CompiledProblem c, Solver solver, int[] path) {
        List<String> order = new ArrayList<>();
        for (int task : path) {
            order.add(c.task(task).id());
        }
        Cost cost =
                Evaluation.cost(c, path).orElseThrow(() -> new IllegalStateException("an impossible order was found"));
        return new Solution(order, cost, solver.bound() / Solver.SECOND, solver.proven(), solver.states());
    }

    /** Of windows that cannot be kept together, so few that without any one of them the others can. */
    private static List<Window> fewest(SequencingProblem problem, SearchBudget budget, SearchObserver watch) {
        List<Window> left = new ArrayList<>(problem.windows());
        for (Window window : problem.windows()) {
            List<Window> fewer = new ArrayList<>(left);
            fewer.remove(window);
            Solver solver = new Solver(CompiledProblem.of(problem.withWindows(fewer)), watch);
            solver.run(budget);
            if (solver.exhausted() && !solver.found()) {
                left = fewer;
            }
        }
        return List.copyOf(left);
    }
}
