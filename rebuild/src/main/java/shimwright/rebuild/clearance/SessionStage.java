package shimwright.rebuild.clearance;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.conformity.Verdict;
import shimwright.rebuild.clearance.Session.Forecast;
import shimwright.rebuild.clearance.Session.Stage;
import shimwright.rebuild.job.Entry.ClearanceAccepted;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.job.Reopened;
import shimwright.rebuild.plan.Order;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Clearance.Position;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Phase;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.unit.model.UnitType.CheckKind;

/** How far the setting of a clearance is, by what is read, chosen and done: what comes next, and what it waits for. */
final class SessionStage {
    private final Unit unit;
    private final Job job;
    private final Clearance clearance;
    private final Order order;
    private final JobReadings readings;

    SessionStage(Unit unit, Job job, Clearance clearance, Order order, JobReadings readings) {
        this.unit = unit;
        this.job = job;
        this.clearance = clearance;
        this.order = order;
        this.readings = readings;
    }

    /** Steps of this job that read the clearance in that phase. */
    List<Step> steps(Phase phase) {
        return unit.stepsReading(clearance.id(), phase).stream()
                .filter(step -> order.steps().containsKey(step.id()))
                .toList();
    }

    /** The reading is taken once more when every step that leads to it is done. */
    boolean againIsDue() {
        return steps(Phase.AGAIN).stream()
                .anyMatch(step -> job.stepsDone().containsAll(step.after().keySet()));
    }

    /** Steps that the reading waits for; empty where one of its steps can be done. */
    List<String> waitingFor(Phase phase) {
        List<Step> steps = steps(phase);
        if (steps.isEmpty() || steps.stream().anyMatch(step -> order.free(step.id(), job.stepsDone()))) {
            return List.of();
        }
        return order.waitsFor(steps.get(0).id(), job.stepsDone()).keySet().stream()
                .map(Step::id)
                .toList();
    }

    /**
     * The stage.
     *
     * @param judged the reading that closes it: the one taken once more, or the final one
     * @param accepted an acceptance that stands
     * @param trialWanted where the unit has a step that reads with trial pieces
     * @param wantAgain where the reading is taken once more now
     */
    Stage of(
            Reading trial,
            Reading judged,
            @Nullable Forecast forecast,
            @Nullable Said<ClearanceAccepted> accepted,
            boolean trialWanted,
            boolean wantAgain) {
        if (accepted != null && !wantAgain) {
            return Stage.DONE;
        }
        if (wantAgain) {
            return judged.settled() ? Stage.ACCEPT_AGAIN : Stage.READ_AGAIN;
        }
        boolean begun = !judged.rounds().isEmpty();
        if (trialWanted && !begun) {
            if (trialIsDue(trial)) {
                return trialNamed(trial) ? Stage.READ_TRIAL : Stage.TRIAL_PACK;
            }
            if (job.packOf(clearance.id()).isEmpty()) {
                return Stage.CHOOSE;
            }
        }
        if (!begun && forecast != null && forecast.stale()) {
            return Stage.CHOOSE;
        }
        if (steps(Phase.FINAL).isEmpty()) {
            return provedByTorque() ? Stage.DONE : Stage.PROVED_OTHERWISE;
        }
        Position own = clearance.positions().get(0);
        if (own.fewest() > 0 && judged.pack().getOrDefault(own.id(), List.of()).isEmpty()) {
            return Stage.LAST_PACK;
        }
        return judged.settled() ? Stage.ACCEPT : Stage.READ_LAST;
    }

    private boolean trialNamed(Reading trial) {
        long number = trial.rounds().isEmpty()
                ? Long.MAX_VALUE
                : trial.rounds().get(0).number();
        return readings.unnamed(trial.pack(), number).isEmpty();
    }

    /** True while there is no trial reading that is proof, or a step waits for its own. */
    private boolean trialIsDue(Reading trial) {
        if (!trial.settled() && latestFinal(trial)) {
            return false;
        }
        return !trial.settled()
                || steps(Phase.TRIAL).stream()
                        .filter(step -> !job.stepsDone().contains(step.id()))
                        .filter(step -> order.free(step.id(), job.stepsDone()))
                        .anyMatch(step -> fresh(trial, Sessions.before(job, step)) < clearance.rounds());
    }

    private static long fresh(Reading trial, long since) {
        return trial.rounds().stream().filter(round -> round.number() > since).count();
    }

    /** True where a final reading with another pack stands in for the trial, whose steps all stand done. */
    private boolean latestFinal(Reading trial) {
        return readings.latestProof(trial, null).isPresent()
                && steps(Phase.TRIAL).stream().allMatch(step -> job.stepsDone().contains(step.id()));
    }

    /**
     * True where a clearance without a final reading is proved by turning torque: a step is done whose hold point read a
     * torque within its limits, or was passed with a reason, and opens the step that fits the shim when it is wrong; and the
     * pack was not changed after it.
     */
    private boolean provedByTorque() {
        String item = clearance.positions().get(0).item();
        Set<String> fitting = new HashSet<>();
        unit.type().steps().stream()
                .filter(step -> !item.isEmpty()
                        && (step.installs().contains(item) || step.builds().contains(item)))
                .forEach(step -> fitting.add(step.id()));
        long changed = Reopened.changes(job, unit, clearance.id(), Phase.FINAL).keySet().stream()
                .reduce(0L, (a, b) -> b);
        return unit.type().holdPoints().stream()
                .filter(hold -> hold.reopens().stream().anyMatch(fitting::contains))
                .flatMap(hold -> unit.stepsHolding(hold.id()).stream().filter(step -> tells(step, hold)))
                .flatMap(step -> Optional.ofNullable(job.done().get(step.id())).stream())
                .anyMatch(done -> done.number() > changed);
    }

    private boolean tells(Step step, UnitType.HoldPoint hold) {
        List<UnitType.Check> torques = hold.checks().stream()
                .filter(check -> check.kind() == CheckKind.TORQUE)
                .toList();
        boolean read = !torques.isEmpty()
                && torques.stream()
                        .allMatch(check -> job.check(step.id(), check.id())
                                .filter(said -> said.what().verdict() == Verdict.IN)
                                .isPresent());
        return read || (!torques.isEmpty() && job.holdsOverruled().containsKey(step.id()));
    }
}
