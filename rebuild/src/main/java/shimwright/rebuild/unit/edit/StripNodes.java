package shimwright.rebuild.unit.edit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import shimwright.rebuild.unit.model.Component;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.UnitType;

/**
 * The step that each thing of a strip-down turns round. Parts and steps that the file lacks are added; what was picked off in the
 * case goes in there, and what came out with something as one is built up with it on the bench.
 */
final class StripNodes {
    private final UnitType type;
    private final List<Removal> strip;
    private final List<Item> items;
    private final List<Step> steps;
    private final List<Set<String>> nodes = new ArrayList<>();
    private final Set<String> off = new HashSet<>();
    /** Steps that bring in what was built up on the bench, and that the strip-down turned round as one. */
    private final Set<String> asOne = new HashSet<>();

    private StripNodes(UnitType type, List<Removal> strip) {
        this.type = type;
        this.strip = strip;
        this.items = new ArrayList<>(type.items());
        this.steps = new ArrayList<>(type.steps());
    }

    static StripNodes of(UnitType type, List<Removal> strip) {
        StripNodes made = new StripNodes(type, strip);
        for (int k = 0; k < strip.size(); k++) {
            made.nodes.add(made.turned(k));
        }
        return made;
    }

    List<Item> items() {
        return List.copyOf(items);
    }

    List<Step> steps() {
        return List.copyOf(steps);
    }

    /** The steps that each thing turns round, in the order of the strip-down. */
    List<Set<String>> nodes() {
        return nodes.stream().map(Set::copyOf).toList();
    }

    private Set<String> turned(int k) {
        Removal one = strip.get(k);
        List<String> ids = known(one);
        Set<String> node = new LinkedHashSet<>();
        Set<String> outNow = new HashSet<>();
        if (ids.isEmpty()) {
            ids = List.of(added(one));
        }
        List<String> without = ids.stream()
                .filter(id ->
                        bringing(id, false).isEmpty() && bringing(id, true).isEmpty())
                .toList();
        if (!without.isEmpty()) {
            fitted(without, one.name(), k);
        }
        for (String id : ids) {
            Optional<String> installer = bringing(id, false);
            if (installer.filter(outNow::contains).isPresent()) {
                off.add(id);
                continue;
            }
            boolean before = installer.filter(asOne::contains).isPresent();
            String step = step(k, id, installer);
            if (!before && asOne.contains(step)) {
                outNow.add(step);
            }
            node.add(step);
            off.add(id);
        }
        for (int onto : one.satOn()) {
            node = builtOnto(node, onto);
        }
        return node;
    }

    /** The items of the file that it is: those named, else the one of that name. */
    private List<String> known(Removal one) {
        List<String> named = one.items().stream()
                .filter(id -> items.stream().anyMatch(item -> item.id().equals(id)))
                .toList();
        return named.isEmpty()
                ? items.stream()
                        .filter(item -> item.name().equalsIgnoreCase(one.name().strip()) && !off.contains(item.id()))
                        .map(Item::id)
                        .limit(1)
                        .toList()
                : named;
    }

    /** The last step that puts an item on a sub-assembly, or that brings it in. */
    private Optional<String> bringing(String item, boolean builds) {
        return steps.stream()
                .filter(step -> (builds ? step.builds() : step.installs()).contains(item))
                .map(Step::id)
                .reduce((one, later) -> later);
    }

    private String step(int k, String item, Optional<String> installer) {
        Optional<String> builder = bringing(item, true);
        if (installer.isEmpty()) {
            return builder.orElseThrow();
        }
        String into = installer.get();
        if (builder.isEmpty() || builder.get().equals(into)) {
            return into;
        }
        if (asOne.contains(into)) {
            return builder.get();
        }
        if (carries(k, item, into, builder.get())) {
            asOne.add(into);
            return into;
        }
        pickedOff(builder.get(), into);
        return builder.get();
    }

    /** True where what is still on it goes with it: as said, or because all of that is built up on it. */
    private boolean carries(int k, String item, String into, String builder) {
        if (strip.stream().anyMatch(other -> other.satOn().contains(k))) {
            return true;
        }
        Set<String> builders = new HashSet<>();
        Set<String> others = new HashSet<>();
        for (String other : get(into).installs()) {
            bringing(other, true).ifPresent(step -> {
                builders.add(step);
                if (!other.equals(item) && !off.contains(other)) {
                    others.add(step);
                }
            });
        }
        boolean first = hardBefore(builder).stream().noneMatch(builders::contains);
        return first
                && !others.isEmpty()
                && others.stream().allMatch(other -> hardBefore(other).contains(builder));
    }

    private Set<String> hardBefore(String step) {
        Set<String> found = new HashSet<>();
        List<String> open = new ArrayList<>(List.of(step));
        while (!open.isEmpty()) {
            get(open.remove(open.size() - 1)).after().forEach((before, why) -> {
                if (why != Step.Why.HABIT && found.add(before)) {
                    open.add(before);
                }
            });
        }
        return found;
    }

