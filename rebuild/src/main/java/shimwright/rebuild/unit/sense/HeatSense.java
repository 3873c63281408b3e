package shimwright.rebuild.unit.sense;

import java.util.List;
import java.util.Map;
import java.util.Set;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Danger;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.unit.model.UnitType.Window;

/** What is heated or chilled at one step and fitted at another cools between them: a window must hold them together. */
final class HeatSense {
    private final SenseContext context;

    HeatSense(SenseContext context) {
        this.context = context;
    }

    void check() {
        if (!context.type().steps().stream().allMatch(context::sound)) {
            return;
        }
        context.type().variants().keySet().forEach(this::variant);
        context.type().windows().stream()
                .filter(this::idle)
                .forEach(window -> context.remark(
                        window,
                        "id",
                        "no step names it and none opens or closes it",
                        "Write opens and closes, or name it under windows of a step"));
    }

    private void variant(String variant) {
        UnitType type = context.variants().type(variant);
        StepGraph graph = StepGraph.of(type, Map.of());
        if (!graph.cycle().isEmpty()) {
            return;
        }
        for (Step heats : graph.steps().values()) {
            if (thermal(heats) && !fits(heats)) {
                List<Step> fitting = graph.steps().values().stream()
                        .filter(step -> fits(step)
                                && graph.before()
                                        .getOrDefault(step.id(), Set.of())
                                        .contains(heats.id())
                                && together(heats, step))
                        .toList();
                fitting.stream()
                        .filter(step -> !held(type, graph, heats.id(), step.id()))
                        .forEach(step -> cools(heats, step));
            }
        }
    }

    private void cools(Step heats, Step fits) {
        Step written = context.type().steps().stream()
                .filter(step -> step.id().equals(fits.id()))
                .findFirst()
                .orElse(fits);
        context.remark(
                written,
                "windows",
                "it fits what " + heats.id() + " heated or chilled, and no window is opened by " + heats.id()
                        + " and closed by " + fits.id() + ", so that the plan may put hours between them",
                "Write a window with opens: " + heats.id() + " and closes: " + fits.id());
    }

    /** The fitting step is itself hot or cold work, or stands in a window of the heating one. */
    private static boolean together(Step heats, Step fits) {
        return thermal(fits) || heats.windows().stream().anyMatch(fits.windows()::contains);
    }

    private static boolean thermal(Step step) {
        return step.dangers().contains(Danger.HEAT) || step.dangers().contains(Danger.COLD);
    }

    private static boolean fits(Step step) {
        return !step.installs().isEmpty() || !step.builds().isEmpty();
    }

    private static boolean held(UnitType type, StepGraph graph, String heats, String fits) {
        return type.windows().stream()
                .filter(window -> window.opens().equals(heats))
                .anyMatch(window -> window.closes().equals(fits) || graph.leads(fits, window.closes()));
    }

    private boolean idle(Window window) {
        return window.opens().isEmpty()
                && window.closes().isEmpty()
                && context.type().steps().stream()
                        .noneMatch(step -> step.windows().contains(window.id()));
    }
}
