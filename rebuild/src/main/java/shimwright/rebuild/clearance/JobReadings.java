package shimwright.rebuild.clearance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.working.Line;
import shimwright.rebuild.clearance.Reading.Measured;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Entry.PieceIn;
import shimwright.rebuild.job.Entry.RoundRead;
import shimwright.rebuild.job.FittedPieces;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Place;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.Reopened;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.job.Shop.Gauge;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Clearance.Position;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Phase;
import shimwright.rebuild.unit.model.Unit;

/**
 * The readings of one clearance as the job's log has them, each with the pieces that were in when it was taken: those named
 * for it, and for the other places of its loop the shims that this job has fitted already.
 */
record JobReadings(Unit unit, Job job, Shop shop, Clearance clearance) {

    /** The trial reading: the last rounds that were read with one and the same pack. */
    Reading trial() {
        List<Said<RoundRead>> rounds = Reopened.rounds(job, unit, clearance.id(), Phase.TRIAL);
        if (rounds.isEmpty()) {
            return reading(Phase.TRIAL, pack(Phase.TRIAL, Long.MAX_VALUE), rounds);
        }
        Map<String, List<PieceIn>> pack =
                pack(Phase.TRIAL, rounds.get(rounds.size() - 1).number());
        List<Said<RoundRead>> same = rounds.stream()
                .filter(round -> pack(Phase.TRIAL, round.number()).equals(pack))
                .toList();
        return reading(Phase.TRIAL, pack, same);
    }

    /** The final reading, or the one after it, as far as it still tells of what is in the unit. */
    Reading last(Phase phase) {
        return reading(phase, pack(phase, Long.MAX_VALUE), Reopened.rounds(job, unit, clearance.id(), phase));
    }

    /**
     * The reading that packs are sought from: the latest that is proof. A final reading with its pack in is a trial reading
     * with that pack, also after the pack was taken out again.
     *
     * @param trial the trial reading
     * @param without a pack whose own reading is left aside; null for none
     */
    Optional<Reading> latestProof(Reading trial, @Nullable Map<String, List<PieceIn>> without) {
        return Stream.concat(
                        Stream.of(trial),
                        finals().stream().filter(r -> !r.pack().equals(without)))
                .filter(Reading::settled)
                .max(Comparator.comparingLong(
                        r -> r.rounds().get(r.rounds().size() - 1).number()));
    }

    private List<Reading> finals() {
        List<Reading> finals = new ArrayList<>();
        for (Phase phase : List.of(Phase.FINAL, Phase.AGAIN)) {
            Set<Long> changes =
                    Reopened.changes(job, unit, clearance.id(), phase).keySet();
            Map<Long, List<Said<RoundRead>>> series = new LinkedHashMap<>();
            for (Said<RoundRead> round : job.roundsOf(clearance.id(), phase)) {
                long since = changes.stream().filter(n -> n < round.number()).reduce(0L, (a, b) -> b);
                series.computeIfAbsent(since, s -> new ArrayList<>()).add(round);
            }
            series.values()
                    .forEach(rounds ->
                            finals.add(reading(phase, pack(phase, rounds.get(0).number()), List.copyOf(rounds))));
        }
        return finals;
    }

    /** The pieces that were in, by position, as far as it is known. */
    Map<String, List<PieceIn>> pack(Phase phase, long number) {
        Map<String, List<PieceIn>> fitted = FittedPieces.before(job, number);
        Said<Entry.PackIn> said = phase == Phase.TRIAL ? job.packsIn().get(new Place(clearance.id(), phase)) : null;
        Map<String, List<PieceIn>> named = said == null ? Map.of() : said.what().pieces();
        Map<String, List<PieceIn>> pack = new LinkedHashMap<>();
        for (Position position : clearance.positions()) {
            List<PieceIn> there = named.get(position.id());
            boolean counts = there != null && (!there.isEmpty() || position.fewest() == 0);
            if (!counts) {
                boolean known = phase != Phase.TRIAL || known(position, fitted, number);
                there = known ? fitted.get(position.id()) : null;
            }
            if (there != null) {
                pack.put(position.id(), there);
            }
        }
        return pack;
    }

    /** Places at which the shim that this job has fitted counts as in, for a trial where none is named. */
    Map<String, List<PieceIn>> known() {
        Map<String, List<PieceIn>> fitted = FittedPieces.now(job);
        Map<String, List<PieceIn>> known = new LinkedHashMap<>();
        for (Position position : clearance.positions()) {
            List<PieceIn> there = fitted.get(position.id());
            if (there != null && known(position, fitted, Long.MAX_VALUE)) {
                known.put(position.id(), there);
            }
        }
        return known;
    }