    /** What came off in the case goes in there, after what it sits on. */
    private void pickedOff(String builder, String into) {
        List<String> own = get(builder).builds();
        Step whole = get(into);
        change(into, step -> {
            Step less = Component.with(
                    step,
                    "installs",
                    step.installs().stream().filter(id -> !own.contains(id)).toList());
            return without(less, builder);
        });
        change(builder, step -> {
            Step in = Component.with(step, "installs", joined(step.installs(), own));
            in = Component.with(Component.with(in, "builds", List.of()), "at", whole.at());
            return waiting(in, into);
        });
    }

    /** What came out with something as one is put onto it on the bench, and the whole goes in after that. */
    private Set<String> builtOnto(Set<String> node, int onto) {
        String whole = nodes.get(onto).iterator().next();
        for (String part : node) {
            if (part.equals(whole) || get(part).installs().isEmpty()) {
                continue;
            }
            if (steps.stream().noneMatch(step -> get(whole).installs().stream().anyMatch(step.builds()::contains))) {
                split(whole, onto);
            }
            String into = nodes.get(onto).iterator().next();
            List<String> own = get(part).installs();
            String base = get(into).after().keySet().iterator().next();
            change(part, step -> {
                Step built = Component.with(Component.with(step, "builds", own), "installs", List.of());
                return waiting(without(Component.with(built, "at", bench(step.at())), into), base);
            });
            change(into, step -> waiting(Component.with(step, "installs", joined(step.installs(), own)), part));
            asOne.add(into);
        }
        return node;
    }

    /** A part that goes in alone becomes one that is built up first, and a step that brings the whole in. */
    private void split(String id, int onto) {
        Step was = get(id);
        String whole = TypeParts.freeId("N", ids());
        Step in = Component.with(
                TypeParts.step(
                        whole,
                        strip.get(onto).name() + " with what is on it, into its place.",
                        was.at(),
                        Map.of(),
                        was.installs()),
                "after",
                was.after());
        steps.add(steps.indexOf(was) + 1, waiting(Component.with(in, "because", was.because()), id));
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            Step.Why why = step.after().get(id);
            if (why != null && !step.id().equals(whole)) {
                steps.set(i, moved(step, id, whole, why));
            }
        }
        change(id, step -> {
            Step built = Component.with(Component.with(step, "builds", was.installs()), "installs", List.of());
            built = Component.with(Component.with(built, "after", Map.of()), "because", Map.of());
            return Component.with(built, "at", bench(was.at()));
        });
        // the part first, then what waits for it
        change(whole, step -> {
            Map<String, Step.Why> after = new LinkedHashMap<>();
            after.put(id, Step.Why.SAME_PART);
            step.after().forEach(after::putIfAbsent);
            return Component.with(step, "after", after);
        });
        nodes.set(onto, Set.of(whole));
    }

    private static Step moved(Step step, String from, String to, Step.Why why) {
        String because = step.because().get(from);
        Step less = without(step, from);
        Map<String, Step.Why> after = new LinkedHashMap<>(less.after());
        after.put(to, why);
        Step now = Component.with(less, "after", after);
        if (because == null) {
            return now;
        }
        Map<String, String> reasons = new LinkedHashMap<>(now.because());
        reasons.put(to, because);
        return Component.with(now, "because", reasons);
    }

    private String bench(String otherwise) {
        return type.stations().entrySet().stream()
                .filter(station -> !station.getValue().holdsCase())
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(otherwise);
    }

    private static Step waiting(Step step, String before) {
        Map<String, Step.Why> after = new LinkedHashMap<>(step.after());
        after.put(before, Step.Why.SAME_PART);
        Map<String, String> because = new LinkedHashMap<>(step.because());
        because.remove(before);
        return Component.with(Component.with(step, "after", after), "because", because);
    }

    private static Step without(Step step, String before) {
        Map<String, Step.Why> after = new LinkedHashMap<>(step.after());
        after.remove(before);
        Map<String, String> because = new LinkedHashMap<>(step.because());
        because.remove(before);
        return Component.with(Component.with(step, "after", after), "because", because);
    }

    private static List<String> joined(List<String> some, List<String> more) {
        return Stream.concat(some.stream(), more.stream()).distinct().toList();
    }

    /** A part that the file does not have. */
    private String added(Removal one) {
        String id = TypeParts.freeId(
                TypeParts.idOf(one.name()), items.stream().map(Item::id).toList());
        items.add(Item.plain(id, one.name().strip(), "", 1));
        return id;
    }

    /** A step that fits what no step fits, before the one that fits what came off before it. */
    private void fitted(List<String> fresh, String name, int k) {
        int at = steps.size();
        String station = type.stations().entrySet().stream()
                .filter(one -> one.getValue().holdsCase())
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(type.stations().keySet().iterator().next());
        if (k > 0 && !nodes.get(k - 1).isEmpty()) {
            Step before = get(nodes.get(k - 1).iterator().next());
            at = steps.indexOf(before);
            station = before.at();
        }
        Step step = TypeParts.step(TypeParts.freeId("N", ids()), "Fit " + name.strip() + ".", station, Map.of(), fresh);
        steps.add(at, step);
    }

    private List<String> ids() {
        return steps.stream().map(Step::id).toList();
    }

    private Step get(String id) {
        return steps.stream()
                .filter(step -> step.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no step " + id));
    }

    private void change(String id, UnaryOperator<Step> to) {
        steps.replaceAll(step -> step.id().equals(id) ? to.apply(step) : step);
    }
}
