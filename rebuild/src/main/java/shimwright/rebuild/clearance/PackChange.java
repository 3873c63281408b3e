package shimwright.rebuild.clearance;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import shimwright.rebuild.clearance.Session.Change;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.plan.Order;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Phase;
import shimwright.rebuild.unit.model.Unit;

/** What stands in the way of choosing another pack. */
final class PackChange {
    private PackChange() {}

    static Change of(Unit unit, Job job, Order order, Clearance clearance, Reading current) {
        Optional<Step> fitting = fitting(unit, job, clearance);
        List<Step> on = fitting.map(step -> standingOn(job, order, step)).orElse(List.of());
        String closed = on.stream()
                .filter(Step::oneWay)
                .findFirst()
                .map(step -> "step " + step.named() + " is done and closes over the pack")
                .orElse("");
        List<String> undo = new ArrayList<>(on.stream().map(Step::id).toList());
        fitting.ifPresent(step -> undo.add(0, step.id()));
        Collections.reverse(undo);
        return new Change(closed, List.copyOf(undo), undoing(unit, job, clearance, current), renaming(current));
    }

    /** The step done that fitted the pack for good: it came last, and none took it out again. */
    private static Optional<Step> fitting(Unit unit, Job job, Clearance clearance) {
        String item = clearance.positions().get(0).item();
        Step in = null;
        for (String id : item.isEmpty() ? List.<String>of() : List.copyOf(job.stepsDone())) {
            Step step = unit.findStep(id).orElse(null);
            if (step != null && (step.installs().contains(item) || step.builds().contains(item))) {
                in = step;
            } else if (step != null && step.removes().contains(item)) {
                in = null;
            }
        }
        return Optional.ofNullable(in)
                .or(() -> unit.stepsReading(clearance.id(), Phase.FINAL).stream()
                        .filter(step -> job.stepsDone().contains(step.id()))
                        .findFirst());
    }

    /** Steps done that stand on a step, in the order in which they were done. */
    private static List<Step> standingOn(Job job, Order order, Step step) {
        Set<String> found = new HashSet<>();
        List<String> open = new ArrayList<>(List.of(step.id()));
        while (!open.isEmpty()) {
            order.waiting(open.remove(open.size() - 1)).stream()
                    .map(Step::id)
                    .filter(found::add)
                    .forEach(open::add);
        }
        return job.stepsDone().stream()
                .filter(found::contains)
                .flatMap(id -> Optional.ofNullable(order.steps().get(id)).stream())
                .toList();
    }

    private static String undoing(Unit unit, Job job, Clearance clearance, Reading current) {
        List<String> steps = unit.stepsReading(clearance.id(), current.phase()).stream()
                .filter(step -> job.stepsDone().contains(step.id()))
                .map(Step::named)
                .toList();
        return current.rounds().isEmpty() || steps.isEmpty()
                ? ""
                : "Undoing step " + String.join(" or ", steps) + " opens this reading again: "
                        + rounds(current, "no longer", "and it is read anew");
    }

    private static String renaming(Reading current) {
        return current.rounds().isEmpty()
                ? ""
                : "If other pieces are in than those named, name them: "
                        + rounds(current, "then no longer", "for they were read with another pack");
    }

    private static String rounds(Reading reading, String no, String why) {
        int rounds = reading.rounds().size();
        return (rounds == 1 ? "its round " + no + " counts, " : "its " + rounds + " rounds " + no + " count, ") + why
                + ".";
    }
}
