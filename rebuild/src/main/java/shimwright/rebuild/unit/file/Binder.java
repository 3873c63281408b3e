package shimwright.rebuild.unit.file;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.unit.fault.Place;
import shimwright.rebuild.unit.fault.ProblemCollector;
import shimwright.rebuild.unit.fault.SourcePlaces;
import shimwright.rebuild.unit.fault.Spelling;
import shimwright.rebuild.unit.model.Component;
import shimwright.rebuild.unit.model.UnitType.CheckKind;
import shimwright.rebuild.unit.model.VariantFilter;

/**
 * Tree to records: every record of the model is read by its own components. What cannot be read becomes a problem and a
 * stand-in, so that the rest of the file is still looked at.
 */
final class Binder {
    private static final int MOST_NODES = 300_000;

    /** The order in which the keys of a record are read. */
    private static final Map<Class<?>, List<Integer>> ORDERS = new ConcurrentHashMap<>();

    /** What a key of a record may be called. */
    private static final Map<Class<?>, Set<String>> NAMES = new ConcurrentHashMap<>();

    private final ProblemCollector problems;
    private final IdReferences ids = new IdReferences();
    private final SourcePlaces sources = new SourcePlaces();
    private final ScalarReader scalars;
    private int nodes;

    Binder(ProblemCollector problems) {
        this.problems = problems;
        this.scalars = new ScalarReader(problems);
    }

    IdReferences ids() {
        return ids;
    }

    SourcePlaces sources() {
        return sources;
    }

    /** False once aliases have repeated more than any unit needs; reading stopped there. */
    boolean bounded() {
        return nodes <= MOST_NODES;
    }

    /** Reads the whole tree as one record. */
    <T extends Record> Optional<T> bind(Node root, Class<T> type) {
        return Optional.of(root).flatMap(node -> record(node, type, "file")).map(type::cast);
    }

    private Optional<Object> record(Node node, Class<?> type, String as) {
        if (!(node instanceof MappingNode mapping)) {
            problems.add(
                    Place.of(node),
                    "a " + as + " is written as keys and values, here is " + ScalarReader.describe(node),
                    "Write " + examples(type));
            return Optional.empty();
        }
        int before = problems.count();
        Map<String, NodeTuple> entries = entries(mapping, as);
        Map<String, Place> keys = new LinkedHashMap<>();
        List<Component> components = Component.of(type);
        String name = as + named(entries);
        Set<String> meant = unknown(mapping, type, name);
        Object[] values = new Object[components.size()];
        Set<String> unread = new LinkedHashSet<>();
        List<Object> absent = AbsentValues.of(type);
        for (int i : ORDERS.computeIfAbsent(type, Binder::inOrder)) {
            Component component = components.get(i);
            NodeTuple entry = entry(entries, component, name);
            if (entry != null) {
                Node value = entry.getValueNode();
                keys.put(component.key(), Place.of(value));
                Optional<Object> read = component.field().kindFrom().isEmpty()
                        ? value(value, component, component.type(), name)
                        : stated(value, component, kind(components, values, component, unread), name);
                if (read.isEmpty()) {
                    unread.add(component.key());
                }
                values[i] = read.orElse(AbsentValues.blank(component.type()));
            } else if (component.required()) {
                missing(Place.of(node), component, name, meant);
                unread.add(component.key());
                values[i] = AbsentValues.blank(component.type());
            } else {
                values[i] = absent.get(i);
            }
        }
        Object made = Component.make(type, values);
        sources.put((Record) made, Place.of(node), keys, problems.count() == before);
        return Optional.of(made);
    }

    /** The entry of a key, by its older name where that is written; both at once are a fault. */
    private @Nullable NodeTuple entry(Map<String, NodeTuple> entries, Component component, String name) {
        NodeTuple now = entries.get(component.key());
        NodeTuple before = entries.get(component.field().formerly());
        if (now != null && before != null) {
            problems.add(
                    Place.of(before.getKeyNode()),
                    name + " has both \"" + component.key() + "\" and \""
                            + component.field().formerly() + "\"",
                    "Write all of them under " + component.key());
        }
        return now == null ? before : now;
    }

    /** The components by number, those last whose kind of quantity another one says. */
    private static List<Integer> inOrder(Class<?> record) {
        List<Component> components = Component.of(record);
        return IntStream.range(0, components.size())
                .boxed()
                .sorted(Comparator.comparing(
                        i -> !components.get(i).field().kindFrom().isEmpty()))
                .toList();
    }

