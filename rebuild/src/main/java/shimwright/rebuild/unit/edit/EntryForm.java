package shimwright.rebuild.unit.edit;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.unit.edit.EntryField.Option;
import shimwright.rebuild.unit.edit.EntryField.Widget;
import shimwright.rebuild.unit.file.UnitTree;
import shimwright.rebuild.unit.model.Component;
import shimwright.rebuild.unit.model.Origin;
import shimwright.rebuild.unit.model.Quantity;
import shimwright.rebuild.unit.model.UnitType;

/** The form of one entry of a unit file, a field for each key that the model knows. {@link TypedEntry} reads it back. */
public final class EntryForm {
    /** More options than these are chosen by their names in a line of text. */
    private static final int MOST_BOXES = 12;

    /** From this many letters on a text gets several lines. */
    private static final int LONG_TEXT = 60;

    private final Map<String, Object> tree;
    private final UnitSystem units;

    private EntryForm(Map<String, Object> tree, UnitSystem units) {
        this.tree = tree;
        this.units = units;
    }

    /**
     * The fields of an entry.
     *
     * @param section in which it stands
     * @param entry what it says, by key; empty for a new one
     * @param type the unit type as it stands, for what can be referred to
     * @param units in which a bare number is meant
     */
    public static List<EntryField> of(FileSection section, Map<String, Object> entry, UnitType type, UnitSystem units) {
        EntryForm form = new EntryForm(UnitTree.seen(type), units);
        List<EntryField> fields = new ArrayList<>();
        if (section.form() == FileSection.Shape.KEYED) {
            fields.addAll(form.behind(section.component(), "", entry));
        } else {
            fields.addAll(form.fields(section.keys(), "", entry));
        }
        String first = section.keys().isEmpty() ? "" : section.keys().get(0).key();
        if (section.namedBy().isPresent() && !entry.containsKey(first)) {
            fields.add(form.step(text(entry.get(FileSection.STEP))));
        }
        return List.copyOf(fields);
    }

    /** At which step a further entry belongs. */
    private EntryField step(String chosen) {
        List<Option> steps = FileSection.find("steps").map(this::options).orElseThrow();
        return new EntryField(
                FileSection.STEP,
                "step at which it belongs",
                Widget.ONE,
                chosen,
                chosen(steps, chosen, true),
                "",
                List.of());
    }

    /** The fields of what stands behind a key: the key, and its record or its one value. */
    private List<EntryField> behind(Component map, String prefix, Map<String, Object> entry) {
        List<EntryField> fields = new ArrayList<>();
        String key = text(entry.get(FileSection.KEY));
        List<Option> known = options(map);
        fields.add(new EntryField(
                prefix + FileSection.KEY,
                known.isEmpty() ? "short id" : TypedEntry.words(map.field().refersTo()),
                known.isEmpty() ? Widget.LINE : Widget.ONE,
                key,
                known.isEmpty() ? known : chosen(known, key, true),
                "",
                List.of()));
        Type held = Component.held((ParameterizedType) map.type());
        if (held instanceof Class<?> plain && plain.isRecord()) {
            fields.addAll(fields(Component.of(plain), prefix, entry));
        } else {
            fields.add(scalar(
                    map,
                    (Class<?>) held,
                    prefix + FileSection.VALUE,
                    map.field().value(),
                    entry.get(FileSection.VALUE),
                    true));
        }
        return fields;
    }

    private List<EntryField> fields(List<Component> components, String prefix, Map<String, Object> entry) {
        return components.stream()
                .map(c -> field(c, prefix + c.key(), entry.get(c.key())))
                .toList();
    }

    private EntryField field(Component c, String name, @Nullable Object value) {
        String label = c.field().value();
        Type type = c.optional() ? Component.held((ParameterizedType) c.type()) : c.type();
        if (type instanceof Class<?> plain) {
            return plain.isRecord()
                    ? new EntryField(
                            name,
                            label,
                            Widget.GROUP,
                            "",
                            List.of(),
                            "",
                            List.of(fields(Component.of(plain), name + ".", map(value))))
                    : scalar(c, plain, name, label, value, c.required());
        }
        ParameterizedType held = (ParameterizedType) type;
        Type inner = Component.held(held);
        if (held.getRawType() == Map.class) {
            return groups(c, name, pairs(value), (prefix, one) -> behind(c, prefix, one));
        }
        if (inner instanceof Class<?> record && record.isRecord()) {
            List<Map<String, Object>> there = value instanceof List<?> all
                    ? all.stream().map(EntryForm::map).toList()
                    : List.of();
            return groups(c, name, there, (prefix, one) -> fields(Component.of(record), prefix, one));
        }
        return several(c, inner, name, value);
    }

    /** What stands behind each key, with the key in it. */
    private static List<Map<String, Object>> pairs(@Nullable Object value) {
        List<Map<String, Object>> pairs = new ArrayList<>();
        map(value).forEach((key, held) -> {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put(FileSection.KEY, key);
            if (held instanceof Map<?, ?>) {
                one.putAll(map(held));
            } else {
                one.put(FileSection.VALUE, held);
            }
            pairs.add(one);
        });
        return pairs;
    }

    private interface Inner {
        List<EntryField> fields(String prefix, Map<String, Object> one);
    }

    private static EntryField groups(Component c, String name, List<Map<String, Object>> there, Inner inner) {
        List<List<EntryField>> groups = new ArrayList<>();
        for (int i = 0; i <= there.size(); i++) {
            groups.add(inner.fields(name + "." + i + ".", i < there.size() ? there.get(i) : Map.of()));
        }
        return new EntryField(name, c.field().value(), Widget.GROUPS, "", List.of(), "", groups);
    }

