package shimwright.rebuild.unit.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;
import shimwright.rebuild.unit.model.Component;
import shimwright.rebuild.unit.model.Quantity;
import shimwright.rebuild.unit.model.Statistic;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.unit.model.UnitType.Check;
import shimwright.rebuild.unit.model.UnitType.CheckKind;
import shimwright.rebuild.unit.model.UnitType.HoldPoint;
import shimwright.rebuild.unit.model.UnitType.WorkedOut;

/**
 * The two steps of a clearance: one reads it with trial shims, one proves it with the chosen ones.
 *
 * @param name of the clearance
 * @param clearance its id
 * @param items shims that no other step fits
 * @param tool id of the gauge
 */
record ReadingSteps(String name, String clearance, List<String> items, String tool) {
    /** Common practice, no source. */
    private static final double MINUTES = 15 * 60;

    /** Both steps read it. */
    UnitType readTwice(UnitType type, Step before) {
        Step reads = trial(type, before, "Trial shims in. Read " + name + ".");
        Step proves = reading(last(type, before, reads, "Chosen shims in. Read " + name + " again."), Step.Phase.FINAL);
        return Component.with(type, "steps", steps(type, before, reads, proves));
    }

    /** The first step reads the play that trial shims leave; the second is held until it turns as a preload does. */
    UnitType provenByTorque(UnitType type, Step before, List<Double> drag) {
        Step reads = trial(type, before, "Trial shims in that leave play. Read it for " + name + ".");
        Step proves = last(type, before, reads, "Chosen shims in. Turn it: " + name + ".");
        String id = TypeParts.freeId(
                "H", type.holdPoints().stream().map(HoldPoint::id).toList());
        HoldPoint hold = new HoldPoint(id, name, List.of(check(drag)), 0, List.of(), Set.of());
        List<HoldPoint> holds =
                Stream.concat(type.holdPoints().stream(), Stream.of(hold)).toList();
        UnitType held = Component.with(type, "hold_points", holds);
        return Component.with(held, "steps", steps(type, before, reads, Component.with(proves, "hold", id)));
    }

    private static Check check(List<Double> drag) {
        boolean read = drag.size() == 2;
        return new Check(
                read ? "torque" : "turns",
                read
                        ? "turning torque, oiled, without a seal"
                        : "it turns evenly and heavier than before, and has no play",
                read ? CheckKind.TORQUE : CheckKind.NONE,
                read ? Optional.of(torque(drag.get(0))) : Optional.empty(),
                read ? Optional.of(torque(drag.get(1))) : Optional.empty(),
                List.of(),
                Optional.empty(),
                "",
                1,
                List.of(),
                Optional.empty(),
                Statistic.EACH,
                1,
                Optional.empty(),
                "",
                "",
                WorkedOut.NONE,
                "",
                Set.of());
    }

    private static Quantity torque(double newtonMetres) {
        return new Quantity(newtonMetres, Units.NM, Quantities.brief(newtonMetres, Units.NM));
    }

    private Step trial(UnitType type, Step before, String todo) {
        String id = TypeParts.freeId("P", type.steps().stream().map(Step::id).toList());
        return reading(
                TypeParts.step(id, todo, before.at(), Map.of(before.id(), Step.Why.SAME_PART), items),
                Step.Phase.TRIAL);
    }

    private Step last(UnitType type, Step before, Step trial, String todo) {
        String id = TypeParts.freeId(
                "P",
                Stream.concat(type.steps().stream().map(Step::id), Stream.of(trial.id()))
                        .toList());
        return timed(TypeParts.step(id, todo, before.at(), Map.of(trial.id(), Step.Why.SAME_PART), List.of()));
    }

    /** The two follow the step; what would shut in what that step fitted waits for the second. */
    private static List<Step> steps(UnitType type, Step before, Step reads, Step proves) {
        List<Step> steps = new ArrayList<>();
        for (Step step : type.steps()) {
            steps.add(step.after().get(before.id()) == Step.Why.BLOCKED ? waiting(step, proves.id()) : step);
        }
        // of steps of one id, which are several variants', after the last
        int at = steps.size();
        while (!steps.get(at - 1).id().equals(before.id())) {
            at--;
        }
        steps.addAll(at, List.of(reads, proves));
        return steps;
    }

    private static Step waiting(Step step, String last) {
        Map<String, Step.Why> before = new LinkedHashMap<>(step.after());
        before.put(last, Step.Why.MEASURE_FIRST);
        return Component.with(step, "after", before);
    }

    private Step reading(Step step, Step.Phase phase) {
        return Component.with(Component.with(timed(step), "clearance", clearance), "phase", phase);
    }

    private Step timed(Step step) {
        return Component.with(Component.with(step, "duration", MINUTES), "tools", List.of(tool));
    }
}
