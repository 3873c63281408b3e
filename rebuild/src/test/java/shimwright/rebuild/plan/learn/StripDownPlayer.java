package shimwright.rebuild.plan.learn;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shimwright.rebuild.plan.Order;
import shimwright.rebuild.unit.begin.Construction;
import shimwright.rebuild.unit.begin.FirstUnit;
import shimwright.rebuild.unit.edit.Removal;
import shimwright.rebuild.unit.edit.StripDownOrder;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.Component;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Section;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType;

/** A shipped unit that comes apart against its true order, by a person who knows only the names of its parts. */
final class StripDownPlayer {
    /** One thing that comes off: the step of the shipped file that it turns round, and what of it the person names. */
    private record Thing(String step, List<String> items, String onto) {}

    /**
     * What was learned of a unit, beside its file.
     *
     * @param pairs ordered pairs of things
     * @param right pairs that wait, or are free, as in the file
     * @param freed pairs that wait in the file, for what blocks or for what they sit on, and were learned as free
     * @param bound pairs that were learned as waiting and do not in the file
     * @param unseen pairs that wait in the file for a reading, for heat or for a cure alone, which no strip-down shows
     * @param taps on parts, on what was in the way and on what it is taken off from
     * @param most taps at one thing besides the one on the part
     */
    record Learned(
            int things, int pairs, int right, List<String> freed, List<String> bound, int unseen, int taps, int most) {}

    private final Unit unit;
    private final Order order;
    private final Map<String, Set<String>> truth = new LinkedHashMap<>();

    StripDownPlayer(Unit unit) {
        this.unit = unit;
        this.order = Order.of(unit, Map.of());
    }

    private boolean binds(Step.Why why) {
        return why == Step.Why.BLOCKED || why == Step.Why.SAME_PART;
    }

    /** Steps that must be done before one, by what a person can see: what blocks and what sits on what. */
    private Set<String> before(String step) {
        Set<String> known = truth.get(step);
        if (known == null) {
            Set<String> found = new HashSet<>();
            order.before().getOrDefault(step, Map.of()).forEach((other, why) -> {
                if (binds(why)) {
                    found.add(other);
                    found.addAll(before(other));
                }
            });
            truth.put(step, found);
            known = found;
        }
        return known;
    }

    /** The steps as they can be done one after another. */
    private List<String> inOrder() {
        List<String> done = new ArrayList<>();
        while (done.size() < order.steps().size()) {
            done.add(order.steps().keySet().stream()
                    .filter(step -> !done.contains(step) && order.free(step, done))
                    .findFirst()
                    .orElseThrow());
        }
        return done;
    }

    /** What comes off, the first first; of what was built up on the bench, the whole comes out by the part that carries the rest. */
    private List<Thing> strip() {
        Map<String, String> installer = new HashMap<>();
        Map<String, String> builder = new HashMap<>();
        List<String> done = inOrder();
        for (String id : done) {
            Step step = unit.step(id);
            step.installs().forEach(item -> installer.put(item, id));
            step.builds().forEach(item -> builder.put(item, id));
        }
        List<Thing> things = new ArrayList<>();
        for (String id : done) {
            List<String> ends = new ArrayList<>();
            String onto = "";
            for (Item item : unit.type().items()) {
                boolean built = id.equals(builder.get(item.id()));
                boolean in = id.equals(installer.get(item.id()));
                if (!item.trial() && (built || (in && !builder.containsKey(item.id())))) {
                    ends.add(item.id());
                    onto = built ? installer.getOrDefault(item.id(), "") : onto;
                }
            }
            boolean carries = installer.values().stream().anyMatch(id::equals)
                    && builder.keySet().stream().anyMatch(item -> id.equals(installer.get(item)));
            if (!ends.isEmpty() || carries) {
                things.add(0, new Thing(id, ends, onto.equals(id) ? "" : onto));
            }
        }
        return things;
    }

    /** The names of the parts and nothing else of what the file knows. */
    private UnitType names() {
        Construction any = new Construction(
                Construction.Layout.ACROSS,
                Set.of(),
                List.of(1, 1, 1, 1, 1),
                0,
                Construction.Reverse.SLIDING,
                Construction.Shift.RAILS,
                0);
        UnitType first = UnitFiles.read(
                        "b.yaml", FirstUnit.text(any, "Some", "Box").orElseThrow())
                .outcome()
                .orElseThrow();
        List<Item> items = unit.type().items().stream()
                .filter(item -> !item.trial())
                .map(item -> Item.plain(item.id(), item.name(), "", item.quantity()))
                .toList();
        UnitType bare = Component.with(first, "items", items);
        bare = Component.with(bare, "section", new Section(List.of(), List.of(), true));
        return Component.with(bare, "steps", List.of());
    }

