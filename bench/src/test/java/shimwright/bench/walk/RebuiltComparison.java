package shimwright.bench.walk;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import shimwright.bench.walk.BoxOnBench.Thing;
import shimwright.rebuild.plan.Order;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Fastener;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.UnitType;

/** A unit file that was written at the bench, beside the shipped one of the same box. */
final class RebuiltComparison {
    private static final double SAME_TORQUE = 0.01;
    private static final double SAME_LIMIT = 0.5e-6;

    private final BoxOnBench box;
    private final UnitType rebuilt;
    private final Map<String, Item> found = new LinkedHashMap<>();
    private final List<String> missing = new ArrayList<>();
    private final List<String> more;
    private final Map<String, Set<String>> closed = new LinkedHashMap<>();

    RebuiltComparison(BoxOnBench box, UnitType rebuilt) {
        this.box = box;
        this.rebuilt = rebuilt;
        List<Item> free = new ArrayList<>(rebuilt.items());
        for (Item item : box.unit().type().items()) {
            Optional<Item> same = free.stream()
                    .filter(one -> PartNames.same(one.name(), item.name()) && one.trial() == item.trial())
                    .findFirst();
            same.ifPresentOrElse(
                    one -> {
                        free.remove(one);
                        found.put(item.id(), one);
                    },
                    () -> missing.add(item.name()));
        }
        this.more = free.stream().map(Item::name).toList();
    }

    /** Items of the shipped file of which the rebuilt one has none of that name. */
    List<String> missing() {
        return List.copyOf(missing);
    }

    /** Items that the shipped file does not have. */
    List<String> more() {
        return more;
    }

    double itemShare() {
        return (double) found.size() / (found.size() + missing.size());
    }

    /**
     * Ordered pairs of things that are there in both files.
     *
     * @param needed pairs that the shipped file binds for any reason but habit
     * @param kept those of them that the rebuilt file binds too
     * @param freed pairs that the shipped file binds for what can be seen and the rebuilt one does not
     * @param bound pairs that the rebuilt file binds and the shipped one does not
     * @param pairs all, but those of one step of the shipped file
     */
    record Pairs(int needed, int kept, List<String> freed, int bound, int pairs) {
        double keptShare() {
            return (double) kept / needed;
        }

        double alikeShare() {
            return (double) (pairs - bound - (needed - kept)) / pairs;
        }
    }

    Pairs pairs() {
        Order now = Order.of(rebuilt.resolve("A"), Map.of());
        List<Thing> things = box.things().stream()
                .filter(thing -> found.containsKey(thing.item().id()))
                .toList();
        Map<String, String> nodes = new LinkedHashMap<>();
        things.forEach(thing -> nodes.put(thing.item().id(), node(thing)));
        int needed = 0;
        int kept = 0;
        int bound = 0;
        int pairs = 0;
        List<String> freed = new ArrayList<>();
        for (Thing then : things) {
            Set<String> led = now.leadingTo(nodes.getOrDefault(then.item().id(), ""));
            Set<String> any = needed(then.step());
            for (Thing first : things) {
                if (first.step().equals(then.step())) {
                    continue;
                }
                boolean is = led.contains(nodes.get(first.item().id()));
                boolean must = any.contains(first.step());
                pairs++;
                needed += must ? 1 : 0;
                kept += must && is ? 1 : 0;
                bound += is && !box.all(then.step()).contains(first.step()) ? 1 : 0;
                if (!is && box.before(then.step()).contains(first.step())) {
                    freed.add(first.name() + " before " + then.name());
                }
            }
        }
        return new Pairs(needed, kept, freed, bound, pairs);
    }

    private Set<String> needed(String step) {
        Set<String> known = closed.get(step);
        if (known == null) {
            Set<String> all = new HashSet<>();
            box.direct(step).forEach((before, why) -> {
                if (why != Step.Why.HABIT) {
                    all.add(before);
                    all.addAll(needed(before));
                }
            });
            closed.put(step, all);
            known = all;
        }
        return known;
    }

    /** The step of the rebuilt file that brings a thing in; of one that is put onto another on the bench, the one that does so. */
    private String node(Thing thing) {
        String item = Objects.requireNonNull(found.get(thing.item().id())).id();
        Optional<String> built = rebuilt.steps().stream()
                .filter(step -> step.builds().contains(item))
                .map(Step::id)
                .reduce((one, later) -> later);
        Optional<String> in = rebuilt.steps().stream()
                .filter(step -> step.installs().contains(item))
                .map(Step::id)
                .reduce((one, later) -> later);
        return (thing.on().isPresent() ? built.or(() -> in) : in.or(() -> built))
                .orElseThrow(() -> new AssertionError("no step fits " + thing.name()));
    }

    /** Bolts of the shipped file of which the rebuilt one has none of that thread and count with that torque. */
    List<String> withoutTorque() {
        List<Fastener> free = new ArrayList<>(rebuilt.fasteners());
        List<String> without = new ArrayList<>();
        for (Fastener bolt : box.unit().type().fasteners()) {
            Optional<Fastener> same = free.stream()
                    .filter(one -> thread(bolt).startsWith(thread(one)) && one.quantity() == bolt.quantity())
                    .filter(one -> Math.abs(one.torque() / bolt.torque() - 1) < SAME_TORQUE)
                    .findFirst();
            same.ifPresentOrElse(free::remove, () -> without.add(bolt.where() + " " + bolt.thread()));
        }
        return without;
    }

    private static String thread(Fastener bolt) {
        return bolt.thread().replace(" ", "");
    }

    /** What a clearance of the shipped file is not in the rebuilt one. */
    List<String> clearancesApart() {
        List<String> apart = new ArrayList<>();
        for (Clearance book : box.unit().type().clearances()) {
            Optional<Clearance> same = rebuilt.clearances().stream()
                    .filter(one -> one.name().equals(book.name()))
                    .findFirst();
            if (same.isEmpty()) {
                apart.add(book.name() + " is not there");
            } else {
                apart(book, same.get(), apart);
            }
        }
        return apart;
    }

    private void apart(Clearance book, Clearance now, List<String> apart) {
        String name = book.name() + ": ";
        if (now.sense() != book.sense() || now.method() != book.method()) {
            apart.add(name + now.sense() + " by " + now.method());
        }
        if (Math.abs(now.lower() - book.lower()) > SAME_LIMIT || Math.abs(now.upper() - book.upper()) > SAME_LIMIT) {
            apart.add(name + "limits");
        }
        for (Clearance.Position place : book.positions()) {
            Item item = found.get(place.item());
            boolean there = item != null
                    && now.positions().stream()
                            .anyMatch(one ->
                                    one.item().equals(item.id()) && Math.abs(one.effect() - place.effect()) < 1e-6);
            if (!there) {
                apart.add(name + place.where());
            }
        }
        for (Clearance.Length length : book.loop()) {
            boolean there = now.loop().stream()
                    .anyMatch(one -> one.name().equals(length.name())
                            && Math.abs(one.nominal() - length.nominal()) < SAME_LIMIT
                            && one.sign() == length.sign());
            if (!there) {
                apart.add(name + length.name());
            }
        }
        if (!now.loop().isEmpty() != !book.loop().isEmpty()) {
            apart.add(name + "loop");
        }
    }
}
