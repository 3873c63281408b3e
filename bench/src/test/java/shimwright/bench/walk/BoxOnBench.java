package shimwright.bench.walk;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import shimwright.rebuild.plan.Order;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Fastener;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/**
 * A box as it comes apart, made of a shipped file turned round: what comes off, one thing after another, what was in its way, what held
 * it. What the file binds for what blocks or for what sits on what can be seen at the bench; readings, heat and cures cannot.
 */
final class BoxOnBench {
    private static final String INTEGRAL = ".*gear.* of the (input|countershaft)|input gear|lip of .*";

    /**
     * One thing that comes off.
     *
     * @param item of the shipped file, for the comparison alone
     * @param step of the shipped file that it turns round, for the comparison alone
     * @param way place of what was in its way, the last of it; empty where nothing was
     * @param on place of what it came out with as one, and is taken off on the bench
     * @param bolts as they are counted and read off, such as {@code 6 x M8x30 8.8}
     */
    record Thing(Item item, String step, OptionalInt way, OptionalInt on, List<Fastener> bolts) {
        String name() {
            return item.name();
        }
    }

    /** Bolts of the book, and the place of the thing that they hold. */
    record Tightened(Fastener bolt, int holds) {}

    private final Unit unit;
    private final Order order;
    private final List<String> done = new ArrayList<>();
    private final Map<String, String> installer = new HashMap<>();
    private final Map<String, String> builder = new HashMap<>();
    private final Map<String, Set<String>> known = new HashMap<>();
    private final List<Thing> things = new ArrayList<>();
    private final List<Tightened> tightened = new ArrayList<>();

    BoxOnBench(Unit unit) {
        this.unit = unit;
        this.order = Order.of(unit, Map.of());
        inOrder();
        for (String id : done) {
            Step step = unit.step(id);
            step.builds().forEach(item -> builder.put(item, id));
            step.installs().stream()
                    .filter(item -> !step.removes().contains(item))
                    .forEach(item -> installer.put(item, id));
        }
        comeOff();
        bolts();
    }

    Unit unit() {
        return unit;
    }

    List<Thing> things() {
        return List.copyOf(things);
    }

    List<Tightened> tightened() {
        return List.copyOf(tightened);
    }

    /** What is drawn or judged as an item and is one piece with another. */
    List<Item> integral() {
        return unit.type().items().stream()
                .filter(item -> !item.trial() && integral(item))
                .toList();
    }

    /** The thing of which something is a piece. */
    int carrier(Item piece) {
        String base = base(piece.id());
        return place(base.equals(piece.id()) ? "main_case" : base).orElseThrow();
    }

    /** The thing that was fitted last before a clearance can be read: what its last reading stands on, and what closes its loop. */
    int readAfter(Clearance clearance) {
        List<Step> read = unit.type().steps().stream()
                .filter(step -> step.clearance().equals(clearance.id()) && step.phase() != Step.Phase.AGAIN)
                .toList();
        Step last = read.get(read.size() - 1);
        List<Integer> at = new ArrayList<>(fitted(last.id()));
        boolean own = at.stream().anyMatch(k -> things.get(k).step().equals(last.id()));
        if (!own && clearance.method() != Clearance.Method.DIFFERENCE) {
            clearance.loop().stream()
                    .map(Clearance.Length::item)
                    .filter(item -> !item.isEmpty())
                    .forEach(item -> place(base(item)).ifPresent(at::add));
        }
        return Collections.min(at);
    }

    private boolean integral(Item item) {
        boolean built = !base(item.id()).equals(item.id()) || item.name().startsWith("lip");
        return built && item.name().matches(INTEGRAL) && item.part().isEmpty();
    }

    private void inOrder() {
        while (done.size() < order.steps().size()) {
            done.add(order.steps().keySet().stream()
                    .filter(step -> !done.contains(step) && order.free(step, done))
                    .findFirst()
                    .orElseThrow());
        }
    }

    /** Steps that must be done before one, by what a person can see: what blocks and what sits on what. */
    Set<String> before(String step) {
        Set<String> found = known.get(step);
        if (found == null) {
            Set<String> all = new HashSet<>();
            order.before().getOrDefault(step, Map.of()).forEach((other, why) -> {
                if (why == Step.Why.BLOCKED || why == Step.Why.SAME_PART) {
                    all.add(other);
                    all.addAll(before(other));
                }
            });
            known.put(step, all);
            found = all;
        }
        return found;
    }

    /** What a step waits for of itself. */
    Map<String, Step.Why> direct(String step) {
        return order.before().getOrDefault(step, Map.of());
    }

    /** Steps that must be done before one for any reason. */
    Set<String> all(String step) {
        return order.leadingTo(step);
    }

