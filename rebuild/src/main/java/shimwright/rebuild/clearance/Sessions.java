package shimwright.rebuild.clearance;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.clearance.Reading.Measured;
import shimwright.rebuild.clearance.Session.Advice;
import shimwright.rebuild.clearance.Session.Closing;
import shimwright.rebuild.clearance.Session.Stage;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Entry.ClearanceAccepted;
import shimwright.rebuild.job.Entry.PackChosen;
import shimwright.rebuild.job.Entry.PieceIn;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Place;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.job.Reopened;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.job.Shop.Gauge;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Clearance.Position;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Phase;
import shimwright.rebuild.unit.model.Unit;

/** The session of a clearance, made from the log. */
public final class Sessions {
    private Sessions() {}

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
        Clearance clearance = EtchedDeviation.of(unit.clearance(id), job);
        Gauge gauge = shop.gauge(clearance.gauge()).orElse(null);
        Map<String, PackChosen> chosen = job.packOf(id);
        Reading trial = reading(unit, job, clearance, gauge, Phase.TRIAL, Map.of());
        Reading last = reading(unit, job, clearance, gauge, Phase.FINAL, fitted(job, clearance));
        Reading again = reading(unit, job, clearance, gauge, Phase.AGAIN, fitted(job, clearance));
        Said<ClearanceAccepted> accepted = job.accepted().get(id);
        String reopened =
                accepted == null ? "" : Reopened.since(job, unit, id, accepted).orElse("");
        Said<ClearanceAccepted> stands = reopened.isEmpty() ? accepted : null;
        boolean trialWanted = hasStep(unit, id, Phase.TRIAL);
        Advice advice = settled(trial) ? PackAdviser.advise(unit, clearance, job, shop, trial, proposed) : null;
        boolean wantAgain = hasStep(unit, id, Phase.AGAIN)
                && stands != null
                && stands.what().phase() != Phase.AGAIN
                && againIsDue(unit, job, id);
        Reading judged = wantAgain || (stands != null && !again.rounds().isEmpty()) ? again : last;
        Closing closing = settled(judged) ? FinalReading.close(clearance, judged, predicted(job, clearance)) : null;
        Stage stage = stage(unit, clearance, trial, judged, chosen, stands, trialWanted, wantAgain);
        return new Session(
                clearance,
                gauge,
                stage,
                Instruction.say(stage, clearance, gauge, trial, judged, advice, closing),
                trial,
                last,
                again,
                advice,
                chosen,
                closing,
                stands,
                reopened,
                trialWanted);
    }

    private static boolean hasStep(Unit unit, String clearance, Phase phase) {
        return unit.type().steps().stream()
                .anyMatch(step -> step.clearance().equals(clearance) && step.phase() == phase);
    }

    /** The reading is taken once more when every step that leads to it is done. */
    private static boolean againIsDue(Unit unit, Job job, String clearance) {
        return unit.type().steps().stream()
                .filter(step -> step.clearance().equals(clearance) && step.phase() == Phase.AGAIN)
                .map(Step::after)
                .anyMatch(after -> job.stepsDone().containsAll(after.keySet()));
    }

    private static boolean settled(Reading reading) {
        Measured measured = reading.measured();
        return measured != null && measured.settled();
    }

    private static Map<String, List<PieceIn>> fitted(Job job, Clearance clearance) {
        Map<String, List<PieceIn>> fitted = new LinkedHashMap<>();
        for (Position position : clearance.positions()) {
            job.packIn(position.id())
                    .ifPresent(said -> fitted.put(position.id(), said.what().pieces()));
        }
        return fitted;
    }

    private static Optional<PackChosen> predicted(Job job, Clearance clearance) {
        return Optional.ofNullable(
                job.packOf(clearance.id()).get(clearance.positions().get(0).id()));
    }

    private static Reading reading(
            Unit unit,
            Job job,
            Clearance clearance,
            @Nullable Gauge gauge,
            Phase phase,
            Map<String, List<PieceIn>> fallback) {
        Said<Entry.PackIn> in = job.packsIn().get(new Place(clearance.id(), phase));
        Map<String, List<PieceIn>> pack = in == null ? fallback : in.what().pieces();
        List<Said<Entry.RoundRead>> rounds = Reopened.rounds(job, unit, clearance.id(), phase);
        if (rounds.isEmpty()) {
            return new Reading(phase, pack, rounds, null, List.of());
        }
        if (EtchedDeviation.missing(clearance, job)) {
            return new Reading(phase, pack, rounds, null, List.of(EtchedDeviation.refusal(clearance)));
        }
        if (gauge == null) {
            return new Reading(
                    phase,
                    pack,
                    rounds,
                    null,
                    List.of(new Refusal(
                            "gauge " + clearance.gauge(),
                            "the shop has no data of this gauge, so its doubt is not known",
                            "Enter its step and error limit in the shop")));
        }
        List<Refusal> unnamed = phase == Phase.TRIAL ? unnamed(clearance, pack) : List.of();
        if (!unnamed.isEmpty()) {
            return new Reading(phase, pack, rounds, null, unnamed);
        }
        List<List<Double>> values = new ArrayList<>();
        rounds.forEach(round -> values.add(round.what().values()));
        Outcome<Measured> outcome = RoundEvaluation.read(clearance, gauge, values);
        Measured measured = outcome instanceof Outcome.Ok<Measured> ok ? ok.value() : null;
        return new Reading(phase, pack, rounds, measured, outcome.refusals());
    }

    /** Places that must hold a piece and of which none is named: it would be taken for a thickness of nothing. */
    private static List<Refusal> unnamed(Clearance clearance, Map<String, List<PieceIn>> pack) {
        return clearance.positions().stream()
                .filter(position -> position.fewest() > 0
                        && pack.getOrDefault(position.id(), List.of()).isEmpty())
                .map(position -> new Refusal(
                        position.where(), "it is not said which piece is in", "Say which pieces are in, then read"))
                .toList();
    }

    private static Stage stage(
            Unit unit,
            Clearance clearance,
            Reading trial,
            Reading judged,
            Map<String, PackChosen> chosen,
            @Nullable Said<ClearanceAccepted> accepted,
            boolean trialWanted,
            boolean wantAgain) {
        if (accepted != null && !wantAgain) {
            return Stage.DONE;
        }
        if (wantAgain) {
            return settled(judged) ? Stage.ACCEPT_AGAIN : Stage.READ_AGAIN;
        }
        if (chosen.isEmpty() && trialWanted) {
            if (!unnamed(clearance, trial.pack()).isEmpty()) {
                return Stage.TRIAL_PACK;
            }
            return settled(trial) ? Stage.CHOOSE : Stage.READ_TRIAL;
        }
        if (!hasStep(unit, clearance.id(), Phase.FINAL)) {
            return Stage.PROVED_OTHERWISE;
        }
        if (judged.pack().isEmpty()) {
            return Stage.LAST_PACK;
        }
        return settled(judged) ? Stage.ACCEPT : Stage.READ_LAST;
    }
}
