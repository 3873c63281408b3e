package shimwright.rebuild.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import shimwright.rebuild.plan.model.Cost;
import shimwright.rebuild.plan.model.Risk;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.search.Search;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Why;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType.Window;

/** Why each step of a plan stands where it stands. */
final class Reasons {
    /** Seconds below which two costs are the same. */
    private static final double SAME = 1e-6;

    private final Unit unit;
    private final Order order;
    private final SequencingProblem problem;
    private final List<String> plan;
    private final Map<String, Integer> at = new LinkedHashMap<>();
    private final double total;
    private final Function<List<String>, Optional<Cost>> price;

    private Reasons(Unit unit, Order order, SequencingProblem problem, List<String> plan, double total) {
        this.unit = unit;
        this.order = order;
        this.problem = problem;
        this.plan = plan;
        this.total = total;
        this.price = Search.prices(problem);
        plan.forEach(id -> at.put(id, at.size()));
    }

    static List<StepReason> of(Unit unit, Order order, SequencingProblem problem, List<String> plan, double total) {
        Reasons reasons = new Reasons(unit, order, problem, plan, total);
        return plan.stream().map(reasons::of).toList();
    }

    private Step step(String id) {
        return Objects.requireNonNull(order.steps().get(id));
    }

    private int place(String id) {
        return at.getOrDefault(id, -1);
    }

    private StepReason of(String id) {
        Map<Step, Why> waitsFor = new LinkedHashMap<>();
        order.before().getOrDefault(id, Map.of()).forEach((before, why) -> waitsFor.put(step(before), why));
        List<Step> heldUp = plan.stream()
                .filter(other -> order.before().getOrDefault(other, Map.of()).containsKey(id))
                .map(this::step)
                .toList();
        Map<Step, Double> behind = new LinkedHashMap<>();
        double ahead = 0;
        for (Risk risk : problem.risks()) {
            boolean saved = place(risk.hold()) < place(risk.early()) && risk.seconds() > 0;
            if (saved && risk.early().equals(id)) {
                behind.merge(step(risk.hold()), risk.seconds(), Double::sum);
            }
            ahead += saved && risk.hold().equals(id) ? risk.seconds() : 0;
        }
        String last = heldUp.isEmpty() ? "" : heldUp.get(0).id();
        return new StepReason(
                step(id),
                waitsFor,
                heldUp,
                windows(id, true),
                windows(id, false),
                behind,
                ahead,
                last,
                putOff(id, last.isEmpty() ? plan.size() : place(last)),
                asWellAfter(id));
    }

    /** The last step after which it could come at the same cost, as after every one on the way there. */
    private String asWellAfter(String id) {
        List<String> other = new ArrayList<>(plan);
        int at = place(id);
        boolean same = true;
        while (same && at + 1 < other.size()) {
            Collections.swap(other, at, at + 1);
            same = price.apply(other)
                    .filter(cost -> Math.abs(cost.total() - total) < SAME)
                    .isPresent();
            at += same ? 1 : 0;
        }
        return at == place(id) ? "" : plan.get(at);
    }

    private List<Window> windows(String id, boolean opening) {
        return unit.type().windows().stream()
                .filter(w -> (opening ? w.opens() : w.closes()).equals(id))
                .toList();
    }

    /** The difference in cost where the step is moved to just before a place of the plan. */
    private OptionalDouble putOff(String id, int until) {
        int from = place(id);
        if (until <= from + 1) {
            return OptionalDouble.empty();
        }
        List<String> other = new ArrayList<>(plan);
        other.remove(from);
        other.add(until - 1, id);
        return price.apply(other)
                .map(cost -> OptionalDouble.of(cost.total() - total))
                .orElse(OptionalDouble.empty());
    }
}