    /**
     * What a person learns of the unit.
     *
     * @param all true for one that names all that was in the way and says so, false for one that names the last of it alone
     */
    Learned learn(boolean all) {
        List<Thing> things = strip();
        List<Removal> strip = new ArrayList<>();
        int taps = 0;
        int most = 0;
        for (int k = 0; k < things.size(); k++) {
            Thing thing = things.get(k);
            List<Integer> way = way(things, k);
            way = all || way.isEmpty() ? way : List.of(way.get(way.size() - 1));
            List<Integer> onto = new ArrayList<>();
            for (int over = 0; over < k; over++) {
                if (!thing.onto().isEmpty() && things.get(over).step().equals(thing.onto())) {
                    onto.add(over);
                }
            }
            String name = thing.items().isEmpty()
                    ? "assembly of " + thing.step()
                    : unit.item(thing.items().get(0)).name();
            strip.add(new Removal(name, thing.items(), way, all || way.isEmpty(), onto, Removal.Found.NOTHING));
            int more = taps(way, k) + (all && !way.isEmpty() ? 1 : 0) + (sameBench(things, k) ? 0 : 1);
            taps += 1 + more;
            most = Math.max(most, more);
        }
        UnitType names = names();
        StripDownOrder edit = new StripDownOrder(strip);
        UnitType learned = edit.on(names).orElseThrow();
        return compare(things, learned, taps, most);
    }

    private static boolean sameBench(List<Thing> things, int k) {
        String before = k == 0 ? "" : things.get(k - 1).onto();
        return things.get(k).onto().equals(before);
    }

    /** Taps besides the one on the part: none where the last thing alone was in the way. */
    private static int taps(List<Integer> way, int k) {
        boolean last = way.equals(List.of(k - 1)) || k == 0;
        boolean further = way.stream().anyMatch(over -> over < k - PartsStillIn.LARGE);
        return last ? 0 : Math.max(1, way.size()) + (further ? 1 : 0);
    }

    /** What was in the way of a thing, those left out that had to be off before another one of them. */
    private List<Integer> way(List<Thing> things, int k) {
        List<Integer> all = new ArrayList<>();
        for (int over = 0; over < k; over++) {
            if (before(things.get(over).step()).contains(things.get(k).step())) {
                all.add(over);
            }
        }
        return all.stream()
                .filter(over -> all.stream()
                        .noneMatch(nearer -> !nearer.equals(over)
                                && before(things.get(over).step())
                                        .contains(things.get(nearer).step())))
                .toList();
    }

    private Learned compare(List<Thing> things, UnitType learned, int taps, int most) {
        Order now = Order.of(learned.resolve("A"), Map.of());
        List<String> nodes = new ArrayList<>();
        for (Thing thing : things) {
            boolean carries = things.stream().anyMatch(other -> other.onto().equals(thing.step()));
            nodes.add(node(learned, thing, carries));
        }
        int pairs = 0;
        int right = 0;
        int unseen = 0;
        List<String> freed = new ArrayList<>();
        List<String> bound = new ArrayList<>();
        for (int one = 0; one < things.size(); one++) {
            Set<String> led = now.leadingTo(nodes.get(one));
            for (int other = 0; other < things.size(); other++) {
                if (one == other) {
                    continue;
                }
                pairs++;
                boolean must = before(things.get(one).step())
                        .contains(things.get(other).step());
                boolean is = led.contains(nodes.get(other));
                boolean any = order.leadingTo(things.get(one).step())
                        .contains(things.get(other).step());
                String words =
                        things.get(other).step() + " before " + things.get(one).step();
                if (must && !is) {
                    freed.add(words);
                } else if (is && !any) {
                    bound.add(words);
                } else {
                    right++;
                }
                unseen += any && !is ? 1 : 0;
            }
        }
        return new Learned(things.size(), pairs, right, freed, bound, unseen, taps, most);
    }

    /** The step that a thing became: where it carried others, the one that brings the whole in. */
    private static String node(UnitType learned, Thing thing, boolean carries) {
        String item = thing.items().isEmpty() ? "" : thing.items().get(0);
        return learned.steps().stream()
                .filter(step -> item.isEmpty()
                        ? step.todo().matches(".*assembly of " + thing.step() + "\\b.*")
                                && !step.installs().isEmpty()
                        : carries
                                ? step.installs().contains(item)
                                : step.builds().contains(item))
                .findFirst()
                .or(() -> learned.steps().stream()
                        .filter(step -> step.installs().contains(item))
                        .findFirst())
                .map(Step::id)
                .orElseThrow(() -> new AssertionError("no step for " + thing));
    }
}
