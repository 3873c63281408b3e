package shimwright.rebuild.rules;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.plan.Timers.Timer;
import shimwright.rebuild.workbench.Workbench;

/** Waits that have not ended and windows that have run out stand against a step until that is overruled with a reason. */
public final class ClockRules {
    private ClockRules() {}

    /**
     * A clock that a step would break.
     *
     * @param timer the wait or window
     * @param early true for a wait that has not ended, false for a window that has run out
     * @param seconds by how much
     */
    public record Broken(Timer timer, boolean early, double seconds) {
        /** {@code early} or {@code late}, as an entry says it. */
        public String what() {
            return early ? "early" : "late";
        }
    }

    /** The clocks that the step would break if it were done now. */
    public static List<Broken> broken(Workbench bench, String step) {
        List<Broken> broken = new ArrayList<>();
        for (Timer timer : bench.timers()) {
            if (timer.closes().equals(step)) {
                double left = Duration.between(bench.now(), timer.until()).toMillis() / 1000.0;
                boolean early = !timer.mustEnd() && left > 0;
                boolean late = timer.mustEnd() && left < 0;
                if (early || late) {
                    broken.add(new Broken(timer, early, Math.abs(left)));
                }
            }
        }
        return List.copyOf(broken);
    }

    static List<Refusal> against(Workbench bench, String step) {
        return broken(bench, step).stream()
                .filter(one -> !overruled(bench, step, one))
                .map(one -> new Refusal(
                        "step",
                        "step " + step,
                        one.early()
                                ? one.timer().name() + " until " + words(one.seconds()) + " from now"
                                : "the window \"" + one.timer().name() + "\" ran out " + words(one.seconds()) + " ago",
                        one.early()
                                ? "Wait, or say why it may be done now; it stands on the record"
                                : "Say what was done about it; it stands on the record"))
                .toList();
    }

    private static boolean overruled(Workbench bench, String step, Broken one) {
        Instant since = one.timer().since();
        return bench.job().build().clocks().stream()
                .filter(said -> !said.at().isBefore(since))
                .map(Said::what)
                .anyMatch(e -> e.step().equals(step)
                        && e.what().equals(one.what())
                        && e.clock().equals(one.timer().name()));
    }

    private static String words(double seconds) {
        long minutes = (long) Math.ceil(seconds / 60);
        return minutes < 90 ? minutes + " min" : Math.round(seconds / 360) / 10.0 + " h";
    }
}
