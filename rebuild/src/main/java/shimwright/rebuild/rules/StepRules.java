package shimwright.rebuild.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.plan.Order;
import shimwright.rebuild.plan.Planner;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Why;
import shimwright.rebuild.unit.model.Unit;

/** What forbids an entry about a step. The bench comes first: what was done out of order is taken in, with its reason. */
final class StepRules {
    private StepRules() {}

    /** Empty where the entry is not about a step. */
    static Optional<List<Refusal>> check(Job job, Unit unit, Shop shop, Entry.OfJob entry) {
        if (entry instanceof Entry.StepDone e) {
            return Optional.of(done(job, unit, shop, e.step()));
        }
        if (entry instanceof Entry.StepJumped e) {
            return Optional.of(jumped(job, unit, shop, e));
        }
        if (entry instanceof Entry.StepUndone e) {
            return Optional.of(undone(job, unit, e.step()));
        }
        if (entry instanceof Entry.StepLeftOut e) {
            return Optional.of(leftOut(job, unit, e));
        }
        if (entry instanceof Entry.StepTakenUp e) {
            return Optional.of(
                    job.leftOut().containsKey(e.step())
                            ? List.of()
                            : Rules.one("step " + e.step(), "it is not left out", "Go back to the plan"));
        }
        return entry instanceof Entry.StepAdded e ? Optional.of(added(job, unit, e)) : Optional.empty();
    }

    /** A step's order without its full stop, to stand within a sentence. */
    private static String plain(String order) {
        return order.endsWith(".") ? order.substring(0, order.length() - 1) : order;
    }

    static String named(Collection<Step> steps) {
        return steps.stream()
                .map(step -> step.id() + " (" + plain(step.todo()) + ")")
                .collect(Collectors.joining("; "));
    }

    /** What is wrong with a step that is said to be done, its order left aside. */
    private static List<Refusal> open(Job job, Order order, String id) {
        if (!order.steps().containsKey(id)) {
            return Rules.one(
                    "step " + id,
                    "this unit has no such step with the choices taken, or it is left out",
                    "Go back to the build page");
        }
        return job.stepsDone().contains(id) ? Rules.one("step " + id, "this step is already done", "") : List.of();
    }

    private static List<Refusal> done(Job job, Unit unit, Shop shop, String id) {
        Order order = Order.of(unit, job.sides());
        List<Refusal> open = open(job, order, id);
        if (!open.isEmpty()) {
            return open;
        }
        List<Refusal> refusals = new ArrayList<>();
        Map<Step, Why> waiting = order.waitsFor(id, job.stepsDone());
        if (!waiting.isEmpty()) {
            refusals.add(new Refusal(
                    "step " + id,
                    "it waits for " + named(waiting.keySet()),
                    "Do these first, mark them done if they are, or say that it was done out of order"));
        }
        refusals.addAll(OrderRules.awaited(job, unit.step(id)));
        refusals.addAll(Holds.open(job, unit, shop, unit.step(id)));
        return refusals;
    }

    private static List<Refusal> jumped(Job job, Unit unit, Shop shop, Entry.StepJumped e) {
        Order order = Order.of(unit, job.sides());
        List<Refusal> open = open(job, order, e.step());
        if (!open.isEmpty()) {
            return open;
        }
        List<Refusal> refusals = new ArrayList<>();
        if (order.free(e.step(), job.stepsDone())) {
            refusals.add(new Refusal("step " + e.step(), "everything it waits for is done", "Say that it is done"));
        }
        if (e.reason().isBlank()) {
            refusals.add(new Refusal("reason", "nothing typed", "Say how it came about; it stands on the record"));
        }
        refusals.addAll(OrderRules.awaited(job, unit.step(e.step())));
        refusals.addAll(Holds.open(job, unit, shop, unit.step(e.step())));
        return refusals;
    }

    private static List<Refusal> undone(Job job, Unit unit, String id) {
        if (!job.stepsDone().contains(id)) {
            return Rules.one("step " + id, "this step is not done", "");
        }
        Order order = Order.of(unit, job.sides());
        List<Step> on = order.waiting(id).stream()
                .filter(step -> job.stepsDone().contains(step.id()))
                .toList();
        if (on.isEmpty()) {
            return List.of();
        }
        return Rules.one("step " + id, "done after it and standing on it: " + named(on), "Undo these first");
    }

    private static List<Refusal> leftOut(Job job, Unit unit, Entry.StepLeftOut e) {
        List<Refusal> refusals = new ArrayList<>(open(job, Order.of(unit, job.sides()), e.step()));
        if (e.reason().isBlank()) {
            refusals.add(new Refusal("reason", "nothing typed", "Say why it is left out; it stands on the record"));
        }
        return refusals;
    }

    private static List<Refusal> added(Job job, Unit unit, Entry.StepAdded e) {
        List<Refusal> refusals = new ArrayList<>();
        if (unit.findStep(e.step()).isPresent()) {
            refusals.add(new Refusal("step " + e.step(), "this unit has a step of that name", "Give it another"));
        }
        if (!unit.type().stations().containsKey(e.at())) {
            refusals.add(new Refusal(
                    "station",
                    "this unit has no station \"" + e.at() + "\"",
                    "Choose one of " + String.join(", ", unit.type().stations().keySet())));
        }
        Order order = Order.of(unit, job.sides());
        Stream.concat(e.after().stream(), e.before().stream())
                .filter(id -> !order.steps().containsKey(id))
                .forEach(id -> refusals.add(new Refusal(
                        "step " + id, "this unit has no such step to come before or after", "Look at the plan")));
        e.before().stream()
                .filter(id -> job.stepsDone().contains(id))
                .forEach(id -> refusals.add(new Refusal(
                        "step " + id, "it is done already, so nothing can come before it", "Undo it first")));
        if (e.reason().isBlank()) {
            refusals.add(new Refusal("reason", "nothing typed", "Say why it is needed; it stands on the record"));
        }
        if (!refusals.isEmpty()) {
            return refusals;
        }
        List<List<String>> before =
                e.before().stream().map(later -> List.of(e.step(), later)).toList();
        Unit with = unit.tailored(
                List.of(Step.own(e.step(), e.todo(), e.at(), e.duration(), e.after())), before, List.of());
        // a circle through a step that stands done shows only once that step is undone
        List<Refusal> circles = Planner.circles(with, job.sides());
        return circles.isEmpty()
                ? Planner.lay(with, job.sides(), job.stepsDone()).refusals()
                : circles;
    }
}