    /** The kind of quantity that another key of the record says; empty where that key could not be read. */
    private static Optional<CheckKind> kind(
            List<Component> components, Object[] values, Component component, Set<String> unread) {
        String from = component.field().kindFrom();
        for (int k = 0; k < values.length; k++) {
            if (components.get(k).key().equals(from) && values[k] instanceof CheckKind kind) {
                return unread.contains(from) ? Optional.empty() : Optional.of(kind);
            }
        }
        throw new IllegalStateException(component.key() + " takes its kind from " + from + ", which says none");
    }

    /** A stated quantity or several: read by the kind that the record says; one without a kind is a fault. */
    private Optional<Object> stated(Node node, Component component, Optional<CheckKind> kind, String name) {
        boolean blank = node instanceof ScalarNode scalar
                && scalar.getValue().isBlank()
                && scalar.getScalarStyle() != ScalarStyle.PLAIN;
        boolean nothing =
                blank || (node instanceof SequenceNode list && list.getValue().isEmpty());
        if (nothing || kind.isEmpty()) {
            return Optional.of(AbsentValues.blank(component.type()));
        }
        if (kind.get() == CheckKind.NONE) {
            problems.add(
                    Place.of(node),
                    "\"" + component.key() + "\" of " + name + " is a quantity, but "
                            + component.field().kindFrom() + " says none",
                    "Add " + component.field().kindFrom() + ": length, torque or what it is; what is attested has no"
                            + " limit");
            return Optional.empty();
        }
        return value(node, component.as(kind.get().quantity()), component.type(), name);
    }

    private static String examples(Class<?> type) {
        return String.join(
                ", ",
                Component.of(type).stream()
                        .filter(Component::required)
                        .limit(3)
                        .map(c -> c.key() + ": ...")
                        .toList());
    }

    private static String named(Map<String, NodeTuple> entries) {
        NodeTuple entry = entries.get("id");
        return entry != null && entry.getValueNode() instanceof ScalarNode id ? " \"" + id.getValue() + "\"" : "";
    }

    /** The entries by key; a doubled key is a problem and its first value counts. */
    private Map<String, NodeTuple> entries(MappingNode mapping, String as) {
        Map<String, NodeTuple> entries = new LinkedHashMap<>();
        Map<String, Place> places = new LinkedHashMap<>();
        for (NodeTuple tuple : mapping.getValue()) {
            if (!(tuple.getKeyNode() instanceof ScalarNode key)) {
                problems.add(Place.of(tuple.getKeyNode()), "a key must be one word", "Write a word before the colon");
                continue;
            }
            Place first = places.putIfAbsent(key.getValue(), Place.of(key));
            if (first == null) {
                entries.put(key.getValue(), tuple);
            } else {
                problems.add(
                        Place.of(key),
                        "key \"" + key.getValue() + "\" stands twice in this " + as + ", first on line " + first.line(),
                        "Delete one of them");
            }
        }
        return entries;
    }

    /** A key that is there under a name with a slip is not reported as missing as well. */
    private void missing(Place place, Component component, String name, Set<String> meant) {
        if (meant.contains(component.key())) {
            return;
        }
        problems.add(
                place,
                name + " has no \"" + component.key() + "\"",
                "Add " + component.key() + ": " + component.field().value());
    }

    private static Set<String> names(Class<?> record) {
        Set<String> names = new HashSet<>();
        for (Component component : Component.of(record)) {
            names.add(component.key());
            names.add(component.field().formerly());
        }
        names.remove("");
        return names;
    }

    /** Reports the keys that are not known; gives the keys that were probably meant. */
    private Set<String> unknown(MappingNode mapping, Class<?> type, String name) {
        List<Component> components = Component.of(type);
        Set<String> names = NAMES.computeIfAbsent(type, Binder::names);
        Set<String> meant = new LinkedHashSet<>();
        for (NodeTuple tuple : mapping.getValue()) {
            if (tuple.getKeyNode() instanceof ScalarNode key && !names.contains(key.getValue())) {
                List<String> known = components.stream().map(Component::key).toList();
                List<String> near = Spelling.nearest(key.getValue(), known);
                meant.addAll(near);
                boolean cut = near.isEmpty()
                        && tuple.getValueNode() instanceof ScalarNode value
                        && value.getValue().isEmpty();
                problems.add(
                        Place.of(key),
                        name + " has no key \"" + key.getValue() + "\"",
                        cut
                                ? "If it belongs to the text before it, put that text in quotes: a comma ends it here"
                                : Spelling.hint(key.getValue(), known, "keys"));
            }
        }
        return meant;
    }

