package shimwright.rebuild.job;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shimwright.rebuild.job.Entry.PieceIn;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.plan.Order;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Step.Phase;
import shimwright.rebuild.unit.model.Unit;

/**
 * Readings and acceptances that no longer tell of what is in the unit: the clearance, or one that it depends on, got other
 * pieces afterwards, or a step that led to the reading was undone. A reading with trial pieces hangs on the steps alone.
 */
public final class Reopened {
    private Reopened() {}

    /** What happened, and the number of the entry that says so. */
    private record Change(long number, String what) {}

    /**
     * Why an acceptance no longer stands.
     *
     * @return empty where it stands
     */
    public static Optional<String> since(Job job, Unit unit, String clearance, Said<Entry.ClearanceAccepted> accepted) {
        return last(job, unit, clearance, accepted.what().phase())
                .filter(change -> change.number() > accepted.number())
                .map(change -> change.what() + " after it was accepted");
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

    private static Optional<Change> last(Job job, Unit unit, String clearance, Phase phase) {
        Set<String> steps = leadingTo(job, unit, clearance, phase);
        Set<String> places = phase == Phase.TRIAL ? Set.of() : places(unit, clearance);
        Map<String, Set<PieceIn>> in = new HashMap<>();
        Optional<Change> last = Optional.empty();
        for (Kept kept : job.entries()) {
            if (kept.body() instanceof Entry.StepUndone undone && steps.contains(undone.step())) {
                last = Optional.of(new Change(kept.number(), "step " + undone.step() + " was undone"));
            }
            for (Map.Entry<String, List<PieceIn>> put : put(kept.body()).entrySet()) {
                Set<PieceIn> now = Set.copyOf(put.getValue());
                boolean changed = !now.equals(in.put(put.getKey(), now));
                if (changed && places.contains(put.getKey())) {
                    last = Optional.of(new Change(
                            kept.number(),
                            "the pack of clearance "
                                    + unit.clearanceOf(put.getKey()).id() + " was changed"));
                }
            }
        }
        return last;
    }

    /** The pieces that an entry puts in for good, by position. */
    private static Map<String, List<PieceIn>> put(Entry entry) {
        if (entry instanceof Entry.PackChosen chosen) {
            return Map.of(chosen.position(), chosen.pieces());
        }
        return entry instanceof Entry.PackIn in && in.phase() != Phase.TRIAL ? in.pieces() : Map.of();
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
