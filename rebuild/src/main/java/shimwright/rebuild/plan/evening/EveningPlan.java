package shimwright.rebuild.plan.evening;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import shimwright.rebuild.plan.BuildState;
import shimwright.rebuild.plan.Plan;
import shimwright.rebuild.plan.Planner;
import shimwright.rebuild.plan.StepSetUps;
import shimwright.rebuild.plan.evening.Tonight.NotTonight;
import shimwright.rebuild.plan.evening.Tonight.Timed;
import shimwright.rebuild.plan.evening.Tonight.Why;
import shimwright.rebuild.plan.model.Cost;
import shimwright.rebuild.plan.model.Lag;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.model.Window;
import shimwright.rebuild.plan.verify.OrderVerifier;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType;

/**
 * Takes the steps of a plan in their order as far as the evening goes. No window is opened that could not be closed before the
 * end; while one that was open before is served alone and can still be kept, nothing is begun that does not lead to its closing, also where
 * the hands for it are missing; a step that would have to wait for something that comes later is passed over, and what comes after it is
 * only done where that takes no more getting ready than the plan has for it, so that nothing is wasted.
 */
public final class EveningPlan {
    /** Waits up to this are stood through at the bench. */
    private static final double SHORT = 15 * 60;

    private static final double DUST = 0.01;

    private final Unit unit;
    /** Of each step ahead what it waits for, as the plan has it: with what a step done too early should have waited for. */
    private final Map<String, Set<String>> needs = new HashMap<>();

    private final BuildState present;
    private final SequencingProblem problem;
    private final Evening evening;
    private final Map<String, Step> ahead = new LinkedHashMap<>();
    private final Map<String, Double> ready;
    /** Windows that no order can close in time any more. */
    private final Set<String> late;

    private final List<String> sofar = new ArrayList<>();
    private final Set<String> done = new HashSet<>();
    private final List<Timed> timed = new ArrayList<>();
    private final List<NotTonight> not = new ArrayList<>();
    private double now;
    private double waited;
    private double got;

    private EveningPlan(Unit unit, Map<String, String> taken, BuildState present, Plan plan, Evening evening) {
        this.unit = unit;
        this.present = present;
        this.problem = Planner.problem(unit, taken, present);
        this.evening = evening;
        this.late = plan.late().stream().map(UnitType.Window::id).collect(Collectors.toSet());
        problem.tasks().forEach(task -> needs.put(task.id(), task.after()));
        this.ready = StepSetUps.before(unit, taken, present, plan);
        plan.ahead().forEach(step -> ahead.put(step.id(), step));
        done.addAll(present.done());
    }

    /**
     * What of the plan is done now.
     *
     * @param unit resolved unit
     * @param taken side by choice
     * @param present what is done and on its way, as the plan was laid for it
     */
    public static Tonight tonight(
            Unit unit, Map<String, String> taken, BuildState present, Plan plan, Evening evening) {
        return new EveningPlan(unit, taken, present, plan, evening).run();
    }

    private Tonight run() {
        for (Step step : ahead.values()) {
            if (!done.contains(step.id())) {
                Optional<NotTonight> hindered = hindered(step);
                if (hindered.isPresent()) {
                    not.add(hindered.get());
                } else {
                    stretch(step).forEach(this::take);
                }
            }
        }
        Optional<Step> stop = timed.isEmpty()
                ? Optional.empty()
                : Optional.of(timed.get(timed.size() - 1).step());
        return new Tonight(timed, stop, stop.map(this::because).orElse(List.of()), not, evening.seconds() - now);
    }

    private Cost cost(List<String> steps) {
        return OrderVerifier.follow(problem, steps).cost();
    }

    private void take(Step step) {
        sofar.add(step.id());
        done.add(step.id());
        // what was passed over in its turn comes all the same where something opened later needs it
        not.removeIf(passed -> passed.step().equals(step));
        Cost cost = cost(sofar);
        timed.add(new Timed(step, now, cost.elapsed(), cost.waiting() - waited));
        now = cost.elapsed();
        waited = cost.waiting();
        got = cost.bench() - cost.work();
    }

    /** The step, and all up to the closing of what it opens. */
    private List<Step> stretch(Step first) {
        Set<String> wanted = new HashSet<>();
        List<String> openers = new ArrayList<>(List.of(first.id()));
        while (!openers.isEmpty()) {
            String opener = openers.remove(0);
            for (Window window : problem.windows()) {
                if (window.opens().equals(opener) && !done.contains(window.closes()) && wanted.add(window.closes())) {
                    leading(window.closes()).stream()
                            .filter(id -> !done.contains(id) && wanted.add(id))
                            .forEach(openers::add);
                    openers.add(window.closes());
                }
            }
        }
        wanted.add(first.id());
        return ahead.values().stream().filter(s -> wanted.contains(s.id())).toList();
    }