    /** True where the shim chosen for another clearance is in: its step was done after it was chosen. */
    private boolean known(Position position, Map<String, List<PieceIn>> fitted, long number) {
        boolean own = position.equals(clearance.positions().get(0));
        return !own && fitted.containsKey(position.id()) && fittedByStep(position, number);
    }

    private boolean fittedByStep(Position position, long number) {
        String item = position.item();
        List<Step> fitting = unit.type().steps().stream()
                .filter(step -> step.installs().contains(item) || step.builds().contains(item))
                .toList();
        if (item.isEmpty() || fitting.isEmpty()) {
            return true;
        }
        long fitted = doneBefore(fitting, number);
        long removed = doneBefore(
                unit.type().steps().stream()
                        .filter(step -> step.removes().contains(item))
                        .toList(),
                number);
        return fitted > chosenAt(position.id(), number) && fitted >= removed;
    }

    private long doneBefore(List<Step> steps, long number) {
        return steps.stream()
                .flatMap(step -> Stream.ofNullable(job.done().get(step.id())))
                .mapToLong(Said::number)
                .filter(n -> n < number)
                .max()
                .orElse(0);
    }

    private long chosenAt(String position, long number) {
        long at = 0;
        for (LogEntry kept : job.entries()) {
            if (kept.number() < number && puts(kept.body(), position)) {
                at = kept.number();
            }
        }
        return at;
    }

    private static boolean puts(Entry entry, String position) {
        return (entry instanceof Entry.PackChosen chosen && chosen.position().equals(position))
                || (entry instanceof Entry.PackIn in
                        && in.phase() != Phase.TRIAL
                        && in.pieces().containsKey(position));
    }

    /**
     * Places that must hold a piece, or for which one is chosen that is not in yet, and of which none is named: it would be
     * taken for a thickness of nothing.
     *
     * @param number of the entry before which they must be named
     */
    List<Refusal> unnamed(Map<String, List<PieceIn>> pack, long number) {
        return asked(pack, number).stream()
                .map(position -> new Refusal(
                        "in." + position.id(),
                        position.where(),
                        "it is not said which piece is in",
                        "Say which pieces are in, then read"))
                .toList();
    }

    private List<Position> asked(Map<String, List<PieceIn>> pack, long number) {
        Map<String, List<PieceIn>> fitted = FittedPieces.before(job, number);
        return clearance.positions().stream()
                .filter(position -> !pack.containsKey(position.id()))
                .filter(position -> position.fewest() > 0
                        || !fitted.getOrDefault(position.id(), List.of()).isEmpty())
                .toList();
    }

    /** Places of which it must be said which piece is in, as the job stands. */
    List<String> toName() {
        return asked(known(), Long.MAX_VALUE).stream().map(Position::id).toList();
    }

    private Reading reading(Phase phase, Map<String, List<PieceIn>> pack, List<Said<RoundRead>> rounds) {
        if (rounds.isEmpty()) {
            return new Reading(phase, pack, rounds, null, List.of());
        }
        List<Refusal> refusals = new ArrayList<>();
        if (EtchedDeviation.missing(clearance, job)) {
            refusals.add(EtchedDeviation.refusal(clearance));
        }
        Outcome<Gauge> gauge =
                GaugeChoice.of(clearance, rounds.stream().map(Said::what).toList(), shop);
        refusals.addAll(gauge.refusals());
        if (phase == Phase.TRIAL && refusals.isEmpty()) {
            refusals.addAll(unnamed(pack, rounds.get(0).number()));
        }
        if (!refusals.isEmpty() || !(gauge instanceof Outcome.Ok<Gauge> used)) {
            return new Reading(phase, pack, rounds, null, List.copyOf(refusals));
        }
        List<List<Double>> values = new ArrayList<>();
        rounds.forEach(round -> values.add(round.what().values()));
        Outcome<Measured> outcome = RoundEvaluation.read(clearance, used.value(), values);
        Measured measured = outcome instanceof Outcome.Ok<Measured> ok ? warned(ok.value(), used.value()) : null;
        return new Reading(phase, pack, rounds, measured, outcome.refusals());
    }

    private Measured warned(Measured m, Gauge gauge) {
        Optional<String> coarse = GaugeChoice.tooCoarse(clearance, gauge);
        if (coarse.isEmpty()) {
            return m;
        }
        List<String> cautions = new ArrayList<>(m.cautions());
        cautions.add(coarse.get());
        List<Line> working = m.working();
        return new Measured(
                m.value(),
                m.u(),
                m.nu(),
                m.seating(),
                m.firstUsed(),
                m.used(),
                m.more(),
                m.tilt(),
                m.outliers(),
                m.budget(),
                m.advice(),
                working,
                List.copyOf(cautions));
    }
}
