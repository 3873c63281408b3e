package shimwright.rebuild.supply;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.record.Findings;
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
        return of(unit, job, false);
    }

    /**
     * What is still needed.
     *
     * @param sure leaves out what may be meant or not: one of several was judged or destroyed, and nobody said which
     */
    static List<Need> of(Unit unit, Job job, boolean sure) {
        Map<String, Set<String>> why = reasons(unit, job, sure);
        Set<String> settled = settled(unit, job);
        Map<String, List<Item>> byKey = new LinkedHashMap<>();
        unit.type().items().stream()
                .filter(item -> why.containsKey(item.id()) && !settled.contains(item.id()))
                .forEach(item ->
                        byKey.computeIfAbsent(key(item), k -> new ArrayList<>()).add(item));
        return byKey.entrySet().stream()
                .map(e -> need(unit, e.getKey(), e.getValue(), why))
                .toList();
    }

    /** Items as they would be needed, whatever the job says of them. */
    public static List<Need> whole(Unit unit, List<String> items) {
        Map<String, List<Item>> byKey = new LinkedHashMap<>();
        unit.type().items().stream()
                .filter(item -> items.contains(item.id()))
                .forEach(item ->
                        byKey.computeIfAbsent(key(item), k -> new ArrayList<>()).add(item));
        return byKey.entrySet().stream()
                .map(e -> need(unit, e.getKey(), e.getValue(), Map.of()))
                .toList();
    }

    /** The part number of an item, or its id. */
    static String key(Item item) {
        return item.part().isBlank() ? item.id() : item.part();
    }

    private static Need need(Unit unit, String key, List<Item> items, Map<String, Set<String>> why) {
        boolean inner = items.stream().anyMatch(item -> !OUTER.contains(item.shape()));
        int pieces = items.stream()
                .filter(item -> !inner || !OUTER.contains(item.shape()))
                .mapToInt(Item::quantity)
                .sum();
        return new Need(
                key,
                items.stream().map(Item::name).collect(Collectors.joining("; ")),
                pieces,
                items.stream().map(Item::id).toList(),
                items.stream()
                        .flatMap(item -> why.getOrDefault(item.id(), Set.of()).stream())
                        .distinct()
                        .toList(),
                TellTale.of(unit, items));
    }

    private static Map<String, Set<String>> reasons(Unit unit, Job job, boolean sure) {
        Map<String, Set<String>> why = new LinkedHashMap<>();
        for (WearLimit wear : unit.type().wearLimits()) {
            Findings.verdict(job, wear.id())
                    .map(Said::what)
                    .filter(judged -> judged.decision() == Entry.Decision.REPLACE)
                    .ifPresent(judged -> meant(unit, wear.items(), words(job, wear, judged), sure)
                            .forEach(item -> say(why, item, judged.reason())));
        }
        job.takenOff().stream()
                .map(Said::what)
                .filter(off -> !off.destroyed().isBlank())
                .forEach(off -> meant(unit, off.items(), off.destroyed(), sure)
                        .forEach(item -> say(why, item, "destroyed: " + off.destroyed())));
        unit.type().items().stream().filter(Item::renew).forEach(item -> say(why, item.id(), "always renewed"));
        // a bearing is renewed whole
        unit.type().bearings().stream()
                .filter(bearing -> bearing.items().stream().anyMatch(why::containsKey))
                .forEach(bearing -> together(why, unit, bearing));
        return why;
    }

    private static String words(Job job, WearLimit wear, Entry.Judged judged) {
        return Findings.latest(job, wear.id()).map(Entry.Found::words).orElse("") + ". " + judged.what() + ". "
                + judged.reason();
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

    private static void together(Map<String, Set<String>> why, Unit unit, Bearing bearing) {
        Set<String> parts = bearing.items().stream()
                .filter(why::containsKey)
                .map(item -> key(unit.item(item)))
                .collect(Collectors.toSet());
        bearing.items().stream()
                .filter(item -> !why.containsKey(item) && parts.contains(key(unit.item(item))))
                .toList()
                .forEach(item -> say(why, item, "with its other ring"));
    }

    private static void say(Map<String, Set<String>> why, String item, String reason) {
        why.computeIfAbsent(item, i -> new LinkedHashSet<>()).add(reason);
    }

    /**
     * What was fitted, even where it came out again, is awaited, or came and may go in. What stood before anybody marked it can be
     * what came out.
     */
    private static Set<String> settled(Unit unit, Job job) {
        Set<String> settled = new LinkedHashSet<>();
        Set<String> stood = job.stepsStood();
        job.stepsDone().stream()
                .filter(id -> !stood.contains(id))
                .flatMap(id -> unit.findStep(id).stream())
                .flatMap(step -> Stream.concat(step.installs().stream(), step.builds().stream()))
                .forEach(settled::add);
        Stream.concat(job.awaited().stream(), job.sent().values().stream().filter(said -> job.arrived(said.id())))
                .forEach(said -> settled.addAll(said.what().items()));
        job.supply().here().forEach(said -> settled.addAll(said.what().items()));
        return settled;
    }
}
