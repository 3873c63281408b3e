package shimwright.rebuild.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.search.Search;
import shimwright.rebuild.plan.search.SearchBudget;
import shimwright.rebuild.plan.search.SearchObserver;
import shimwright.rebuild.plan.search.SearchResult;
import shimwright.rebuild.plan.search.Solution;
import shimwright.rebuild.plan.verify.OrderVerifier;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType.HoldPoint;
import shimwright.rebuild.unit.model.UnitType.Window;

/**
 * The best possible order of the steps ahead: of least working time, turning over, walking, laying out of tools, waiting and
 * risk of late finds together. Every plan is followed by the independent check before it is handed out. The same unit,
 * choices, steps done, budget and hint always give the same plan.
 */
public final class Planner {
    /** How many hold points a remark names; how many more there are stands behind them. */
    private static final int MOST_NAMED = 3;

    private Planner() {}

    /**
     * The plan from here, within the small budget of a page, no times known.
     *
     * @param unit resolved unit
     * @param taken side by choice
     * @param done steps that stand done, in whatever order
     * @return refused where the steps wait for each other in a circle, named in their words, or no order keeps a window
     */
    public static Outcome<Plan> lay(Unit unit, Map<String, String> taken, Set<String> done) {
        return lay(unit, taken, BuildState.of(done), SearchBudget.page(), SearchObserver.nobody(), List.of());
    }

    /**
     * The plan from here.
     *
     * @param unit resolved unit
     * @param taken side by choice
     * @param present what is done and on its way
     * @param budget how long to look
     * @param watch who looks on and may stop
     * @param hint steps of the plan before, which stays unless a better one is found
     * @return refused where the steps wait for each other in a circle, named in their words, or no order keeps a window that
     *     is not open yet
     */
    public static Outcome<Plan> lay(
            Unit unit,
            Map<String, String> taken,
            BuildState present,
            SearchBudget budget,
            SearchObserver watch,
            List<String> hint) {
        Order order = Order.of(unit, taken);
        SequencingProblem problem = UnitProblem.of(unit, order, present, Set.of());
        SearchResult attempt = Search.attempt(problem, budget, watch, hint);
        boolean known = attempt.impossible();
        if (attempt.answer().isPresent() || problem.start().open().isEmpty()) {
            return attempt.outcome()
                    .map(found -> plan(
                            unit,
                            order,
                            present,
                            problem,
                            Finishing.of(unit, order, present, problem, found),
                            List.of(),
                            true,
                            false));
        }
        Set<String> open = problem.start().open().keySet();
        for (Set<String> late : known ? late(problem) : List.of(open)) {
            SequencingProblem passed = UnitProblem.of(unit, order, present, late);
            attempt = Search.attempt(passed, budget, watch, hint);
            if (attempt.answer().isPresent()) {
                Solution found = attempt.answer().get();
                List<Window> windows = unit.type().windows().stream()
                        .filter(w -> late.contains(w.id()))
                        .toList();
                Finishing.Finished finished = Finishing.of(unit, order, present, passed, found);
                return Outcome.ok(plan(unit, order, present, passed, finished, windows, known, false));
            }
            known &= attempt.impossible();
        }
        return Outcome.refused(attempt.refusals());
    }

    /**
     * The plan from before less what is done since, at once and without looking for a better one: for a page that is to be
     * shown while a better plan is looked for. A step that came back comes as soon as it can. Why each step stands where it does is
     * worked out when it is asked for.
     *
     * @param before steps of the plan before, in order
     * @return empty where no possible order was found so, which does not say that there is none; its bound is a quick one
     */
    public static Optional<Plan> onward(Unit unit, Map<String, String> taken, BuildState present, List<String> before) {
        Order order = Order.of(unit, taken);
        SequencingProblem problem = UnitProblem.of(unit, order, present, Set.of());
        Optional<Solution> kept = Search.kept(problem, before);
        Set<String> open = problem.start().open().keySet();
        if (kept.isPresent() || open.isEmpty()) {
            return kept.map(
                    found -> plan(unit, order, present, problem, Finishing.Finished.as(found), List.of(), true, true));
        }
        SequencingProblem passed = UnitProblem.of(unit, order, present, open);
        List<Window> perhaps = unit.type().windows().stream()
                .filter(w -> open.contains(w.id()))
                .toList();
        return Search.kept(passed, before)
                .map(found -> plan(unit, order, present, passed, Finishing.Finished.as(found), perhaps, false, true));
    }

    /**
     * Why there is no plan from here, without looking for a good one: for rules that only ask whether there is one.
     *
     * @param unit resolved unit
     * @param taken side by choice
     * @param done steps that stand done, in whatever order
     * @return the refusals of {@link #lay(Unit, Map, Set)}; empty where a possible order was found
     */
    public static List<Refusal> hindrances(Unit unit, Map<String, String> taken, Set<String> done) {
        Order order = Order.of(unit, taken);
        BuildState present = BuildState.of(done);
        SequencingProblem problem = UnitProblem.of(unit, order, present, Set.of());
        List<Refusal> circles = Search.circles(problem);
        if (!circles.isEmpty()) {
            return circles;
        }
        // a window that is open and cannot be kept any more hinders no plan: the plan says that it is late
        SequencingProblem kept =
                UnitProblem.of(unit, order, present, problem.start().open().keySet());
        boolean possible = Search.any(kept)
                .filter(found -> OrderVerifier.follow(kept, found).faults().isEmpty())
                .isPresent();
        return possible ? List.of() : lay(unit, taken, done).refusals();
    }

