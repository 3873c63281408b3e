package shimwright.rebuild.supply;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
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
        Map<String, Set<String>> why = reasons(unit, job);
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

    private static Map<String, Set<String>> reasons(Unit unit, Job job) {
        Map<String, Set<String>> why = new LinkedHashMap<>();
        for (WearLimit wear : unit.type().wearLimits()) {
            Findings.verdict(job, wear.id())
                    .map(Said::what)
                    .filter(judged -> judged.decision() == Entry.Decision.REPLACE)
                    .ifPresent(judged -> wear.items().forEach(item -> say(why, item, judged.reason())));
        }
        job.takenOff().stream()
                .map(Said::what)
                .filter(off -> !off.destroyed().isBlank())
                .forEach(off -> off.items().forEach(item -> say(why, item, "destroyed: " + off.destroyed())));
        unit.type().items().stream().filter(Item::renew).forEach(item -> say(why, item.id(), "always renewed"));
        // a bearing is renewed whole
        unit.type().bearings().stream()
                .filter(bearing -> bearing.items().stream().anyMatch(why::containsKey))
                .forEach(bearing -> together(why, unit, bearing));
        return why;
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

    /** What is in the unit, is awaited, or came and may go in. */
    private static Set<String> settled(Unit unit, Job job) {
        Set<String> settled = new LinkedHashSet<>(unit.itemsIn(job.stepsDone().stream()
                .filter(id -> unit.findStep(id).isPresent())
                .toList()));
        Stream.concat(job.awaited().stream(), job.sent().values().stream().filter(said -> job.arrived(said.id())))
                .forEach(said -> settled.addAll(said.what().items()));
        job.supply().here().forEach(said -> settled.addAll(said.what().items()));
        return settled;
    }
}
