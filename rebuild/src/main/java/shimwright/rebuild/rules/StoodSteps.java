package shimwright.rebuild.rules;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.clearance.Session;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.supply.Need;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Phase;
import shimwright.rebuild.unit.model.UnitType.Window;
import shimwright.rebuild.workbench.Workbench;

/**
 * Steps that can be said to have been done before, all in one go, so that a reading that waits for them can be taken: who sets one
 * clearance of a box that stands half built need not mark each. What is read, held or timed is none of them.
 *
 * @param steps in an order in which they can have been done
 * @param byItself what comes next after these and must be read or marked by itself
 * @param waiting how many steps the reading waits for altogether
 * @param old parts of them that must be new before the unit goes back, by name: they stand with what came out
 * @param guessed true where a torque of them is a guess, so that a word about it is needed
 */
public record StoodSteps(List<Step> steps, List<Step> byItself, int waiting, List<String> old, boolean guessed) {
    /** None. */
    public static final StoodSteps NONE = new StoodSteps(List.of(), List.of(), 0, List.of(), false);

    /** What the reading of a clearance waits for; none where it can be taken. */
    public static StoodSteps before(Workbench bench, String clearance, Phase phase) {
        Set<String> done = bench.job().stepsDone();
        List<Step> reading = bench.unit().stepsReading(clearance, phase).stream()
                .filter(step -> bench.step(step.id()).isPresent())
                .toList();
        boolean free = reading.stream().anyMatch(step -> bench.order().free(step.id(), done));
        return reading.isEmpty() || free ? NONE : before(bench, reading.get(0).id());
    }

    private static StoodSteps before(Workbench bench, String step) {
        Set<String> done = bench.job().stepsDone();
        Set<String> leading = bench.order().leadingTo(step);
        leading.removeAll(done);
        Set<String> alone = new LinkedHashSet<>();
        List<Step> taken = taken(bench, leading, alone);
        while (alone.addAll(opening(bench, taken))) {
            taken = taken(bench, leading, alone);
        }
        List<Step> steps = taken;
        Set<String> had = new LinkedHashSet<>(done);
        steps.forEach(one -> had.add(one.id()));
        return new StoodSteps(
                steps,
                bench.order().steps().values().stream()
                        .filter(one -> leading.contains(one.id()) && !had.contains(one.id()))
                        .filter(one -> bench.order().free(one.id(), had))
                        .toList(),
                leading.size(),
                steps.stream()
                        .flatMap(one -> bench.heldUp().getOrDefault(one.id(), List.of()).stream())
                        .map(Need::name)
                        .distinct()
                        .toList(),
                steps.stream()
                        .anyMatch(one ->
                                !HoldPoints.guessedTorques(bench, one, "").isEmpty()));
    }

    /** Of the steps that lead there all that wait for done ones and for each other alone, in a possible order. */
    private static List<Step> taken(Workbench bench, Set<String> leading, Set<String> alone) {
        Set<String> had = new LinkedHashSet<>(bench.job().stepsDone());
        List<Step> taken = new ArrayList<>();
        boolean more = true;
        while (more) {
            more = false;
            for (Step step : bench.order().steps().values()) {
                boolean next = leading.contains(step.id())
                        && !had.contains(step.id())
                        && !alone.contains(step.id())
                        && bench.order().free(step.id(), had)
                        && unread(bench, step).isEmpty()
                        && OrderRules.awaited(bench.job(), step).isEmpty()
                        && StepRules.heldOrTimed(bench, step.id()).isEmpty();
                if (next) {
                    taken.add(step);
                    had.add(step.id());
                    more = true;
                }
            }
        }
        return List.copyOf(taken);
    }

    /** Steps that open a window which none of them closes. */
    private static Set<String> opening(Workbench bench, List<Step> steps) {
        Set<String> ids = steps.stream().map(Step::id).collect(Collectors.toSet());
        return ids.stream().filter(id -> opened(bench, id, ids).isPresent()).collect(Collectors.toSet());
    }

    /** The window that a step opens and that neither a step of these nor one that is done closes. */
    private static Optional<Window> opened(Workbench bench, String step, Set<String> with) {
        return bench.unit().type().windows().stream()
                .filter(window -> window.opens().equals(step)
                        && !with.contains(window.closes())
                        && !bench.job().stepsDone().contains(window.closes()))
                .findFirst();
    }

    /** The clearance that a step reads and that is not read or accepted yet. */
    private static Optional<String> unread(Workbench bench, Step step) {
        if (step.clearance().isBlank()) {
            return Optional.empty();
        }
        Session session = bench.session(step.clearance());
        boolean read = step.phase() == Phase.TRIAL
                ? session.trial().settled()
                : session.accepted() != null
                        && (step.phase() != Phase.AGAIN
                                || session.accepted().what().phase() == Phase.AGAIN);
        return read ? Optional.empty() : Optional.of(step.clearance());
    }

    /** What forbids saying that steps were done before: each by the rules of a step, those before it taken as done. */
    static List<Refusal> against(Workbench bench, Entry.StepsStood e) {
        if (e.steps().isEmpty()) {
            return Rules.one("steps", "steps", "nothing chosen", "Say which are done");
        }
        List<Refusal> refusals = new ArrayList<>();
        Set<String> done = new LinkedHashSet<>(bench.job().stepsDone());
        Set<String> all = e.steps().stream().map(Entry.StepDone::step).collect(Collectors.toSet());
        for (Entry.StepDone one : e.steps()) {
            String id = one.step();
            List<Refusal> open = StepRules.open(bench, id);
            refusals.addAll(open);
            if (open.isEmpty() && done.add(id)) {
                refusals.addAll(against(bench, e, bench.unit().step(id), done));
                opened(bench, id, all)
                        .ifPresent(window -> refusals.add(new Refusal(
                                "steps",
                                "step " + id,
                                "the clock of \"" + window.name() + "\" begins with it",
                                "Mark it by itself when it is done")));
            }
        }
        return refusals;
    }

    private static List<Refusal> against(Workbench bench, Entry.StepsStood e, Step step, Set<String> done) {
        List<Refusal> refusals = new ArrayList<>();
        Set<Step> waiting = bench.order().waitsFor(step.id(), done).keySet();
        if (!waiting.isEmpty()) {
            refusals.add(new Refusal(
                    "steps",
                    "step " + step.id(),
                    "it waits for " + StepRules.named(waiting),
                    "Say first that these are done"));
        }
        unread(bench, step)
                .ifPresent(clearance -> refusals.add(new Refusal(
                        "steps",
                        "step " + step.id(),
                        "clearance " + clearance + " is read at it, and is not read yet",
                        "Read that one first")));
        refusals.addAll(HoldPoints.guessedTorques(bench, step, e.note()));
        refusals.addAll(OrderRules.awaited(bench.job(), step));
        refusals.addAll(StepRules.heldOrTimed(bench, step.id()));
        return refusals;
    }

    /** A step that stands done on one of these and is none of them; empty where none does. */
    static Optional<String> standingOn(Workbench bench, Entry.StepsStood stood) {
        Set<String> all = stood.steps().stream().map(Entry.StepDone::step).collect(Collectors.toSet());
        return all.stream()
                .flatMap(id -> bench.order().waiting(id).stream())
                .map(Step::id)
                .filter(id -> !all.contains(id) && bench.job().stepsDone().contains(id))
                .findFirst();
    }
}
