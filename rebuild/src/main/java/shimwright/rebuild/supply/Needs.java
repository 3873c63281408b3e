package shimwright.rebuild.supply;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shimwright.rebuild.inspect.JudgedPiece;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.record.Findings;
import shimwright.rebuild.record.Standings;
import shimwright.rebuild.unit.model.Bearing;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Item.Shape;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.WearLimit;

/**
 * What a job must have new: what the verdicts say, what was destroyed, and what is always renewed once it has been out. What is in the
 * unit, awaited, or here and checked is not needed any more. A ring and the one it runs with under one part number are one piece.
 */
public final class Needs {
    private static final Set<Shape> OUTER = Set.of(Shape.TAPER_CUP, Shape.ROLLER_OUTER);

    private Needs() {}

    /** What is still needed, in the order of the unit's items. */
    public static List<Need> of(Unit unit, Job job) {
        return of(unit, job, false, OneNumber.EACH);
    }

    /** The same, with numbers of which one took the place of the other as one. */
    public static List<Need> of(Unit unit, Job job, OneNumber numbers) {
        return of(unit, job, false, numbers);
    }

    /**
     * What is still needed.
     *
     * @param sure leaves out what may be meant or not: one of several was judged or destroyed, and nobody said which
     */
    static List<Need> of(Unit unit, Job job, boolean sure, OneNumber numbers) {
        Map<String, Set<String>> why = reasons(unit, job, sure, numbers);
        settled(unit, job).forEach(why::remove);
        Map<String, List<Item>> byKey = new LinkedHashMap<>();
        unit.type().items().stream()
                .filter(item -> JudgedPiece.parts(item).stream().anyMatch(why::containsKey))
                .forEach(item -> byKey.computeIfAbsent(numbers.of(key(item)), k -> new ArrayList<>())
                        .add(item));
        return byKey.entrySet().stream()
                .map(e -> need(unit, e.getKey(), e.getValue(), why))
                .toList();
    }

    /** Items as they would be needed, whatever the job says of them. */
    static List<Need> whole(Unit unit, List<String> items, OneNumber numbers) {
        Map<String, List<Item>> byKey = new LinkedHashMap<>();
        unit.type().items().stream()
                .filter(item -> items.contains(item.id()))
                .forEach(item -> byKey.computeIfAbsent(numbers.of(key(item)), k -> new ArrayList<>())
                        .add(item));
        return byKey.entrySet().stream()
                .map(e -> need(unit, e.getKey(), e.getValue(), every(e.getValue())))
                .toList();
    }

    /** Every part of some items, for no reason. */
    private static Map<String, Set<String>> every(List<Item> items) {
        Map<String, Set<String>> every = new LinkedHashMap<>();
        items.forEach(item -> JudgedPiece.parts(item).forEach(part -> every.put(part, Set.of())));
        return every;
    }

    /** The part number of an item, or its id. */
    static String key(Item item) {
        return item.part().isBlank() ? item.id() : item.part();
    }

    private static Need need(Unit unit, String key, List<Item> items, Map<String, Set<String>> why) {
        boolean inner = items.stream().anyMatch(item -> !OUTER.contains(item.shape()));
        int pieces = items.stream()
                .filter(item -> !inner || !OUTER.contains(item.shape()))
                .mapToInt(item -> wanted(item, why).size())
                .sum();
        List<String> parts =
                items.stream().flatMap(item -> wanted(item, why).stream()).toList();
        return new Need(
                key,
                items.stream().map(Item::name).collect(Collectors.joining("; ")),
                pieces,
                items.stream().map(Item::id).toList(),
                parts.stream()
                        .flatMap(part -> why.getOrDefault(part, Set.of()).stream())
                        .distinct()
                        .toList(),
                TellTale.of(unit, items),
                parts);
    }

    private static List<String> wanted(Item item, Map<String, Set<String>> why) {
        return JudgedPiece.parts(item).stream().filter(why::containsKey).toList();
    }

    /** Why each single part is to be had new. */
    private static Map<String, Set<String>> reasons(Unit unit, Job job, boolean sure, OneNumber numbers) {
        Map<String, Set<String>> why = new LinkedHashMap<>();
        for (Standings.Standing standing : Standings.all(unit, job)) {
            standing.judged()
                    .map(Said::what)
                    .filter(judged -> judged.decision() == Entry.Decision.REPLACE)
                    .ifPresent(judged ->
                            meant(unit, job, standing, sure).forEach(part -> say(why, part, judged.reason())));
        }
        job.takenOff().stream()
                .map(Said::what)
                .filter(off -> !off.destroyed().isBlank())
                .forEach(off -> meant(unit, off.items(), off.destroyed(), sure)
                        .forEach(item -> every(why, unit, item, "destroyed: " + off.destroyed())));
        unit.type().items().stream()
                .filter(Item::renew)
                .forEach(item -> JudgedPiece.parts(item).forEach(part -> say(why, part, "always renewed")));
        // a bearing is renewed whole
        unit.type().bearings().stream()
                .filter(bearing -> bearing.items().stream().anyMatch(why::containsKey))
                .forEach(bearing -> together(why, unit, bearing, numbers));
        return why;
    }