    /** The part of what was built up on the bench on which an item sits; the item itself where it sits on none. */
    private String base(String item) {
        String root = builder.get(item);
        if (root == null || !installer.containsKey(item)) {
            return item;
        }
        String first = root;
        for (Optional<String> under = under(root, item); under.isPresent(); under = under(root, item)) {
            root = under.get();
        }
        String base = "";
        for (String built : unit.step(root).builds()) {
            boolean casting = root.equals(first) && unit.item(built).material().equals("casting");
            base = base.isEmpty() || casting ? built : base;
            if (built.equals(item)) {
                return base;
            }
        }
        return base;
    }

    private Optional<String> under(String step, String item) {
        return unit.step(step).after().keySet().stream()
                .filter(other -> order.steps().containsKey(other))
                .filter(other -> builder.entrySet().stream()
                        .anyMatch(built -> built.getValue().equals(other)
                                && installer.getOrDefault(built.getKey(), "").equals(installer.get(item))))
                .findFirst();
    }

    private void comeOff() {
        List<String> steps = new ArrayList<>(done);
        Collections.reverse(steps);
        for (String id : steps) {
            List<Item> off = new ArrayList<>();
            List<Item> loose = new ArrayList<>();
            for (String item : new LinkedHashSet<>(unit.step(id).installs())) {
                if (id.equals(installer.get(item)) && base(item).equals(item)) {
                    (builder.containsKey(item) ? off : loose).add(unit.item(item));
                }
            }
            Collections.reverse(off);
            Collections.reverse(loose);
            off.addAll(loose);
            List<Item> built = new ArrayList<>();
            for (String item : new LinkedHashSet<>(unit.step(id).builds())) {
                if (id.equals(builder.get(item)) && !base(item).equals(item)) {
                    built.add(unit.item(item));
                }
            }
            Collections.reverse(built);
            off.addAll(built);
            off.stream().filter(item -> !item.trial() && !integral(item)).forEach(item -> things.add(thing(item, id)));
        }
    }

    private Thing thing(Item item, String step) {
        int k = things.size();
        String base = base(item.id());
        OptionalInt on = base.equals(item.id()) ? OptionalInt.empty() : place(base);
        return new Thing(item, step, way(step, k), on, new ArrayList<>());
    }

    /** Where an item came off. */
    OptionalInt place(String item) {
        return IntStream.range(0, things.size())
                .filter(k -> things.get(k).item().id().equals(item))
                .findFirst();
    }

    /** The last of what had to be off; within one step of the file, the thing before it. */
    private OptionalInt way(String step, int k) {
        if (k > 0 && things.get(k - 1).step().equals(step)) {
            return OptionalInt.of(k - 1);
        }
        List<Integer> all = IntStream.range(0, k)
                .filter(over -> before(things.get(over).step()).contains(step))
                .boxed()
                .toList();
        return all.stream()
                .filter(over -> all.stream()
                        .noneMatch(near -> before(things.get(over).step())
                                .contains(things.get(near).step())))
                .mapToInt(over -> over)
                .max();
    }

    private void bolts() {
        List<String> steps = new ArrayList<>(done);
        Collections.reverse(steps);
        Set<String> said = new HashSet<>();
        for (String id : steps) {
            for (String bolt : unit.step(id).fasteners()) {
                if (said.add(bolt)) {
                    held(id, unit.fastener(bolt));
                }
            }
        }
    }

    /** Bolts are counted once where they hold one thing in two ways, dry for a reading and for good. */
    private void held(String step, Fastener bolt) {
        List<Integer> at = fitted(step);
        int holds = at.stream()
                .reduce((one, other) -> alike(bolt, other) > alike(bolt, one) ? other : one)
                .orElseThrow();
        tightened.add(new Tightened(bolt, holds));
        List<Fastener> there = things.get(holds).bolts();
        boolean same =
                there.stream().anyMatch(one -> one.thread().equals(bolt.thread()) && one.quantity() == bolt.quantity());
        if (!same) {
            there.add(bolt);
        }
    }

    private double alike(Fastener bolt, int thing) {
        return PartNames.alike(bolt.where(), things.get(thing).name());
    }

    /** Things that a step fits, or the step that it stands on where it fits none; by place. */
    List<Integer> fitted(String step) {
        Deque<String> open = new ArrayDeque<>(List.of(step));
        Set<String> seen = new HashSet<>(open);
        while (!open.isEmpty()) {
            Step at = unit.step(open.remove());
            List<Integer> found = new ArrayList<>();
            for (int k = 0; k < things.size(); k++) {
                String item = things.get(k).item().id();
                boolean in = at.installs().contains(item)
                        && !at.removes().contains(item)
                        && things.get(k).on().isEmpty();
                if (in || things.get(k).step().equals(at.id())) {
                    found.add(k);
                }
            }
            if (!found.isEmpty()) {
                return found;
            }
            at.after().forEach((before, why) -> {
                if (why != Step.Why.HABIT && order.steps().containsKey(before) && seen.add(before)) {
                    open.add(before);
                }
            });
        }
        throw new IllegalStateException("nothing is fitted before " + step);
    }
}
