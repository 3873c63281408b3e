package shimwright.rebuild.clearance;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.conformity.Verdict;
import shimwright.rebuild.clearance.FinalReading.Foretold;
import shimwright.rebuild.clearance.Session.Advice;
import shimwright.rebuild.clearance.Session.Closing;
import shimwright.rebuild.clearance.Session.Forecast;
import shimwright.rebuild.clearance.Session.Stage;
import shimwright.rebuild.job.Entry.ClearanceAccepted;
import shimwright.rebuild.job.Entry.PackChosen;
import shimwright.rebuild.job.Entry.PieceIn;
import shimwright.rebuild.job.FittedPieces;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.job.Reopened;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.plan.Order;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Clearance.Position;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Phase;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.unit.model.UnitType.CheckKind;

/** The session of a clearance, made from the log. */
public final class Sessions {
    private final Unit unit;
    private final Job job;
    private final Shop shop;
    private final Clearance clearance;
    private final Order order;
    private final JobReadings readings;

    private Sessions(Unit unit, Job job, Shop shop, String id) {
        this.unit = unit;
        this.job = job;
        this.shop = shop;
        this.clearance = EtchedDeviation.of(unit.clearance(id), job);
        this.order = Order.of(unit, job.sides());
        this.readings = new JobReadings(unit, job, shop, clearance);
    }

    /**
     * How the setting of a clearance stands.
     *
     * @param unit resolved unit
     * @param job the job
     * @param shop drawer and gauges
     * @param id the clearance; must be one of the unit
     */
    public static Session of(Unit unit, Job job, Shop shop, String id) {
        return with(unit, job, shop, id, Map.of());
    }

    /** The same, with packs that are being chosen elsewhere at the same time, by position. */
    static Session with(Unit unit, Job job, Shop shop, String id, Map<String, List<PieceIn>> proposed) {
        return new Sessions(unit, job, shop, id).session(proposed);
    }

    /**
     * Number of the last entry that says a step before this one is done: what is read at the step must be younger.
     *
     * @return 0 where none is
     */
    public static long before(Job job, Step step) {
        return step.after().keySet().stream()
                .map(id -> job.done().get(id))
                .filter(Objects::nonNull)
                .mapToLong(Said::number)
                .max()
                .orElse(0);
    }

    private Session session(Map<String, List<PieceIn>> proposed) {
        String id = clearance.id();
        Reading trial = readings.trial();
        Reading last = readings.last(Phase.FINAL);
        Reading again = readings.last(Phase.AGAIN);
        Said<ClearanceAccepted> accepted = job.accepted().get(id);
        String reopened =
                accepted == null ? "" : Reopened.since(job, unit, id, accepted).orElse("");
        Said<ClearanceAccepted> stands = reopened.isEmpty() ? accepted : null;
        Reading from = readings.latestProof(trial, null).orElse(null);
        Reading other = readings.latestProof(trial, last.pack()).orElse(null);
        Advice advice = advice(from, proposed);
        // foretold by what was read with another pack in: a reading does not foretell itself
        Advice foretelling = Objects.equals(from, other) ? advice : advice(other, proposed);
        Forecast forecast = PackForecast.of(unit, job, clearance, foretelling).orElse(null);
        boolean wantAgain = stands != null && stands.what().phase() != Phase.AGAIN && againIsDue();
        Reading judged = wantAgain || (stands != null && !again.rounds().isEmpty()) ? again : last;
        Closing closing = judged.settled() ? FinalReading.close(clearance, judged, foretold(forecast)) : null;
        boolean trialWanted = !steps(Phase.TRIAL).isEmpty();
        Stage stage = stage(trial, judged, forecast, stands, trialWanted, wantAgain);
        List<PieceIn> tryFirst = stage == Stage.LAST_PACK ? FirstTrialPiece.of(unit, clearance, job, shop) : List.of();
        Session bare = new Session(
                clearance,
                List.of(),
                List.of(),
                stage,
                "",
                new Session.Readings(
                        trial,
                        last,
                        again,
                        BacklashSlope.of(job, clearance, leadingTo(Phase.TRIAL)).orElse(null),
                        trialWanted),
                new Session.Pieces(readings.known(), readings.toName(), tryFirst),
                new Session.Choice(advice, job.packOf(id), forecast, new Session.Change("", List.of(), "", "")),
                new Session.End(closing, stands, reopened));
        return said(bare, judged);
    }

    /** The session with its gauge, what a change of it brings, and its sentence. */
    private Session said(Session s, Reading judged) {
        Reading current = s.current();
        List<Shop.Gauge> inHand = GaugeChoice.inHand(clearance, current.phase(), current.rounds(), shop);
        String say = Instruction.say(
                s.stage(),
                new Instruction.Facts(
                        clearance,
                        current.phase(),
                        inHand.isEmpty(),
                        s.trial(),
                        judged,
                        s.advice(),
                        s.forecast(),
                        s.closing(),
                        s.tryFirst(),
                        waitingFor(current.phase())));
        Session.Choice choice = new Session.Choice(
                s.advice(), s.chosen(), s.forecast(), PackChange.of(unit, job, order, clearance, current));
        return new Session(
                clearance,
                inHand,
                GaugeChoice.fit(clearance, current.phase(), shop),
                s.stage(),
                say,
                s.readings(),
                s.pieces(),
                choice,
                s.end());
    }

    private @Nullable Advice advice(@Nullable Reading from, Map<String, List<PieceIn>> proposed) {
        return from == null ? null : PackAdviser.advise(unit, clearance, job, shop, from, proposed);
    }

    private Optional<Foretold> foretold(@Nullable Forecast forecast) {
        if (forecast != null) {
            return Optional.of(new Foretold(forecast.value(), forecast.u()));
        }
        return PackForecast.chosen(job, clearance)
                .map(Said::what)
                .filter(this::isIn)
                .map(chosen -> new Foretold(chosen.predicted(), chosen.u()));
    }

    private boolean isIn(PackChosen chosen) {
        return chosen.pieces().equals(FittedPieces.now(job).get(chosen.position()));
    }

    private List<Step> steps(Phase phase) {
        return unit.stepsReading(clearance.id(), phase).stream()
                .filter(step -> order.steps().containsKey(step.id()))
                .toList();
    }

    private Set<String> leadingTo(Phase phase) {
        Set<String> steps = new HashSet<>();
        unit.stepsReading(clearance.id(), phase).forEach(step -> {
            steps.add(step.id());
            steps.addAll(order.leadingTo(step.id()));
        });
        return steps;
    }

    /** The reading is taken once more when every step that leads to it is done. */
    private boolean againIsDue() {
        return steps(Phase.AGAIN).stream()
                .anyMatch(step -> job.stepsDone().containsAll(step.after().keySet()));
    }

    /** Steps that the reading waits for; empty where one of its steps can be done. */
    private List<String> waitingFor(Phase phase) {
        List<Step> steps = steps(phase);
        if (steps.isEmpty() || steps.stream().anyMatch(step -> order.free(step.id(), job.stepsDone()))) {
            return List.of();
        }
        return order.waitsFor(steps.get(0).id(), job.stepsDone()).keySet().stream()
                .map(Step::id)
                .toList();
    }

    private Stage stage(
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
                        .anyMatch(step -> fresh(trial, before(job, step)) < clearance.rounds());
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
