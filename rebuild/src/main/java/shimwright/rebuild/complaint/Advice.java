package shimwright.rebuild.complaint;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.LastAsked;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.WearLimit;

/**
 * What a complaint comes to: who is suspected and what to look at in which order.
 *
 * @param evidence everything that was said and seen
 * @param suspects the likeliest first
 * @param looks still to be taken, in order
 * @param vehicle suspects that only the vehicle could show, once the unit is out of it
 * @param telling the question that is worth most next
 * @param limits wear limits of the unit that speak of a suspect, by suspect
 */
public record Advice(
        Evidence evidence,
        List<Suspect> suspects,
        List<LookOrder.Look> looks,
        List<Suspect> vehicle,
        Optional<TellingQuestion> telling,
        Map<String, List<WearLimit>> limits) {
    /** The opening at which nothing is taken out. */
    private static final String VEHICLE = "vehicle";

    private static final String BENCH = "bench";
    /** Below this chance nobody is named. */
    private static final double NAMED = 0.01;

    private static final LastAsked<Map<String, List<WearLimit>>> LIMITS = new LastAsked<>();

    public Advice {
        suspects = List.copyOf(suspects);
        looks = List.copyOf(looks);
        vehicle = List.copyOf(vehicle);
        limits = Map.copyOf(limits);
    }

    /**
     * What is worth looking at in a job.
     *
     * @param unit what the job stands on
     * @param earlier jobs of the type, from which is learned
     */
    public static Advice of(Unit unit, Job job, List<Job> earlier) {
        CauseTables tables = CauseTables.shipped();
        Evidence evidence = JobEvidence.of(unit, job, earlier);
        Set<String> there = JobEvidence.there(job);
        boolean out = !there.isEmpty() && !there.contains(VEHICLE);
        List<Suspect> suspects = Ranking.of(tables, unit.type(), evidence);
        List<Suspect> named =
                suspects.stream().filter(suspect -> suspect.chance() >= NAMED).toList();
        List<Suspect> open = named.stream()
                .filter(suspect ->
                        evidence.looked().getOrDefault(suspect.id(), Entry.Seen.CANNOT_TELL) == Entry.Seen.CANNOT_TELL)
                .toList();
        Map<String, List<WearLimit>> limits = new LinkedHashMap<>();
        named.forEach(suspect -> limits.put(suspect.id(), limits(unit, suspect)));
        return new Advice(
                evidence,
                suspects,
                LookOrder.of(
                        tables,
                        there,
                        open.stream()
                                .filter(suspect -> !out || !inVehicle(suspect))
                                .toList()),
                open.stream().filter(suspect -> out && inVehicle(suspect)).toList(),
                TellingQuestion.next(tables, suspects, evidence.answers().keySet()),
                limits);
    }

    private static boolean inVehicle(Suspect suspect) {
        return suspect.cause() != null && suspect.cause().after().equals(VEHICLE);
    }

    /** Limits that speak of a suspect: by unit, since neither its limits nor its parts change with the job. */
    private static List<WearLimit> limits(Unit unit, Suspect suspect) {
        Cause cause = suspect.cause();
        return cause == null
                ? List.of()
                : LIMITS.of(unit, unit, ConcurrentHashMap::new)
                        .computeIfAbsent(cause.id(), id -> speakingOf(unit, cause));
    }

    private static List<WearLimit> speakingOf(Unit unit, Cause cause) {
        Set<String> items = unit.type().items().stream()
                .filter(item -> cause.words().matcher(item.name()).find())
                .map(Item::id)
                .collect(Collectors.toSet());
        return unit.type().wearLimits().stream()
                .filter(wear -> wear.items().stream().anyMatch(items::contains)
                        || cause.words().matcher(wear.what()).find())
                .toList();
    }

    /** True for a look that is not to be had any more once the unit comes apart. */
    public static boolean whole(LookOrder.Look look) {
        return look.opening().id().equals(VEHICLE) || look.opening().id().equals(BENCH);
    }
}
