package shimwright.rebuild.reuse;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shimwright.rebuild.inspect.JudgedPiece;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Entry.Decision;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.record.Standings;
import shimwright.rebuild.unit.model.GearPair;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Item.Shape;
import shimwright.rebuild.unit.model.Unit;

/**
 * Parts that ran in on one another and stay together: cup and cone of a bearing, bevel wheels lapped as a pair, a sleeve on its hub.
 * Common practice, no source; which they are follows from the unit file. Replacing one asks for the other.
 */
public final class RunTogether {
    /** A sleeve whose bore is a hub's outside within this runs on it, m. */
    private static final double ON_HUB = 1e-3;

    private RunTogether() {}

    /** The sets of a unit, each the ids of its items. */
    public static List<Set<String>> of(Unit unit) {
        Set<Set<String>> sets = new LinkedHashSet<>();
        unit.type().bearings().stream()
                .filter(bearing -> bearing.items().size() > 1)
                .filter(bearing -> bearing.items().stream().noneMatch(id -> shape(unit, id) == Shape.NEEDLES))
                .forEach(bearing -> sets.add(new LinkedHashSet<>(bearing.items())));
        for (GearPair pair : unit.type().gears()) {
            if (shape(unit, pair.driverItem()) == Shape.BEVEL_GEAR
                    && shape(unit, pair.drivenItem()) == Shape.BEVEL_GEAR) {
                sets.add(new LinkedHashSet<>(List.of(pair.drivenItem(), pair.driverItem())));
            }
        }
        List<Item> items = unit.type().items();
        items.stream()
                .filter(hub -> hub.shape() == Shape.HUB)
                .forEach(hub -> items.stream()
                        .filter(sleeve -> slidesOn(sleeve, hub))
                        .forEach(sleeve -> sets.add(new LinkedHashSet<>(List.of(hub.id(), sleeve.id())))));
        return List.copyOf(sets);
    }

    private static Shape shape(Unit unit, String id) {
        return unit.type().items().stream()
                .filter(item -> item.id().equals(id))
                .findFirst()
                .map(Item::shape)
                .orElse(Shape.NONE);
    }

    private static boolean slidesOn(Item sleeve, Item hub) {
        return sleeve.shape() == Shape.SLEEVE
                && sleeve.shaft().equals(hub.shaft())
                && sleeve.diameters().size() == 2
                && hub.diameters().size() == 2
                && Math.abs(sleeve.diameters().get(0) - hub.diameters().get(1)) < ON_HUB
                && sleeve.along().size() == 2
                && hub.along().size() == 2
                && sleeve.along().get(0) < hub.along().get(1)
                && hub.along().get(0) < sleeve.along().get(1);
    }

    /**
     * A part that nobody has decided on since the one that it runs with is to be replaced.
     *
     * @param other the one that is to be replaced
     */
    public record Asked(Item item, Item other, Said<Entry.Judged> because) {
        /** What is asked. */
        public String sentence() {
            return item.name() + " runs with " + other.name() + ", which is to be replaced";
        }

        /** The single part by which it is decided on. */
        public String part() {
            return JudgedPiece.parts(item).get(0);
        }
    }

    /** What is asked in a job: a mate that is renewed in any case is not, nor one that was decided on since. */
    public static List<Asked> asked(Unit unit, Job job) {
        List<Standings.Standing> all = Standings.all(unit, job);
        List<Asked> asked = new ArrayList<>();
        for (Set<String> set : of(unit)) {
            for (String gone : set) {
                replaced(all, gone)
                        .ifPresent(because -> set.stream()
                                .filter(id -> !id.equals(gone))
                                .filter(id -> !unit.item(id).renew()
                                        && replaced(all, id).isEmpty())
                                .filter(id -> judgements(all, id).noneMatch(said -> said.number() > because.number()))
                                .forEach(id -> asked.add(new Asked(unit.item(id), unit.item(gone), because))));
            }
        }
        return List.copyOf(asked);
    }

    private static Optional<Said<Entry.Judged>> replaced(List<Standings.Standing> all, String item) {
        return judgements(all, item)
                .filter(said -> said.what().decision() == Decision.REPLACE)
                .findFirst();
    }

    private static Stream<Said<Entry.Judged>> judgements(List<Standings.Standing> all, String item) {
        return all.stream()
                .filter(standing -> standing.piece().items().contains(item))
                .flatMap(standing -> standing.judged().stream());
    }

    /** The set that an item belongs to, in words; empty where it runs with none. */
    public static String with(Unit unit, String item) {
        return of(unit).stream()
                .filter(set -> set.contains(item))
                .flatMap(set -> set.stream().filter(id -> !id.equals(item)))
                .map(id -> unit.item(id).name().toLowerCase(Locale.ROOT))
                .distinct()
                .collect(Collectors.joining(", "));
    }
}