    private Optional<Object> value(Node node, Component component, Type type, String name) {
        nodes++;
        if (!bounded()) {
            return Optional.empty();
        }
        if (type instanceof ParameterizedType held && component.optional()) {
            return value(node, component, Component.held(held), name).map(Optional::of);
        }
        if (type instanceof ParameterizedType held) {
            return held.getRawType() == Map.class
                    ? map(node, component, Component.held(held), name)
                    : list(node, component, held, name);
        }
        Class<?> plain = (Class<?>) type;
        if (plain.isRecord()) {
            return record(node, plain, Component.words(plain));
        }
        Optional<Object> read = scalars.read(node, component, plain, name);
        if (plain == String.class && read.isPresent()) {
            refer(component, read.get().toString(), node);
        }
        return read;
    }

    private void refer(Component component, String id, Node node) {
        if (!component.field().refersTo().isEmpty() && !id.isEmpty()) {
            ids.refer(component.field().refersTo(), id, Place.of(node));
        }
    }

    private Optional<Object> list(Node node, Component component, ParameterizedType type, String name) {
        Type held = Component.held(type);
        if (held == Double.class && component.kind() != Kind.NUMBER) {
            return scalars.row(node, component, name);
        }
        if (node instanceof ScalarNode one && !component.field().formerly().isEmpty()) {
            return one.getValue().isEmpty() && one.getScalarStyle() != ScalarStyle.PLAIN
                    ? Optional.of(List.of())
                    : value(node, component, held, name).map(List::of);
        }
        if (!(node instanceof SequenceNode sequence)) {
            problems.add(
                    Place.of(node),
                    "\"" + component.key() + "\" of " + name + " is a list, here is " + ScalarReader.describe(node),
                    "Write [a, b] or one line with a hyphen for each");
            return Optional.empty();
        }
        List<Object> values = new ArrayList<>();
        List<Map.Entry<String, Set<String>>> defined = new ArrayList<>();
        List<Place> places = new ArrayList<>();
        ids.list(component.key());
        for (Node element : sequence.getValue()) {
            Optional<Object> value = value(element, component, held, name);
            value.ifPresent(values::add);
            if (value.isPresent() && value.get() instanceof Record record) {
                define(record, component.key(), defined, places);
            }
        }
        if (held instanceof Class<?> plain && plain.isRecord()) {
            IdReferences.unique(defined, places, Component.words(plain), problems);
        }
        if (type.getRawType() == Set.class) {
            return Optional.of(Collections.unmodifiableSet(new LinkedHashSet<>(values)));
        }
        return Optional.of(List.copyOf(values));
    }

    private void define(Record record, String list, List<Map.Entry<String, Set<String>>> defined, List<Place> places) {
        Component first = Component.of(record.getClass()).get(0);
        if (first.key().equals("id") && sources.written(record).contains("id")) {
            String id = first.in(record).toString();
            Set<String> only = VariantFilter.only(record);
            Place place = sources.of(record, "id");
            ids.define(list, id);
            defined.add(Map.entry(id, only));
            places.add(place);
        }
    }

    private Optional<Object> map(Node node, Component component, Type held, String name) {
        if (!(node instanceof MappingNode mapping)) {
            problems.add(
                    Place.of(node),
                    "\"" + component.key() + "\" of " + name + " is written as keys and values, here is "
                            + ScalarReader.describe(node),
                    "Write {key: value} or one line for each");
            return Optional.empty();
        }
        Map<String, Object> values = new LinkedHashMap<>();
        String list = component.key().replace('_', ' ');
        ids.list(component.key());
        entries(mapping, "list of " + list).forEach((key, tuple) -> {
            nodes++;
            if (component.field().refersTo().isEmpty()) {
                ids.define(component.key(), key);
            } else {
                refer(component, key, tuple.getKeyNode());
            }
            Optional<Object> value = held instanceof Class<?> plain && plain.isRecord()
                    ? record(tuple.getValueNode(), plain, list + " \"" + key + "\"")
                    : scalars.read(tuple.getValueNode(), component, (Class<?>) held, name);
            value.ifPresent(v -> values.put(key, v));
        });
        return Optional.of(Collections.unmodifiableMap(values));
    }
}
