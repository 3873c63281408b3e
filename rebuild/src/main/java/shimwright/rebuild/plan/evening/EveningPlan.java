package shimwright.rebuild.plan.evening;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shimwright.rebuild.plan.BuildState;
import shimwright.rebuild.plan.Order;
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

/**
 * Takes the steps of a plan in their order as far as the evening goes. No window is opened that could not be closed before the
 * end; a step that would have to wait for something that comes later is passed over, and what comes after it is only done
 * where that takes no more getting ready than the plan has for it, so that nothing is wasted.
 */
public final class EveningPlan {
    /** Waits up to this are stood through at the bench. */
    private static final double SHORT = 15 * 60;

    private final Unit unit;
    private final Order order;
    private final BuildState present;
    private final SequencingProblem problem;
    private final Evening evening;
    private final Map<String, Step> ahead = new LinkedHashMap<>();
    private final Map<String, Double> ready;
    private final List<String> sofar = new ArrayList<>();
    private final Set<String> done = new HashSet<>();
    private final List<Timed> timed = new ArrayList<>();
    private final List<NotTonight> not = new ArrayList<>();
    private double now;
    private double waited;
    private double got;

    private EveningPlan(Unit unit, Map<String, String> taken, BuildState present, Plan plan, Evening evening) {
        this.unit = unit;
        this.order = Order.of(unit, taken);
        this.present = present;
        this.problem = Planner.problem(unit, taken, present);
        this.evening = evening;
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
                    order.leadingTo(window.closes()).stream()
                            .filter(id -> ahead.containsKey(id) && !done.contains(id) && wanted.add(id))
                            .forEach(openers::add);
                    openers.add(window.closes());
                }
            }
        }
        wanted.add(first.id());
        return ahead.values().stream().filter(s -> wanted.contains(s.id())).toList();
    }

    private Optional<NotTonight> hindered(Step step) {
        List<Step> waitsFor = order.waitsFor(step.id(), done).keySet().stream().toList();
        if (!waitsFor.isEmpty()) {
            return not(step, Why.BEHIND, "It waits for " + waitsFor.get(0).id() + ", which is not for this evening.");
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
                    + time(Math.max(0, evening.seconds() - now)) + " are left.";
            return stretch.size() > 1
                    ? not(
                            step,
                            Why.WINDOW,
                            "It opens a window that is closed by "
                                    + stretch.get(stretch.size() - 1).id() + "; up to there it " + time)
                    : not(step, Why.TOO_LONG, "It " + time);
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

    /** True where a window is open that the step leads to closing: that is done whatever it takes. */
    private boolean closing(Step step) {
        return problem.windows().stream()
                .filter(w -> w.opens().isEmpty() && !done.contains(w.closes()))
                .anyMatch(w -> w.closes().equals(step.id())
                        || order.leadingTo(w.closes()).contains(step.id()));
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
        double minutes = seconds / 60;
        if (minutes < 120) {
            return String.format(Locale.ROOT, "%.0f min", Math.ceil(minutes - 1e-9));
        }
        return minutes < 48 * 60
                ? String.format(Locale.ROOT, "%.1f h", minutes / 60)
                : String.format(Locale.ROOT, "%.0f days", minutes / 1440);
    }
}