    /** The parts that a verdict means: those of its piece; of a verdict on all alike those that are named, as for what was destroyed. */
    private static List<String> meant(Unit unit, Job job, Standings.Standing standing, boolean sure) {
        Optional<Entry.Judged> judged = standing.judged().map(Said::what);
        Optional<WearLimit> wear = unit.type().wearLimits().stream()
                .filter(one -> one.id().equals(standing.limit()))
                .findFirst();
        if (judged.isEmpty() || wear.isEmpty() || !judged.get().piece().isEmpty()) {
            return standing.piece().parts();
        }
        String words =
                Findings.latest(job, wear.get().id()).map(Entry.Found::words).orElse("") + ". "
                        + judged.get().what() + ". " + judged.get().reason();
        List<String> items = meant(unit, wear.get().items(), words, sure);
        return standing.piece().parts().stream()
                .filter(part -> items.contains(JudgedPiece.item(part)))
                .toList();
    }

    /** Which of several items are meant: those that are named, else all; where only the sure ones are asked for, else those of one part number. */
    private static List<String> meant(Unit unit, List<String> ids, String words, boolean sure) {
        String said = words.toLowerCase(Locale.ROOT);
        List<Item> items = unit.type().items().stream()
                .filter(item -> ids.contains(item.id()))
                .toList();
        List<String> named = items.stream()
                .filter(item -> said.contains(item.name().toLowerCase(Locale.ROOT)))
                .map(Item::id)
                .toList();
        boolean one = items.stream().map(Needs::key).distinct().count() <= 1;
        return !named.isEmpty() ? named : sure && !one ? List.of() : ids;
    }

    private static void every(Map<String, Set<String>> why, Unit unit, String item, String reason) {
        unit.type().items().stream()
                .filter(one -> one.id().equals(item))
                .forEach(one -> JudgedPiece.parts(one).forEach(part -> say(why, part, reason)));
    }

    private static void together(Map<String, Set<String>> why, Unit unit, Bearing bearing, OneNumber numbers) {
        Set<String> parts = bearing.items().stream()
                .filter(why::containsKey)
                .map(item -> numbers.of(key(unit.item(item))))
                .collect(Collectors.toSet());
        bearing.items().stream()
                .filter(item -> !why.containsKey(item) && parts.contains(numbers.of(key(unit.item(item)))))
                .toList()
                .forEach(item -> say(why, item, "with its other ring"));
    }

    private static void say(Map<String, Set<String>> why, String part, String reason) {
        why.computeIfAbsent(part, p -> new LinkedHashSet<>()).add(reason);
    }

    /**
     * Single parts that were fitted, even where they came out again, are awaited, or came and may go in; what was fitted before its
     * verdict does not count, and what stood before anybody marked it can be what came out.
     */
    private static Set<String> settled(Unit unit, Job job) {
        Set<String> in = new LinkedHashSet<>();
        Set<String> stood = job.stepsStood();
        job.stepsDone().stream()
                .filter(id -> !stood.contains(id))
                .flatMap(id -> unit.findStep(id).stream())
                .flatMap(step -> Stream.concat(step.installs().stream(), step.builds().stream()))
                .forEach(in::add);
        Standings.fittedBefore(unit, job)
                .forEach(fitted -> in.remove(fitted.item().id()));
        Set<String> settled = new LinkedHashSet<>();
        in.forEach(item -> settled.addAll(parts(unit, item)));
        Stream.concat(job.awaited().stream(), job.sent().values().stream().filter(said -> job.arrived(said.id())))
                .forEach(said -> settled.addAll(
                        parts(unit, said.what().items(), said.what().pieces())));
        job.supply()
                .here()
                .forEach(said -> settled.addAll(
                        parts(unit, said.what().items(), said.what().pieces())));
        return settled;
    }

    private static List<String> parts(Unit unit, List<String> items, List<String> pieces) {
        return pieces.isEmpty()
                ? items.stream().flatMap(item -> parts(unit, item).stream()).toList()
                : pieces;
    }

    private static List<String> parts(Unit unit, String item) {
        return unit.type().items().stream()
                .filter(one -> one.id().equals(item))
                .findFirst()
                .map(JudgedPiece::parts)
                .orElse(List.of());
    }
}
