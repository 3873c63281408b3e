package shimwright.rebuild.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.plan.Planner;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Why;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType.Choice;
import shimwright.rebuild.workbench.Workbench;

/** What forbids an entry about a step. The bench comes first: what was done out of order is taken in, with its reason. */
final class StepRules {
    private StepRules() {}

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
    static List<Refusal> open(Workbench bench, String id) {
        if (bench.step(id).isEmpty()) {
            return Rules.one(
                    "step",
                    "step " + id,
                    "this unit has no such step with the choices taken, or it is left out",
                    "Go back to the build page");
        }
        return bench.job().stepsDone().contains(id)
                ? Rules.one("step", "step " + id, "this step is already done", "")
                : List.of();
    }

    static List<Refusal> done(Workbench bench, Entry.StepDone e) {
        List<Refusal> open = open(bench, e.step());
        if (!open.isEmpty()) {
            return open;
        }
        Set<String> done = bench.job().stepsDone();
        List<Refusal> refusals = new ArrayList<>();
        Map<Step, Why> waiting = bench.order().waitsFor(e.step(), done);
        if (!waiting.isEmpty()) {
            refusals.add(new Refusal(
                    "step",
                    "step " + e.step(),
                    "it waits for " + named(waiting.keySet()),
                    "Do these first, mark them done if they are, or say that it was done out of order"));
        }
        refusals.addAll(HoldPoints.guessedTorques(bench, bench.unit().step(e.step()), e.note()));
        refusals.addAll(standing(bench, e.step()));
        return refusals;
    }

    /** What stands against a step beside its order: what is awaited or missing, its hold point, clocks. */
    private static List<Refusal> standing(Workbench bench, String id) {
        List<Refusal> refusals =
                new ArrayList<>(OrderRules.missing(bench, bench.unit().step(id)));
        refusals.addAll(0, OrderRules.awaited(bench.job(), bench.unit().step(id)));
        refusals.addAll(heldOrTimed(bench, id));
        return refusals;
    }

    /** What stands against a step whose parts are in. */
    static List<Refusal> heldOrTimed(Workbench bench, String id) {
        List<Refusal> refusals =
                new ArrayList<>(HoldPoints.open(bench, bench.unit().step(id)));
        refusals.addAll(ClockRules.against(bench, id));
        return refusals;
    }

    static List<Refusal> jumped(Workbench bench, Entry.StepJumped e) {
        List<Refusal> open = open(bench, e.step());
        if (!open.isEmpty()) {
            return open;
        }
        List<Refusal> refusals = new ArrayList<>();
        if (bench.order().free(e.step(), bench.job().stepsDone())) {
            refusals.add(
                    new Refusal("step", "step " + e.step(), "everything it waits for is done", "Say that it is done"));
        }
        refusals.addAll(Rules.reason(e.reason(), "Say how it came about; it stands on the record"));
        refusals.addAll(standing(bench, e.step()));
        return refusals;
    }

    static List<Refusal> undone(Workbench bench, Entry.StepUndone e) {
        Set<String> done = bench.job().stepsDone();
        if (!done.contains(e.step())) {
            return Rules.one("step", "step " + e.step(), "this step is not done", "");
        }
        List<Refusal> refusals = new ArrayList<>(Rules.reason(e.reason(), "Say why it was undone"));
        List<Step> on = bench.order().waiting(e.step()).stream()
                .filter(step -> done.contains(step.id()))
                .toList();
        if (!on.isEmpty()) {
            refusals.add(new Refusal(
                    "step", "step " + e.step(), "done after it and standing on it: " + named(on), "Undo these first"));
        }
        return refusals;
    }

    static List<Refusal> leftOut(Workbench bench, Entry.StepLeftOut e) {
        List<Refusal> refusals = new ArrayList<>(open(bench, e.step()));
        refusals.addAll(Rules.reason(e.reason(), "Say why it is left out; it stands on the record"));
        return refusals;
    }

    static List<Refusal> takenUp(Workbench bench, Entry.StepTakenUp e) {
        return bench.job().leftOut().containsKey(e.step())
                ? List.of()
                : Rules.one("step", "step " + e.step(), "it is not left out", "Go back to the plan");
    }

