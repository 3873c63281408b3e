package shimwright.rebuild.unit.edit;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.unit.model.Component;
import shimwright.rebuild.unit.model.Origin;
import shimwright.rebuild.unit.model.Quantity;
import shimwright.rebuild.unit.model.UnitType.CheckKind;

/** What was typed in the form of an entry, as the entry's keys and values; nothing is judged here, the file's reader does that. */
public final class TypedEntry {
    /** Ends the name of the box that takes a repeated group away. */
    public static final String GONE = "gone";

    private static final Pattern BARE = Pattern.compile("[+-]?[0-9]*[.,]?[0-9]+(\\s+[+-]?[0-9]*[.,]?[0-9]+)*");
    private static final Pattern INDEX = Pattern.compile("\\[(\\d+)]");

    private final Map<String, String> typed;
    private final UnitSystem units;

    private TypedEntry(Map<String, String> typed, UnitSystem units) {
        this.typed = typed;
        this.units = units;
    }

    /**
     * The entry that was typed.
     *
     * @param section in which it stands
     * @param typed by the names of the fields of its form
     * @param units in which a bare number is meant
     */
    public static Map<String, Object> of(FileSection section, Map<String, String> typed, UnitSystem units) {
        TypedEntry entry = new TypedEntry(typed, units);
        Map<String, Object> said = section.form() == FileSection.Shape.KEYED
                ? entry.behind(section.component(), "", true)
                : entry.record(section.keys(), "", true);
        if (section.namedBy().isPresent() && !entry.raw(FileSection.STEP).isEmpty()) {
            said.put(FileSection.STEP, entry.raw(FileSection.STEP));
        }
        return said;
    }

    /** The unit in which a bare number of a kind is meant, as typed on any keyboard. */
    static String symbol(Kind kind, UnitSystem units) {
        return kind == Kind.EXPANSION && units == UnitSystem.METRIC
                ? "um/m/K"
                : units.display(kind).unit().symbol().replace("·", ".").replace("°", "deg");
    }

    static String words(String key) {
        return key.replace('_', ' ');
    }

    /**
     * A fault of an entry with the name of the field at which it stands as its key.
     *
     * @param fields of the form that shows the entry again
     */
    public static Refusal atField(Refusal fault, List<FormField> fields) {
        String name = INDEX.matcher(fault.key()).replaceAll(".$1");
        String found = found(name, fields);
        return fault.placed(found, fault.place());
    }

    private static String found(String name, List<FormField> fields) {
        for (FormField field : fields) {
            boolean at = name.equals(field.name()) || name.startsWith(field.name() + ".");
            if (at && field.groups().isEmpty()) {
                return field.name();
            }
            if (at) {
                String behind = keyed(name, field);
                for (List<FormField> group : field.groups()) {
                    String inner = found(behind, group);
                    if (!inner.isEmpty()) {
                        return inner;
                    }
                }
                return field.groups().get(0).stream()
                        .filter(one -> one.groups().isEmpty())
                        .map(FormField::name)
                        .findFirst()
                        .orElse("");
            }
        }
        return "";
    }

    /** A path behind a key, by the group that has that key. */
    private static String keyed(String name, FormField field) {
        String rest = name.substring(field.name().length()).replaceFirst("^\\.", "");
        for (int i = 0; i < field.groups().size(); i++) {
            FormField first = field.groups().get(i).get(0);
            boolean own = first.name().endsWith("." + FileSection.KEY)
                    && !first.value().isEmpty();
            if (own && (rest.equals(first.value()) || rest.startsWith(first.value() + "."))) {
                String inner = rest.substring(first.value().length());
                return field.name() + "." + i + (inner.isEmpty() ? "." + FileSection.VALUE : inner);
            }
        }
        return name;
    }

    private String raw(String name) {
        return typed.getOrDefault(name, "").strip();
    }

    private Map<String, Object> behind(Component map, String prefix, boolean needed) {
        Map<String, Object> entry = new LinkedHashMap<>();
        Type held = Component.held((ParameterizedType) map.type());
        if (held instanceof Class<?> plain && plain.isRecord()) {
            entry.putAll(record(
                    Component.of(plain),
                    prefix,
                    needed || !raw(prefix + FileSection.KEY).isEmpty()));
        } else {
            Object value = scalar(map, (Class<?>) held, prefix + FileSection.VALUE, prefix);
            boolean say = value != null && !value.toString().isEmpty();
            if (say || needed || !raw(prefix + FileSection.KEY).isEmpty()) {
                entry.put(FileSection.VALUE, value == null ? "" : value);
            }
        }
        if (!raw(prefix + FileSection.KEY).isEmpty() || !entry.isEmpty()) {
            entry.put(FileSection.KEY, raw(prefix + FileSection.KEY));
        }
        return entry;
    }

    /**
     * The values of a record.
     *
     * @param needed true where it is there in any case; else it is there where something in it was typed
     */
    private Map<String, Object> record(List<Component> keys, String prefix, boolean needed) {
        Map<String, Object> entry = new LinkedHashMap<>();
        for (Component c : keys) {
            Object value = value(c, prefix);
            if (value != null) {
                entry.put(c.key(), value);
            }
        }
        if (entry.isEmpty() && !needed) {
            return entry;
        }
        for (Component c : keys) {
            if (c.required() && !entry.containsKey(c.key())) {
                entry.put(c.key(), nothing(c));
            }
        }
        return entry;
    }

