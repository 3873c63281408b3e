package shimwright.rebuild.unit.sense;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.unit.fault.Spelling;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Phase;
import shimwright.rebuild.unit.model.Step.Undo;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.unit.model.UnitType.Choice;
import shimwright.rebuild.unit.model.UnitType.HoldPoint;
import shimwright.rebuild.unit.model.UnitType.Side;
import shimwright.rebuild.unit.model.UnitType.Window;

/** Steps: times, undoing, what they wait for, circles, windows, choices, hold points and clearances that nobody reads. */
final class StepSense {
    private final SenseContext context;

    StepSense(SenseContext context) {
        this.context = context;
    }

    void check() {
        UnitType type = context.type();
        type.steps().stream().filter(context::sound).forEach(this::step);
        type.choices().stream().filter(context::sound).forEach(this::choice);
        type.holdPoints().stream().filter(context::sound).forEach(this::chance);
        setUps(type);
        if (type.steps().stream().allMatch(context::sound)) {
            used();
        }
        for (String variant : type.variants().keySet()) {
            orders(variant);
        }
        new HeatSense(context).check();
    }

    private void step(Step step) {
        context.within(step, "duration", step.duration(), 1, 24 * 3600, Kind.TIME);
        context.within(step, "undo_time", step.undoTime(), 0, 24 * 3600, Kind.TIME);
        context.within(step, "persons", step.persons(), 1, 6, Kind.NUMBER);
        if ((step.undo() == Undo.DESTROYS) == step.destroys().isEmpty()) {
            context.fault(
                    step,
                    "undo",
                    step.destroys().isEmpty() ? "undoing it destroys something, but not what" : "destroys without undo",
                    "Write undo: destroys and destroys: [what]");
        }
        if (step.clearance().isEmpty() != (step.phase() == Phase.NONE)) {
            context.fault(
                    step,
                    step.clearance().isEmpty() ? "phase" : "clearance",
                    "clearance and phase belong together",
                    "Write clearance: c and phase: trial, final or again");
        }
        if (step.after().containsKey(step.id())) {
            context.fault(step, "after", "it waits for itself", "Delete that");
        }
        step.tightened().forEach((id, count) -> tightened(step, id, count));
        step.because().forEach((before, reason) -> {
            if (!step.after().containsKey(before)) {
                context.fault(
                        step,
                        "because",
                        "a reason is given for " + before + ", but it does not wait for it",
                        "Add it to after");
            }
            if (!context.type().reasons().containsKey(reason)) {
                context.fault(
                        step,
                        "because",
                        "\"" + reason + "\" is not among the reasons",
                        Spelling.hint(reason, context.type().reasons().keySet(), "reasons"));
            }
        });
    }

    private void tightened(Step step, String id, int count) {
        if (!step.fasteners().contains(id)) {
            context.fault(step, "tightened", "it counts " + id + ", which it does not tighten", "Add it to fasteners");
            return;
        }
        context.type().fasteners().stream()
                .filter(fastener -> fastener.id().equals(id))
                .forEach(fastener -> context.within(step, "tightened", count, 1, fastener.quantity(), Kind.NUMBER));
    }

    private void chance(HoldPoint hold) {
        context.within(hold, "chance", hold.chance(), 0, 1, Kind.NUMBER);
        if ((hold.chance() > 0) == hold.reopens().isEmpty()) {
            context.fault(
                    hold,
                    hold.reopens().isEmpty() ? "chance" : "reopens",
                    "chance and reopens belong together",
                    "Write chance: 0.05 and reopens: [what is done again], or neither");
        }
    }

    private void setUps(UnitType type) {
        type.toolTimes().values().forEach(time -> context.within(type, "tool_times", time, 0, 24 * 3600, Kind.TIME));
        context.within(type, "station_change", type.stationChange(), 0, 3600, Kind.TIME);
        type.stations().values().forEach(station -> context.within(station, "room", station.room(), 1, 6, Kind.NUMBER));
        type.heavy().values().forEach(factor -> context.within(type, "heavy", factor, 1, 10, Kind.NUMBER));
    }

    private void choice(Choice choice) {
        if (!choice.sides().containsKey(choice.usual())) {
            context.fault(
                    choice,
                    "usual",
                    "\"" + choice.usual() + "\" is none of its sides",
                    Spelling.hint(choice.usual(), choice.sides().keySet(), "sides"));
        }
        if (choice.sides().size() < 2) {
            context.fault(choice, "sides", "there is nothing to choose", "Name two sides or leave the choice out");
        }
        for (Side side : choice.sides().values()) {
            pairs(side, "before", side.before());
            pairs(side, "drops", side.drops());
        }
    }

    private void pairs(Side side, String key, List<List<String>> pairs) {
        if (pairs.stream().anyMatch(pair -> pair.size() != 2)) {
            context.fault(side, key, "an order is a pair of steps", "Write [[FIRST, SECOND]]");
        }
    }