    private EntryField several(Component c, Type inner, String name, @Nullable Object value) {
        String label = c.field().value();
        if (inner == Double.class && c.kind() != Kind.NUMBER) {
            return new EntryField(name, label, Widget.LINE, text(value), List.of(), row(c), List.of());
        }
        List<Option> options = inner instanceof Class<?> choice && choice.isEnum()
                ? words(choice)
                : inner == String.class ? options(c) : List.of();
        List<?> there = value instanceof List<?> all ? all : List.of();
        if (!options.isEmpty() && options.size() <= MOST_BOXES) {
            return new EntryField(
                    name, label, Widget.SOME, lines(there), chosen(options, lines(there), false), "", List.of());
        }
        boolean names = !c.field().refersTo().isEmpty() && inner == String.class;
        boolean rows = inner instanceof ParameterizedType;
        String remark = names
                ? "by id, with commas between"
                : rows && c.kind() != Kind.NUMBER ? row(c) + "; one in each line" : "one in each line";
        String text = names ? String.join(", ", texts(there)) : rows ? rows(there) : lines(there);
        return new EntryField(name, label, names ? Widget.LINE : Widget.LINES, text, options, remark, List.of());
    }

    private String row(Component c) {
        return "numbers with blanks between, in " + TypedEntry.symbol(c.kind(), units);
    }

    private static String rows(List<?> there) {
        return there.stream()
                .map(one -> one instanceof List<?> inner ? String.join(", ", texts(inner)) : text(one))
                .collect(Collectors.joining("\n"));
    }

    private EntryField scalar(
            Component c, Class<?> type, String name, String label, @Nullable Object value, boolean needed) {
        String typed = text(value);
        if (c.key().equals(Origin.KEY)) {
            List<Option> sources = new ArrayList<>(List.of(new Option("", "not said")));
            Arrays.stream(Origin.Source.values())
                    .forEach(source -> sources.add(new Option(source.written(), source.words())));
            return new EntryField(name, label, Widget.ORIGIN, typed, sources, "", List.of());
        }
        if (type == boolean.class) {
            String now = typed.isEmpty() ? c.field().absent() : typed;
            return new EntryField(name, label, Widget.YES, now, List.of(), "", List.of());
        }
        if (type.isEnum()) {
            String now = typed.isEmpty() && !needed ? c.field().absent().toLowerCase(Locale.ROOT) : typed;
            return new EntryField(name, label, Widget.ONE, now, chosen(words(type), now, needed), "", List.of());
        }
        List<Option> options = type == String.class ? options(c) : List.of();
        if (!options.isEmpty()) {
            return new EntryField(name, label, Widget.ONE, typed, chosen(options, typed, true), "", List.of());
        }
        boolean number = type == double.class || type == Double.class;
        String remark = number && c.kind() != Kind.NUMBER
                ? "a bare number is in " + TypedEntry.symbol(c.kind(), units)
                : type == Quantity.class ? "number and unit" : "";
        String absent = needed || c.required() ? "" : c.field().absent();
        if (remark.isEmpty() && !absent.isEmpty() && type != String.class) {
            remark = absent + " where nothing is typed";
        }
        boolean large = type == String.class && typed.length() > LONG_TEXT;
        return new EntryField(name, label, large ? Widget.LINES : Widget.LINE, typed, List.of(), remark, List.of());
    }

    private static List<Option> words(Class<?> choice) {
        return UnitTree.words(choice).stream()
                .map(word -> new Option(word, word.replace('_', ' ')))
                .toList();
    }

    /** What a key can refer to, by id and name; empty for free text. */
    private List<Option> options(Component c) {
        return c.field().refersTo().isEmpty()
                ? List.of()
                : FileSection.find(c.field().refersTo()).map(this::options).orElse(List.of());
    }

    private List<Option> options(FileSection section) {
        Map<String, Option> all = new LinkedHashMap<>();
        for (Map<String, Object> one : section.entries(tree)) {
            String id = section.named(one);
            all.putIfAbsent(id, new Option(id, (id + "  " + said(section, one)).strip()));
        }
        return List.copyOf(all.values());
    }

    /** What an entry says of itself in words: the first text after its id. */
    static String said(FileSection section, Map<String, Object> entry) {
        return section.keys().stream()
                .filter(c -> c.type() == String.class && !c.key().equals("id"))
                .findFirst()
                .map(c -> text(entry.get(c.key())))
                .orElse(text(entry.get(FileSection.VALUE)));
    }

    /** The options with those that are chosen among them, and one for nothing. */
    private static List<Option> chosen(List<Option> options, String chosen, boolean nothing) {
        List<Option> all = new ArrayList<>();
        if (nothing) {
            all.add(new Option("", "-"));
        }
        all.addAll(options);
        Set<String> known = options.stream().map(Option::value).collect(Collectors.toSet());
        Arrays.stream(chosen.split("\n"))
                .filter(one -> !one.isBlank() && !known.contains(one))
                .forEach(one -> all.add(new Option(one, one)));
        return all;
    }

    private static List<String> texts(List<?> all) {
        return all.stream().map(EntryForm::text).toList();
    }

    private static String lines(List<?> all) {
        return String.join("\n", texts(all));
    }

    private static String text(@Nullable Object value) {
        return value == null ? "" : value.toString();
    }

    private static Map<String, Object> map(@Nullable Object value) {
        return value instanceof Map<?, ?> ? TypeParts.map(value) : Map.of();
    }
}
