package shimwright.rebuild.clearance;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
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
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Phase;
import shimwright.rebuild.unit.model.Unit;

/** The session of a clearance, made from the log. */
public final class Sessions {
    private final Unit unit;
    private final Job job;
    private final Shop shop;
    private final Clearance clearance;
    private final Order order;
    private final JobReadings readings;
    private final SessionStage stages;

    private Sessions(Unit unit, Job job, Shop shop, String id) {
        this.unit = unit;
        this.job = job;
        this.shop = shop;
        this.clearance = EtchedDeviation.of(unit.clearance(id), job);
        this.order = Order.of(unit, job.sides());
        this.readings = new JobReadings(unit, job, shop, clearance);
        this.stages = new SessionStage(unit, job, clearance, order, readings);
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
        boolean wantAgain = stands != null && stands.what().phase() != Phase.AGAIN && stages.againIsDue();
        Reading judged = wantAgain || (stands != null && !again.rounds().isEmpty()) ? again : last;
        Closing closing = judged.settled() ? FinalReading.close(clearance, judged, foretold(forecast)) : null;
        boolean trialWanted = !stages.steps(Phase.TRIAL).isEmpty();
        Stage stage = stages.of(trial, judged, forecast, stands, trialWanted, wantAgain);
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
                        stages.waitingFor(current.phase())));
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

    private Set<String> leadingTo(Phase phase) {
        Set<String> steps = new HashSet<>();
        unit.stepsReading(clearance.id(), phase).forEach(step -> {
            steps.add(step.id());
            steps.addAll(order.leadingTo(step.id()));
        });
        return steps;
    }
}