    private void used() {
        UnitType type = context.type();
        Set<String> holds = new HashSet<>(type.proof());
        Set<String> clearances = new HashSet<>();
        Set<String> removable = new HashSet<>();
        for (Step step : type.steps()) {
            holds.add(step.hold());
            clearances.add(step.clearance());
            removable.addAll(step.installs());
        }
        for (HoldPoint hold : type.holdPoints()) {
            if (!holds.contains(hold.id())) {
                context.remark(hold, "id", "no step stands in it", "Name it under hold of a step, or delete it");
            }
        }
        for (Clearance clearance : type.clearances()) {
            if (!clearances.contains(clearance.id())) {
                context.remark(clearance, "id", "it is read at no step", "Name it under clearance of a step");
            }
        }
        for (Step step : type.steps()) {
            if (!step.hold().isEmpty()) {
                heldClearance(step);
            }
            for (String item : step.removes()) {
                if (!removable.contains(item)) {
                    context.fault(step, "removes", "\"" + item + "\" is never put in", "Add it to installs of a step");
                }
            }
        }
    }

    /** A hold point that wants a clearance accepted stands at a step that reads that clearance. */
    private void heldClearance(Step step) {
        context.type().holdPoints().stream()
                .filter(hold -> hold.id().equals(step.hold()))
                .flatMap(hold -> hold.checks().stream())
                .filter(check ->
                        !check.clearance().isEmpty() && !check.clearance().equals(step.clearance()))
                .forEach(check -> context.fault(
                        step,
                        "hold",
                        "hold point " + step.hold() + " wants clearance " + check.clearance() + ", the step reads "
                                + (step.clearance().isEmpty() ? "none" : step.clearance()),
                        "Write clearance: " + check.clearance() + " with its phase, or take another hold point"));
    }

    private void orders(String variant) {
        UnitType type = context.variants().type(variant);
        StepGraph usual = StepGraph.of(type, Map.of());
        List<String> circle = usual.cycle();
        if (!circle.isEmpty()) {
            Step first = original(circle.get(0));
            context.fault(
                    first,
                    "after",
                    "in variant " + variant + " steps wait for each other: " + usual.words(circle),
                    "Take one of these out of after");
            return;
        }
        windows(variant, usual);
        for (Choice choice : context.type().choices()) {
            for (String name : choice.sides().keySet()) {
                StepGraph graph = StepGraph.of(type, Map.of(choice.id(), name));
                List<String> cycle = graph.cycle();
                if (!cycle.isEmpty()) {
                    context.fault(
                            choice,
                            "sides",
                            "side " + name + " makes steps of variant " + variant + " wait for each other: "
                                    + graph.words(cycle),
                            "Add to drops what no longer holds on this side");
                } else {
                    unopened(variant, choice, name, usual, graph);
                }
            }
        }
    }

    /** Windows whose closing waits for the opening usually, and on this side no more. */
    private void unopened(String variant, Choice choice, String side, StepGraph usual, StepGraph graph) {
        for (Window window : context.type().windows()) {
            if (graph.steps().containsKey(window.opens())
                    && graph.steps().containsKey(window.closes())
                    && usual.leads(window.opens(), window.closes())
                    && !graph.leads(window.opens(), window.closes())) {
                context.fault(
                        choice,
                        "sides",
                        "on side " + side + " of variant " + variant + " " + window.closes() + ", which closes "
                                + window.id() + ", does not come after " + window.opens(),
                        "Leave the pair out of drops, or add to before what still holds on this side");
            }
        }
    }

    private Step original(String id) {
        return context.type().steps().stream()
                .filter(step -> step.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private void windows(String variant, StepGraph graph) {
        for (Window window : context.type().windows()) {
            context.within(window, "longest", window.longest(), 1, 7 * 24 * 3600, Kind.TIME);
            if (window.opens().isEmpty() != window.closes().isEmpty()) {
                context.fault(window, "id", "opens and closes belong together", "Name both steps or none");
            } else if (graph.steps().containsKey(window.opens())
                    && graph.steps().containsKey(window.closes())) {
                span(variant, window, graph);
            }
        }
    }

    private void span(String variant, Window window, StepGraph graph) {
        if (!graph.leads(window.opens(), window.closes())) {
            context.fault(
                    window,
                    "closes",
                    "in variant " + variant + " " + window.closes() + " does not come after " + window.opens(),
                    "The step that opens a window must lead to the one that closes it");
            return;
        }
        double least = graph.between(window.opens(), window.closes());
        if (least > window.longest()) {
            context.fault(
                    window,
                    "longest",
                    "the window is open " + SenseContext.text(window.longest() / 60, Kind.NUMBER)
                            + " min, the steps in it take " + SenseContext.text(least / 60, Kind.NUMBER)
                            + " min at least",
                    "No order can keep it; look at the times");
        }
    }
}
