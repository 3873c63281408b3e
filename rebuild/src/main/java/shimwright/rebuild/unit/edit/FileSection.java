package shimwright.rebuild.unit.edit;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import shimwright.rebuild.unit.model.Component;
import shimwright.rebuild.unit.model.Section;
import shimwright.rebuild.unit.model.UnitType;

/**
 * A section of a unit file that is edited entry by entry: one of its lists, one of its sets of keys and values, or all that stands
 * once, which is one entry.
 *
 * @param name as in addresses: the key of the list
 * @param path the key in which the list stands; empty where it stands by itself
 * @param form how its entries stand there
 * @param component the key
 * @param entry record of an entry; null where the entry is a single value
 */
public record FileSection(
        String name,
        String path,
        Shape form,
        Component component,
        @Nullable Class<?> entry) {
    /** The section of all that stands once. */
    public static final String ONCE = "unit";

    /** Key under which an entry of a set of keys and values names itself, and under which a single value stands. */
    public static final String KEY = "key";

    static final String VALUE = "value";

    /** Key under which a further entry may say at which step it belongs, where steps name such entries. */
    static final String STEP = "step";

    private static final Map<String, String> NAMED_BY_STEPS = Map.of(
            "items", "installs",
            "fasteners", "fasteners",
            "consumables", "consumables",
            "hold_points", "hold",
            "windows", "windows");

    private static final String DRAWING = "section";

    /** What stands once in the drawing. */
    private static final List<Component> SCHEME = Component.of(Section.class).stream()
            .filter(c -> c.type() instanceof Class<?>)
            .toList();

    private static final List<FileSection> ALL = all(UnitType.class, "");

    /** How the entries of a section stand in the file. */
    public enum Shape {
        /** One after another. */
        LIST,
        /** Each behind its key. */
        KEYED,
        /** There is one, whose keys are those of the file that hold one value. */
        SINGLE
    }

    /** All sections in the order of the file, what stands once first. */
    public static List<FileSection> all() {
        return ALL;
    }

    /** The section of that name. */
    public static Optional<FileSection> find(String name) {
        return ALL.stream().filter(section -> section.name().equals(name)).findFirst();
    }

    private static List<FileSection> all(Class<?> record, String path) {
        List<FileSection> all = new ArrayList<>();
        for (Component c : Component.of(record)) {
            if (path.isEmpty() && all.isEmpty()) {
                all.add(new FileSection(ONCE, "", Shape.SINGLE, c, null));
            }
            if (c.type() == Section.class) {
                all.addAll(all(Section.class, c.key()));
            } else {
                of(c, path).ifPresent(all::add);
            }
        }
        return List.copyOf(all);
    }

    private static Optional<FileSection> of(Component c, String path) {
        if (!(c.type() instanceof ParameterizedType type)) {
            return Optional.empty();
        }
        Type held = Component.held(type);
        @Nullable Class<?> record = held instanceof Class<?> plain && plain.isRecord() ? plain : null;
        if (type.getRawType() == Map.class) {
            return Optional.of(new FileSection(c.key(), path, Shape.KEYED, c, record));
        }
        return record == null ? Optional.empty() : Optional.of(new FileSection(c.key(), path, Shape.LIST, c, record));
    }

    /** The key of a step that names entries of this section; empty where none does. */
    Optional<String> namedBy() {
        return Optional.ofNullable(NAMED_BY_STEPS.get(name));
    }

    /** True where the file may be without any entry of it. */
    public boolean single() {
        return form == Shape.SINGLE;
    }

    /** What it is called in a sentence: its key in words. */
    public String title() {
        return single() ? "what it is" : name.replace('_', ' ');
    }

    /** What it is called over its page. */
    public String heading() {
        String words = title();
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** What it holds, as the file's description says it. */
    public String about() {
        return single()
                ? "name, weight, oil and all else that there is once"
                : component.field().value();
    }

    /** The keys of its entries, each with what it means; of a single value behind a key that of the section. */
    public List<Component> keys() {
        if (single()) {
            return Stream.concat(Component.of(UnitType.class).stream(), SCHEME.stream())
                    .filter(c -> ALL.stream()
                            .noneMatch(section -> section.component().equals(c) && !section.single()))
                    .filter(c -> c.type() != Section.class
                            && !c.key().equals("format")
                            && !c.key().equals("id"))
                    .toList();
        }
        return entry == null ? List.of() : Component.of(entry);
    }

    /** The addresses of its entries in order: what each names itself by; of several of one name the later with their number. */
    public List<String> ids(Map<String, Object> tree) {
        List<String> ids = new ArrayList<>();
        for (Map<String, Object> one : entries(tree)) {
            ids.add(TypeParts.counted(named(one), ids));
        }
        return ids;
    }

    /** What an entry names itself by: its id, or the first of its keys. */
    public String named(Map<String, Object> entry) {
        if (single()) {
            return ONCE;
        }
        return entry.getOrDefault(form == Shape.KEYED ? KEY : keys().get(0).key(), "")
                .toString();
    }

    /** Its entries in order, each with its own keys; the key behind which it stands under {@link #KEY}. */
    public List<Map<String, Object>> entries(Map<String, Object> tree) {
        Object there = path.isEmpty()
                ? tree.get(name)
                : TypeParts.map(tree.getOrDefault(path, Map.of())).get(name);
        List<Map<String, Object>> entries = new ArrayList<>();
        if (single()) {
            Map<String, Object> one = new LinkedHashMap<>();
            Map<String, Object> drawn = TypeParts.map(tree.getOrDefault(DRAWING, Map.of()));
            for (Component c : keys()) {
                Object value = SCHEME.contains(c) ? drawn.get(c.key()) : tree.get(c.key());
                if (value != null) {
                    one.put(c.key(), value);
                }
            }
            entries.add(one);
        } else if (there instanceof List<?> list) {
            list.forEach(one -> entries.add(TypeParts.map(one)));
        } else if (there instanceof Map<?, ?> map) {
            map.forEach((key, value) -> {
                Map<String, Object> one = new LinkedHashMap<>();
                one.put(KEY, key.toString());
                if (value instanceof Map<?, ?>) {
                    one.putAll(TypeParts.map(value));
                } else {
                    one.put(VALUE, value);
                }
                entries.add(one);
            });
        }
        return entries;
    }

    /** Where an entry stands in the file, as the key of a problem in it begins. */
    String prefix(int index, Map<String, Object> entry) {
        String before = path.isEmpty() ? "" : path + ".";
        return switch (form) {
            case LIST -> before + name + "[" + index + "]";
            case KEYED -> before + name + "." + named(entry);
            case SINGLE -> "";
        };
    }

    /** Puts these entries in the place of all that were there. */
    void put(Map<String, Object> tree, List<Map<String, Object>> entries) {
        switch (form) {
            case SINGLE -> {
                Map<String, Object> drawn = TypeParts.map(tree.getOrDefault(DRAWING, Map.of()));
                for (Component c : keys()) {
                    Map<String, Object> at = SCHEME.contains(c) ? drawn : tree;
                    at.remove(c.key());
                    if (entries.get(0).containsKey(c.key())) {
                        at.put(c.key(), entries.get(0).get(c.key()));
                    }
                }
                tree.put(DRAWING, drawn);
            }
            case LIST -> inner(tree).put(name, entries);
            case KEYED -> {
                Map<String, Object> keyed = new LinkedHashMap<>();
                for (Map<String, Object> one : entries) {
                    Map<String, Object> rest = new LinkedHashMap<>(one);
                    rest.remove(KEY);
                    keyed.put(named(one), entry == null ? rest.getOrDefault(VALUE, "") : rest);
                }
                inner(tree).put(name, keyed);
            }
            default -> throw new IllegalStateException("unknown form " + form);
        }
    }

    @SuppressWarnings("unchecked") // the trees of UnitTree have texts as keys
    private Map<String, Object> inner(Map<String, Object> tree) {
        return path.isEmpty() ? tree : (Map<String, Object>) tree.computeIfAbsent(path, none -> new LinkedHashMap<>());
    }
}