    static List<Refusal> cannot(Workbench bench, Entry.StepCannot e) {
        List<Refusal> refusals = new ArrayList<>(open(bench, e.step()));
        refusals.addAll(Rules.reason(e.reason(), "Say what stands in the way"));
        return refusals;
    }

    static List<Refusal> clock(Workbench bench, Entry.ClockStarted e) {
        List<Refusal> refusals = new ArrayList<>(open(bench, e.step()));
        if (!(e.seconds() > 0) || Double.isInfinite(e.seconds())) {
            refusals.add(Refusal.of("minutes", "it runs for no time", "Say how many minutes it runs"));
        }
        refusals.addAll(bench.timers().stream()
                .filter(timer -> timer.step().equals(e.step()) && timer.name().equals(e.name()))
                .map(timer -> Refusal.of(
                        "what runs", "such a clock runs already", "Strike it first, or give this one another name"))
                .toList());
        return refusals;
    }

    static List<Refusal> overruled(Workbench bench, Entry.TimeOverruled e) {
        List<Refusal> refusals = new ArrayList<>(open(bench, e.step()));
        refusals.addAll(Rules.reason(e.reason(), "Say why it may be so; it stands on the record"));
        return refusals;
    }

    static List<Refusal> choice(Workbench bench, Entry.ChoiceTaken e) {
        String place = "choice " + e.choice();
        Optional<Choice> choice = bench.unit().type().choices().stream()
                .filter(c -> c.id().equals(e.choice()))
                .findFirst();
        if (choice.isEmpty()) {
            return Rules.one("choice", place, "this unit has no such choice", "Go back to the plan");
        }
        Set<String> sides = choice.get().sides().keySet();
        if (!sides.contains(e.side())) {
            return Rules.one("side", place, "it has no side " + e.side(), "Take " + String.join(" or ", sides));
        }
        Map<String, String> taken = new LinkedHashMap<>(bench.job().sides());
        taken.put(e.choice(), e.side());
        return Planner.hindrances(bench.unit(), taken, bench.job().stepsDone());
    }

    static List<Refusal> added(Workbench bench, Entry.StepAdded e) {
        Job job = bench.job();
        Unit unit = bench.unit();
        List<Refusal> refusals = new ArrayList<>();
        if (unit.findStep(e.step()).isPresent()) {
            refusals.add(
                    new Refusal("step", "step " + e.step(), "this unit has a step of that name", "Give it another"));
        }
        if (!unit.type().stations().containsKey(e.at())) {
            refusals.add(new Refusal(
                    "at",
                    "station",
                    "this unit has no station \"" + e.at() + "\"",
                    "Choose one of " + String.join(", ", unit.type().stations().keySet())));
        }
        refusals.addAll(unknown(bench, "after", e.after()));
        refusals.addAll(unknown(bench, "before", e.before()));
        for (int i = 0; i < e.before().size(); i++) {
            String id = e.before().get(i);
            if (job.stepsDone().contains(id)) {
                refusals.add(new Refusal(
                        "before[" + i + "]",
                        "step " + id,
                        "it is done already, so nothing can come before it",
                        "Undo it first"));
            }
        }
        refusals.addAll(Rules.reason(e.reason(), "Say why it is needed; it stands on the record"));
        if (!refusals.isEmpty()) {
            return refusals;
        }
        List<List<String>> before =
                e.before().stream().map(later -> List.of(e.step(), later)).toList();
        Unit with = unit.tailored(
                List.of(Step.own(e.step(), e.todo(), e.at(), e.duration(), e.after())), before, List.of());
        // a circle through a step that stands done shows only once that step is undone
        List<Refusal> circles = Planner.circles(with, job.sides());
        return circles.isEmpty() ? Planner.hindrances(with, job.sides(), job.stepsDone()) : circles;
    }

    private static List<Refusal> unknown(Workbench bench, String key, List<String> steps) {
        return IntStream.range(0, steps.size())
                .filter(i -> bench.step(steps.get(i)).isEmpty())
                .mapToObj(i -> new Refusal(
                        key + "[" + i + "]",
                        "step " + steps.get(i),
                        "this unit has no such step to come before or after",
                        "Look at the plan"))
                .toList();
    }
}
