package shimwright.bench.web.job;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.web.kit.UnitPictures;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.job.UnitPicture;
import shimwright.rebuild.plan.learn.AsFound;
import shimwright.rebuild.plan.learn.BoxDifference;
import shimwright.rebuild.plan.learn.PartsStillIn;
import shimwright.rebuild.unit.model.Item;

/**
 * The strip-down as its page shows it.
 *
 * @param in the parts still in
 * @param near the last things off, the last first: they may have been in the way of the next
 * @param far what came off before those, the last first
 * @param readings to be read as found while they can be
 * @param right what is to be put right; empty for nothing
 * @param pictures of the unit that show what can come off now
 * @param differs what is not as the unit file says, and not yet decided
 */
public record StripView(
        PartsStillIn in,
        List<Off> near,
        List<Off> far,
        List<AsFound> readings,
        List<Said<Entry.TakenOff>> right,
        List<UnitPicture> pictures,
        List<BoxDifference> differs) {
    /** Something that is off, by its entry. */
    public record Off(String entry, String name) {}

    /**
     * The page.
     *
     * @param right the entry to be put right; empty for none: what came off before it may have been in its way
     */
    static StripView of(JobOnBench bench, String right) {
        List<Said<Entry.TakenOff>> strip = bench.job().takenOff();
        PartsStillIn in = PartsStillIn.of(bench.unit(), items(strip));
        List<Said<Entry.TakenOff>> wrong =
                strip.stream().filter(said -> said.id().equals(right)).toList();
        List<Off> before = new ArrayList<>();
        for (Said<Entry.TakenOff> said : strip) {
            if (said.id().equals(right)) {
                break;
            }
            before.add(0, new Off(said.id(), said.what().gone()));
        }
        int large = Math.min(PartsStillIn.LARGE, before.size());
        return new StripView(
                in,
                List.copyOf(before.subList(0, large)),
                List.copyOf(before.subList(large, before.size())),
                AsFound.of(bench.unit(), bench.job()),
                wrong,
                UnitPictures.ofItems(
                        bench.shop(),
                        bench.unit().type().id(),
                        in.next().stream().map(Item::id).toList()),
                BoxDifference.open(bench.unit(), bench.job()));
    }

    /** What was in the way of something, in words; empty where nobody was asked. */
    public static String way(Entry.TakenOff one, List<Said<Entry.TakenOff>> strip) {
        Map<String, String> names = new LinkedHashMap<>();
        strip.forEach(said -> names.put(said.id(), said.what().gone()));
        String named = one.inTheWay().stream()
                .filter(names::containsKey)
                .map(entry -> names.getOrDefault(entry, ""))
                .collect(Collectors.joining(", "));
        boolean nothing = one.inTheWay().contains(Entry.TakenOff.NOTHING);
        if (named.isEmpty()) {
            return nothing ? "nothing in its way" : "";
        }
        return "in its way: " + named + (nothing ? ", nothing else" : "");
    }

    /** What else was said of something that came off, in words. */
    public static String found(Entry.TakenOff one) {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("", one.note());
        all.put("held by ", one.fasteners());
        all.put("took ", one.byForce());
        all.put("destroyed: ", one.destroyed());
        all.put("side up: ", one.sideUp());
        all.put("sealed or locked with ", one.sealedWith());
        all.put("shims: ", one.shims().getOrDefault("sizes", ""));
        return all.entrySet().stream()
                .filter(fact -> !fact.getValue().isBlank())
                .map(fact -> fact.getKey() + fact.getValue())
                .collect(Collectors.joining("; "));
    }

    /** True where one of those further back is chosen. */
    public boolean amongFar(List<String> chosen) {
        return far.stream().map(Off::entry).anyMatch(chosen::contains);
    }

    /** What was said of something, by the fields of its form. */
    public static Map<String, String> facts(Entry.TakenOff one) {
        Map<String, String> facts = new LinkedHashMap<>(one.shims());
        facts.put("fasteners", one.fasteners());
        facts.put("sideUp", one.sideUp());
        facts.put("byForce", one.byForce());
        facts.put("destroyed", one.destroyed());
        facts.put("sealedWith", one.sealedWith());
        facts.put("note", one.note());
        return facts;
    }

    /** The readings that taking an item off would end, by name; empty where it ends none. */
    public String ends(String item) {
        List<String> names = readings.stream()
                .filter(reading -> reading.open() && reading.endedBy().contains(item))
                .map(AsFound::name)
                .toList();
        return names.size() > 2 ? names.get(0) + " and " + (names.size() - 1) + " more" : String.join(", ", names);
    }

    /** Readings that can still be taken. */
    public List<AsFound> open() {
        return readings.stream().filter(AsFound::open).toList();
    }

    /** Those of them that something ends which can come off now. */
    public List<AsFound> now() {
        Set<String> next = in.next().stream().map(Item::id).collect(Collectors.toSet());
        return open().stream()
                .filter(reading -> !Collections.disjoint(reading.endedBy(), next))
                .toList();
    }

    /** Those that only later things end. */
    public List<AsFound> later() {
        List<AsFound> now = now();
        return open().stream().filter(reading -> !now.contains(reading)).toList();
    }

    /** What can be read no more, and nobody said a word of it. */
    public List<AsFound> missed() {
        return readings.stream().filter(AsFound::missed).toList();
    }

    /** What was read as found, in order. */
    public static List<Said<Entry.Found>> asFound(JobOnBench bench) {
        return bench.job().found().stream()
                .filter(said -> said.what().what().startsWith(AsFound.LEAD))
                .toList();
    }

    /** The items of what is off. */
    static Set<String> items(List<Said<Entry.TakenOff>> strip) {
        return strip.stream().flatMap(said -> said.what().items().stream()).collect(Collectors.toSet());
    }
}