    private Optional<NotTonight> hindered(Step step) {
        Set<String> needed = needs.getOrDefault(step.id(), Set.of());
        for (String id : ahead.keySet()) {
            if (needed.contains(id) && !done.contains(id)) {
                return not(step, Why.BEHIND, "It waits for " + id + ", which is not for this evening.");
            }
        }
        Optional<Window> open = servedAlone(step);
        if (open.isPresent()) {
            String words = open.get().words() + " runs, and nothing else is begun before "
                    + open.get().closes() + " has closed it.";
            return not(step, Why.WINDOW, words);
        }
        List<Step> stretch = stretch(step);
        for (Step one : stretch) {
            if (one.persons() > evening.persons()) {
                return not(step, Why.HANDS, said(step, one) + "needs " + one.persons() + " people.");
            }
        }
        List<String> with = new ArrayList<>(sofar);
        stretch.forEach(one -> with.add(one.id()));
        Cost cost = cost(with);
        boolean closing = closing(step);
        double idle = cost.waiting() - waited;
        if (!closing && idle > SHORT && (stretch.size() == 1 || cost.elapsed() > evening.seconds())) {
            return waiting(step, stretch, idle);
        }
        if (!closing && cost.elapsed() > evening.seconds()) {
            String time = "takes " + time(cost.elapsed() - now) + " with getting ready, "
                    + time(evening.seconds() - now) + " are left.";
            return stretch.size() > 1
                    ? not(
                            step,
                            Why.WINDOW,
                            "It opens a window that is closed by "
                                    + stretch.get(stretch.size() - 1).id() + "; up to there it " + time)
                    : not(step, Why.TOO_LONG, "It " + time);
        }
        Optional<Window> missed = missed(stretch, with);
        if (missed.isPresent()) {
            String words = missed.get().words()
                    + " would be closed too late: what is got ready before it tonight differs from the plan.";
            return not(step, Why.WINDOW, words);
        }
        double planned = stretch.stream()
                .mapToDouble(one -> ready.getOrDefault(one.id(), 0.0))
                .sum();
        double more = cost.bench() - cost.work() - got - planned;
        if (!closing && !not.isEmpty() && more > 0.5) {
            return not(
                    step, Why.SPARED, "It would take " + time(more) + " more of getting ready now than in its turn.");
        }
        return Optional.empty();
    }

    /** A window that a stretch opens and would not close in time, at the end of an order. */
    private Optional<Window> missed(List<Step> stretch, List<String> order) {
        List<String> opening = stretch.stream().map(Step::id).toList();
        return problem.windows().stream()
                .filter(w -> opening.contains(w.opens()) && opening.contains(w.closes()))
                .filter(w -> ended(order, w.closes()) - ended(order, w.opens()) > w.seconds() + DUST)
                .findFirst();
    }

    private double ended(List<String> order, String id) {
        return cost(order.subList(0, order.indexOf(id) + 1)).elapsed();
    }

    private Optional<NotTonight> waiting(Step step, List<Step> stretch, double idle) {
        for (Step one : stretch) {
            double arrives = present.arrives().getOrDefault(one.id(), 0.0) - now;
            if (arrives > SHORT) {
                return not(step, Why.AWAITED, said(step, one) + "needs something that comes in " + time(arrives) + ".");
            }
        }
        String what = problem.lags().stream()
                .filter(lag ->
                        stretch.stream().anyMatch(one -> one.id().equals(lag.to())) && sofar.contains(lag.from()))
                .map(Lag::words)
                .findFirst()
                .orElse("What went before it cures or cools");
        return not(step, Why.CURES, what + ": it can begin in " + time(idle) + ".");
    }

    /** True where a window is open that the step leads to closing in time: that is done whatever it takes. */
    private boolean closing(Step step) {
        return problem.windows().stream().anyMatch(w -> open(w) && closes(w, step));
    }

    /** A window that is open and served alone, where the step leads to closing no such one. */
    private Optional<Window> servedAlone(Step step) {
        List<Window> alone =
                problem.windows().stream().filter(w -> w.alone() && open(w)).toList();
        return alone.stream().anyMatch(w -> closes(w, step))
                ? Optional.empty()
                : alone.stream().findFirst();
    }

    /** True where a window is open since before this evening and can still be kept. */
    private boolean open(Window window) {
        return window.opens().isEmpty() && !late.contains(window.id()) && !done.contains(window.closes());
    }

    private boolean closes(Window window, Step step) {
        return window.closes().equals(step.id()) || leading(window.closes()).contains(step.id());
    }

    /** All ahead that leads to a step, the step itself left out. */
    private Set<String> leading(String id) {
        Set<String> found = new HashSet<>();
        List<String> further = new ArrayList<>(List.of(id));
        while (!further.isEmpty()) {
            for (String need : needs.getOrDefault(further.remove(further.size() - 1), Set.of())) {
                if (found.add(need)) {
                    further.add(need);
                }
            }
        }
        return found;
    }

    private static Optional<NotTonight> not(Step step, Why why, String words) {
        return Optional.of(new NotTonight(step, why, words));
    }

    private static String said(Step step, Step one) {
        return step.equals(one) ? "It " : one.id() + ", which must follow at once, ";
    }

    private List<String> because(Step stop) {
        List<String> because = new ArrayList<>();
        unit.type().windows().stream()
                .filter(w -> w.closes().equals(stop.id()))
                .forEach(w -> because.add(w.name() + " is closed with it."));
        problem.lags().stream()
                .filter(lag -> lag.from().equals(stop.id()))
                .forEach(lag -> because.add(lag.words() + " while nobody stands there."));
        Optional<Step> next =
                ahead.values().stream().filter(s -> !done.contains(s.id())).findFirst();
        next.filter(s -> ready.getOrDefault(s.id(), 0.0) > 0)
                .ifPresent(s -> because.add("Something else has to be got ready for " + s.id() + " anyway."));
        next.filter(s -> because.isEmpty()).ifPresent(s -> because.add("No window is open then."));
        if (next.isEmpty()) {
            because.add("Nothing is left to do.");
        }
        return because;
    }

    private static String time(double seconds) {
        double minutes = Math.max(0, seconds) / 60;
        if (minutes < 120) {
            return String.format(Locale.ROOT, "%.0f min", Math.ceil(Math.max(0, minutes - 1e-9)));
        }
        return minutes < 48 * 60
                ? String.format(Locale.ROOT, "%.1f h", minutes / 60)
                : String.format(Locale.ROOT, "%.0f days", minutes / 1440);
    }
}