    /** Open windows that may be the ones that can no longer be kept, few first: those that ran out, then one more, then all. */
    private static List<Set<String>> late(SequencingProblem problem) {
        Map<String, Double> open = problem.start().open();
        Set<String> ranOut = problem.windows().stream()
                .filter(w -> open.getOrDefault(w.id(), 0.0) > w.seconds())
                .map(shimwright.rebuild.plan.model.Window::id)
                .collect(Collectors.toCollection(TreeSet::new));
        List<Set<String>> tried = new ArrayList<>();
        if (!ranOut.isEmpty()) {
            tried.add(ranOut);
        }
        open.keySet().stream().sorted().filter(id -> !ranOut.contains(id)).forEach(id -> {
            Set<String> one = new TreeSet<>(ranOut);
            one.add(id);
            tried.add(one);
        });
        tried.add(new TreeSet<>(open.keySet()));
        return tried;
    }

    /** Steps that wait for each other, whatever stands done; empty for a sound unit. */
    public static List<Refusal> circles(Unit unit, Map<String, String> taken) {
        return Search.circles(problem(unit, taken, BuildState.of(Set.of())));
    }

    /** The problem behind a plan, as data, for whoever wants to solve it otherwise. */
    public static SequencingProblem problem(Unit unit, Map<String, String> taken, BuildState present) {
        return UnitProblem.of(unit, Order.of(unit, taken), present, Set.of());
    }

    private static Plan plan(
            Unit unit,
            Order order,
            BuildState present,
            SequencingProblem problem,
            Finishing.Finished answer,
            List<Window> late,
            boolean known,
            boolean onward) {
        List<String> faults = OrderVerifier.faults(problem, answer.order(), answer.cost());
        if (!faults.isEmpty()) {
            throw new IllegalStateException("an impossible plan was found: " + String.join("; ", faults));
        }
        List<Step> ahead = answer.order().stream()
                .map(id -> Objects.requireNonNull(order.steps().get(id)))
                .toList();
        int total = order.steps().size();
        double minutes = ahead.stream().mapToDouble(Step::duration).sum() / 60;
        Supplier<List<StepReason>> because = () ->
                Reasons.of(unit, order, problem, answer.order(), answer.cost().total());
        return new Plan(
                total,
                total - ahead.size(),
                ahead,
                minutes,
                answer.cost(),
                answer.bound(),
                known && answer.proven(),
                answer.more(),
                answer.left(),
                onward ? new WhenAsked<>(because) : because.get(),
                broken(order, present),
                known ? late : List.of(),
                remarks(unit, order, present, known ? List.of() : late));
    }

    private static List<OrderBreach> broken(Order order, BuildState present) {
        List<OrderBreach> broken = new ArrayList<>();
        Set<String> before = new LinkedHashSet<>();
        Set<String> all = Set.copyOf(present.done());
        for (String id : order.steps().keySet()) {
            if (all.contains(id) && !present.inOrder()) {
                missing(order, id, all, all, broken);
            }
        }
        for (String id : present.done()) {
            if (present.inOrder() && order.steps().containsKey(id)) {
                missing(order, id, before, all, broken);
            }
            before.add(id);
        }
        return List.copyOf(broken);
    }

    private static void missing(Order order, String id, Set<String> before, Set<String> all, List<OrderBreach> broken) {
        order.waitsFor(id, before)
                .forEach((needed, why) -> broken.add(new OrderBreach(
                        Objects.requireNonNull(order.steps().get(id)), needed, why, all.contains(needed.id()))));
    }

    private static List<String> remarks(Unit unit, Order order, BuildState present, List<Window> perhaps) {
        List<String> remarks = new ArrayList<>();
        if (!perhaps.isEmpty()) {
            remarks.add("No order was found that closes "
                    + perhaps.stream().map(Window::name).collect(Collectors.joining(" and "))
                    + " in time; that there is none is not proven. Look longer, and close it first.");
        }
        if (unit.type().turnOver().isEmpty()) {
            remarks.add("The unit file gives no times for turning over, so they are not priced.");
        }
        if (unit.type().toolTimes().isEmpty()) {
            remarks.add("The unit file gives no times for laying out tools, so they are not priced.");
        }
        if (unit.type().stationChange() == 0) {
            remarks.add("The unit file gives no time for changing the station, so it is not priced.");
        }
        List<HoldPoint> unpriced = order.steps().values().stream()
                .map(Step::hold)
                .filter(id -> !id.isEmpty())
                .distinct()
                .map(unit::holdPoint)
                .filter(hold -> chance(hold) == 0)
                .toList();
        if (!unpriced.isEmpty()) {
            remarks.add("Without a chance in the unit file no late find is priced for hold points " + named(unpriced)
                    + ".");
        }
        UnknownTimes.unknown(unit, order, present).ifPresent(remarks::add);
        return List.copyOf(remarks);
    }

    private static String named(List<HoldPoint> holds) {
        String first = holds.stream()
                .limit(MOST_NAMED)
                .map(hold -> hold.id() + " (" + hold.what() + ")")
                .collect(Collectors.joining(", "));
        return holds.size() <= MOST_NAMED ? first : first + " and " + (holds.size() - MOST_NAMED) + " more";
    }

    private static double chance(HoldPoint hold) {
        return hold.chance();
    }
}
