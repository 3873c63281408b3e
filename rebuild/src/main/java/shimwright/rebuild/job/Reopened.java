package shimwright.rebuild.job;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import shimwright.rebuild.job.Entry.PieceIn;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.plan.Order;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Step.Phase;
import shimwright.rebuild.unit.model.Unit;

/**
 * Readings and acceptances that no longer tell of what is in the unit: the clearance, or one that it depends on, got other
 * pieces afterwards, a step that led to the reading was undone, or a round of it was struck. A reading with trial pieces hangs on the steps alone.
 */
public final class Reopened {
    private static final LastAsked<Map<Job.Place, Map<Long, String>>> CHANGES = new LastAsked<>();
    private static final LastAsked<List<LogEntry>> UNDONE = new LastAsked<>();

    private Reopened() {}

    /** What happened, and the number of the entry that says so. */
    private record Change(long number, String what) {}

    /**
     * Why an acceptance no longer stands.
     *
     * @return empty where it stands, also where the unit has no such clearance any more since the job moved to another file
     */
    public static Optional<String> since(Job job, Unit unit, String clearance, Said<Entry.ClearanceAccepted> accepted) {
        if (unit.type().clearances().stream().noneMatch(c -> c.id().equals(clearance))) {
            return Optional.empty();
        }
        return Stream.of(
                        last(job, unit, clearance, accepted.what().phase()),
                        etched(job, unit, clearance),
                        struck(job, accepted))
                .flatMap(Optional::stream)
                .filter(change -> change.number() > accepted.number())
                .findFirst()
                .map(change -> change.what() + " after it was accepted");
    }

    /** The last strike of a round that was read before the acceptance and counted for it. */
    private static Optional<Change> struck(Job job, Said<Entry.ClearanceAccepted> accepted) {
        Entry.ClearanceAccepted what = accepted.what();
        Set<String> mistakes = Mistakes.of(job);
        Set<String> rounds = new HashSet<>();
        Change last = null;
        for (LogEntry kept : job.entries()) {
            if (mistakes.contains(kept.draft().id())) {
                continue;
            }
            if (kept.body() instanceof Entry.RoundRead round
                    && round.clearance().equals(what.clearance())
                    && round.phase() == what.phase()
                    && kept.number() < accepted.number()) {
                rounds.add(kept.draft().id());
            } else if (kept.body() instanceof Entry.RoundStruck struck && rounds.contains(struck.entry())) {
                last = new Change(kept.number(), "a reading of clearance " + what.clearance() + " was struck");
            }
        }
        return Optional.ofNullable(last);
    }

    /** The last time that the deviation etched on the part was read as another than before: it moves the limits. */
    private static Optional<Change> etched(Job job, Unit unit, String clearance) {
        String by = unit.clearance(clearance).etchedBy();
        if (by.isEmpty()) {
            return Optional.empty();
        }
        Set<String> mistakes = Mistakes.of(job);
        List<Double> before = List.of();
        Change last = null;
        for (LogEntry kept : job.entries()) {
            if (!mistakes.contains(kept.draft().id())
                    && kept.body() instanceof Entry.CheckRead read
                    && by.equals(read.hold() + "/" + read.check())) {
                last = read.values().equals(before)
                        ? last
                        : new Change(kept.number(), "the deviation etched on the part was read as another");
                before = read.values();
            }
        }
        return Optional.ofNullable(last);
    }

    /** The rounds that count for a clearance at one of its readings and still tell of what is in the unit. */
    public static List<Said<Entry.RoundRead>> rounds(Job job, Unit unit, String clearance, Phase phase) {
        long since = last(job, unit, clearance, phase).map(Change::number).orElse(0L);
        return job.roundsOf(clearance, phase).stream()
                .filter(round -> round.number() > since)
                .toList();
    }

    /** Why a round that was not struck no longer counts, by the id of its entry. */
    public static Map<String, String> stale(Job job, Unit unit) {
        Map<String, String> stale = new LinkedHashMap<>();
        for (Clearance clearance : unit.type().clearances()) {
            for (Phase phase : Phase.values()) {
                last(job, unit, clearance.id(), phase)
                        .ifPresent(change -> job.roundsOf(clearance.id(), phase).stream()
                                .filter(round -> round.number() < change.number())
                                .forEach(round -> stale.put(round.id(), change.what() + " after it was read")));
            }
        }
        return stale;
    }