    /** What stands at a key that must be there and was left empty. */
    private static Object nothing(Component c) {
        if (c.type() instanceof ParameterizedType held
                && !(Component.held(held) == Double.class && c.kind() != Kind.NUMBER)) {
            return held.getRawType() == Map.class ? Map.of() : List.of();
        }
        return "";
    }

    private @Nullable Object value(Component c, String prefix) {
        String name = prefix + c.key();
        Type type = c.optional() ? Component.held((ParameterizedType) c.type()) : c.type();
        if (type instanceof Class<?> plain && plain.isRecord()) {
            Map<String, Object> inner = record(Component.of(plain), name + ".", c.required());
            return inner.isEmpty() ? null : inner;
        }
        if (type instanceof Class<?> plain) {
            return scalar(c, plain, name, prefix);
        }
        ParameterizedType held = (ParameterizedType) type;
        Type inner = Component.held(held);
        if (held.getRawType() == Map.class) {
            Map<String, Object> map = new LinkedHashMap<>();
            for (int i : indices(name)) {
                Map<String, Object> one = behind(c, name + "." + i + ".", false);
                if (!one.isEmpty()) {
                    String key = one.remove(FileSection.KEY) + "";
                    map.put(key, inner instanceof Class<?> r && r.isRecord() ? one : one.get(FileSection.VALUE));
                }
            }
            return map.isEmpty() ? null : map;
        }
        if (inner instanceof Class<?> record && record.isRecord()) {
            List<Object> all = new ArrayList<>();
            for (int i : indices(name)) {
                Map<String, Object> one = record(Component.of(record), name + "." + i + ".", false);
                if (!one.isEmpty()) {
                    all.add(one);
                }
            }
            return all.isEmpty() ? null : all;
        }
        return several(c, inner, name, prefix);
    }

    /** The numbers of the groups of a field that were sent and are not taken away. */
    private List<Integer> indices(String name) {
        TreeSet<Integer> indices = new TreeSet<>();
        for (String field : typed.keySet()) {
            if (field.startsWith(name + ".")) {
                String number = field.substring(name.length() + 1).replaceFirst("\\..*", "");
                if (number.matches("[0-9]{1,4}")) {
                    indices.add(Integer.valueOf(number));
                }
            }
        }
        indices.removeIf(i -> typed.containsKey(name + "." + i + "." + GONE));
        return List.copyOf(indices);
    }

    private @Nullable Object several(Component c, Type inner, String name, String prefix) {
        String text = raw(name).replace("\r\n", "\n");
        if (text.isEmpty()) {
            return null;
        }
        if (inner == Double.class && c.kind() != Kind.NUMBER) {
            return quantity(text, c.kind());
        }
        boolean words =
                !c.field().refersTo().isEmpty() || inner == Double.class || (inner instanceof Class<?> e && e.isEnum());
        List<Object> all = new ArrayList<>();
        for (String line : (inner instanceof Class<?> && words ? text.replace(',', '\n') : text).split("\n")) {
            if (!line.isBlank()) {
                all.add(inner == Quantity.class ? stated(c, line.strip(), prefix) : one(c, inner, line.strip()));
            }
        }
        return all.isEmpty() ? null : all;
    }

    private Object one(Component c, Type inner, String line) {
        if (!(inner instanceof ParameterizedType)) {
            return line;
        }
        return c.kind() == Kind.NUMBER
                ? Arrays.stream(line.split(",")).map(String::strip).toList()
                : quantity(line, c.kind());
    }

    private @Nullable Object scalar(Component c, Class<?> type, String name, String prefix) {
        String text = c.key().equals(Origin.KEY) && typed.containsKey(name + "1")
                ? Origin.text(raw(name + "1"), raw(name + "2"))
                : raw(name).replace("\r\n", "\n");
        if (type == boolean.class) {
            String said = typed.containsKey(name) ? "true" : "false";
            return said.equals(c.field().absent()) ? null : said;
        }
        if (text.isEmpty()) {
            return null;
        }
        if (type.isEnum()) {
            return text.equalsIgnoreCase(c.field().absent()) ? null : text;
        }
        if (type == Quantity.class) {
            return stated(c, text, prefix);
        }
        boolean number = type == double.class || type == Double.class;
        return number && c.kind() == Kind.NUMBER ? text.replace(',', '.') : number ? quantity(text, c.kind()) : text;
    }

    /** A quantity of the kind that another field of the record says. */
    private String stated(Component c, String text, String prefix) {
        String from = raw(prefix + c.field().kindFrom());
        return Arrays.stream(CheckKind.values())
                .filter(kind -> kind.name().equalsIgnoreCase(from) && kind != CheckKind.NONE)
                .findFirst()
                .map(kind -> quantity(text, kind.quantity()))
                .orElse(text);
    }

    /** A bare number, or a row of them, with the unit in which it is meant. */
    private String quantity(String text, Kind kind) {
        return kind != Kind.NUMBER && BARE.matcher(text).matches() ? text + " " + symbol(kind, units) : text;
    }
}
