package shimwright.rebuild.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.rebuild.unit.model.Consumable;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType.Window;

/** The clocks that run: windows opened and not closed, cures waited for. */
public final class Timers {
    private Timers() {}

    /**
     * A clock that runs on the bench.
     *
     * @param name what it is
     * @param since when it began
     * @param until when it ends
     * @param mustEnd true for a window that must be closed by then, false for a cure that must be waited for
     * @param step the step that opened it
     * @param closes the step that closes a window, or the step that waits for the cure
     */
    public record Timer(String name, Instant since, Instant until, boolean mustEnd, String step, String closes) {}

    /**
     * All clocks that run for a job.
     *
     * @param done when each step that stands done was done
     * @param now cures that have ended are left out
     */
    public static List<Timer> running(Unit unit, Map<String, Instant> done, Instant now) {
        List<Timer> timers = new ArrayList<>();
        for (Window window : unit.type().windows()) {
            Instant opened = done.get(window.opens());
            if (opened != null && !window.closes().isBlank() && !done.containsKey(window.closes())) {
                timers.add(new Timer(
                        window.name(),
                        opened,
                        opened.plus(seconds(window.longest())),
                        true,
                        window.opens(),
                        window.closes()));
            }
        }
        for (Step step : unit.type().steps()) {
            step.after().forEach((id, why) -> {
                Instant before = done.get(id);
                if (why == Step.Why.WAITS && before != null && !done.containsKey(step.id())) {
                    cure(unit, id).ifPresent(cure -> {
                        Instant until = before.plus(seconds(cure.cure()));
                        if (until.isAfter(now)) {
                            timers.add(new Timer(cure.name() + " cures", before, until, false, id, step.id()));
                        }
                    });
                }
            });
        }
        return List.copyOf(timers);
    }

    private static Optional<Consumable> cure(Unit unit, String stepId) {
        return unit.type().steps().stream()
                .filter(step -> step.id().equals(stepId))
                .flatMap(step -> step.consumables().stream())
                .flatMap(id -> unit.type().consumables().stream().filter(c -> c.id().equals(id)))
                .filter(c -> c.cure() > 0)
                .max(Comparator.comparingDouble(Consumable::cure));
    }

    private static Duration seconds(double s) {
        return Duration.ofMillis(Math.round(s * 1000));
    }
}