    /**
     * The entries after which a reading taken before them no longer tells of what is in the unit, by number, in order.
     *
     * @return why, by the number of the entry
     */
    public static Map<Long, String> changes(Job job, Unit unit, String clearance, Phase phase) {
        return CHANGES.of(job, unit, ConcurrentHashMap::new)
                .computeIfAbsent(
                        new Job.Place(clearance, phase),
                        place -> Collections.unmodifiableMap(walked(job, unit, clearance, phase)));
    }

    private static Map<Long, String> walked(Job job, Unit unit, String clearance, Phase phase) {
        Set<String> steps = leadingTo(job, unit, clearance, phase);
        Map<Long, String> changes = new TreeMap<>();
        for (LogEntry kept : undone(job)) {
            if (kept.body() instanceof Entry.StepUndone undone && steps.contains(undone.step())) {
                changes.put(kept.number(), "step " + undone.step() + " was undone");
            }
        }
        Set<String> places = phase == Phase.TRIAL ? Set.of() : places(unit, clearance);
        Map<String, Set<PieceIn>> in = new HashMap<>();
        for (LogEntry kept : places.isEmpty() ? List.<LogEntry>of() : FittedPieces.putting(job)) {
            FittedPieces.put(kept.body()).forEach((position, pieces) -> {
                Set<PieceIn> now = Set.copyOf(pieces);
                boolean changed = !now.equals(in.put(position, now));
                if (changed && places.contains(position)) {
                    changes.put(
                            kept.number(),
                            "the pack of clearance "
                                    + unit.clearanceOf(position).id() + " was changed");
                }
            });
        }
        return changes;
    }

    /** Entries that undo a step and count, in order. */
    private static List<LogEntry> undone(Job job) {
        return UNDONE.of(job, job, () -> {
            Set<String> mistakes = Mistakes.of(job);
            return job.entries().stream()
                    .filter(kept -> kept.body() instanceof Entry.StepUndone
                            && !mistakes.contains(kept.draft().id()))
                    .toList();
        });
    }

    private static Optional<Change> last(Job job, Unit unit, String clearance, Phase phase) {
        return changes(job, unit, clearance, phase).entrySet().stream()
                .reduce((earlier, later) -> later)
                .map(change -> new Change(change.getKey(), change.getValue()));
    }

    /**
     * What undoing a step would open again: readings that would no longer count and acceptances that would no longer stand.
     *
     * @param step that is to be undone
     * @return sentences; empty where nothing hangs on it
     */
    public static List<String> byUndoing(Job job, Unit unit, String step) {
        List<String> opened = new ArrayList<>();
        for (Clearance clearance : unit.type().clearances()) {
            for (Phase phase : List.of(Phase.TRIAL, Phase.FINAL, Phase.AGAIN)) {
                int rounds = rounds(job, unit, clearance.id(), phase).size();
                Said<Entry.ClearanceAccepted> accepted = job.accepted().get(clearance.id());
                boolean stands = accepted != null
                        && accepted.what().phase() == phase
                        && since(job, unit, clearance.id(), accepted).isEmpty();
                if ((rounds > 0 || stands)
                        && leadingTo(job, unit, clearance.id(), phase).contains(step)) {
                    opened.add(sentence(clearance, phase, rounds, stands));
                }
            }
        }
        return opened;
    }

    private static String sentence(Clearance clearance, Phase phase, int rounds, boolean accepted) {
        String reading =
                phase == Phase.TRIAL ? "trial reading" : phase == Phase.FINAL ? "final reading" : "last reading";
        return "Undoing it opens the " + reading + " of " + clearance.id() + ", " + clearance.name() + ", again"
                + (rounds == 0
                        ? ""
                        : rounds == 1 ? ": its round no longer counts" : ": its " + rounds + " rounds no longer count")
                + (accepted ? (rounds == 0 ? ": " : " and ") + "its acceptance no longer stands" : "") + ".";
    }

    private static Set<String> leadingTo(Job job, Unit unit, String clearance, Phase phase) {
        Order order = Order.of(unit, job.sides());
        Set<String> steps = new HashSet<>();
        unit.stepsReading(clearance, phase).forEach(step -> {
            steps.add(step.id());
            steps.addAll(order.leadingTo(step.id()));
        });
        return steps;
    }

    /** Positions of the clearance and of all that it depends on. */
    private static Set<String> places(Unit unit, String clearance) {
        Set<String> seen = new HashSet<>();
        Set<String> places = new HashSet<>();
        List<String> open = new ArrayList<>(List.of(clearance));
        while (!open.isEmpty()) {
            String id = open.remove(open.size() - 1);
            if (seen.add(id)) {
                Clearance c = unit.clearance(id);
                c.positions().forEach(position -> places.add(position.id()));
                open.addAll(c.dependsOn());
            }
        }
        return places;
    }
}
