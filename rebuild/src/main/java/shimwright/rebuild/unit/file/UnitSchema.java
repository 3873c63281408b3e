package shimwright.rebuild.unit.file;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.MeasureUnit;
import shimwright.mechanics.quantity.Units;
import shimwright.rebuild.unit.model.Component;
import shimwright.rebuild.unit.model.Quantity;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.unit.sense.HeadSense;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.json.JsonMapper;

/**
 * The JSON Schema (draft 2020-12) of the unit file, made from the same records that the reader reads by. It checks form:
 * keys, types, words and that a quantity has a unit; ids, directions and sizes are the reader's to judge.
 */
public final class UnitSchema {
    private static final String DIGITS = "[+-]?([0-9]+([.,][0-9]*)?|[.,][0-9]+)([eE][+-]?[0-9]{1,3})?";
    private static final String UNIT = "[^0-9\\s.,+()-][^()]*";
    private static final String QUANTITY = "^\\s*" + DIGITS + "\\s*" + UNIT + "(\\([^()]+\\)\\s*)?$";
    private static final String STATED = "^\\s*" + DIGITS + "\\s*(" + UNIT + ")?(\\([^()]+\\)\\s*)?$";
    private static final String ROW = "^\\s*" + DIGITS + "(\\s+" + DIGITS + ")*\\s+" + UNIT + "$";

    private final Map<String, Object> definitions = new TreeMap<>();

    private UnitSchema() {}

    /** The schema as indented JSON text that ends in a line end. */
    public static String json() {
        UnitSchema schema = new UnitSchema();
        Map<String, Object> root = new LinkedHashMap<>();
        root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        root.put("title", "Unit file");
        root.put(
                "description",
                "One model of gearbox with its variants. A quantity is a number with its unit: 0.02 mm, or the same in"
                        + " two units that must agree: 0.50 mm (0.0197 in). Several in a row share the unit at the end:"
                        + " 92 115 mm.");
        root.putAll(schema.object(UnitType.class));
        root.put("$defs", schema.definitions);
        DefaultIndenter indent = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer =
                new DefaultPrettyPrinter().withObjectIndenter(indent).withArrayIndenter(indent);
        return JsonMapper.shared().writer().with(printer).writeValueAsString(root) + "\n";
    }

    private Map<String, Object> object(Class<?> record) {
        Map<String, Object> properties = new LinkedHashMap<>();
        for (Component component : Component.of(record)) {
            properties.put(component.key(), property(component));
            if (!component.field().formerly().isEmpty()) {
                properties.put(component.field().formerly(), former(component));
            }
        }
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("type", "object");
        object.put(
                "required",
                Component.of(record).stream()
                        .filter(Component::required)
                        .map(Component::key)
                        .toList());
        object.put("additionalProperties", false);
        object.put("properties", properties);
        return object;
    }

    private Map<String, Object> property(Component component) {
        Map<String, Object> property = new LinkedHashMap<>();
        property.put("description", description(component));
        if (component.key().equals("format")) {
            property.put("const", HeadSense.FORMAT);
            return property;
        }
        property.putAll(value(component, component.type()));
        Object absent = component.required() ? "" : standard(component);
        if (!absent.equals("")) {
            property.put("default", absent);
        }
        return property;
    }

    /** An older name of a key: a list, or one value for a list of one. */
    private Map<String, Object> former(Component component) {
        Map<String, Object> property = ordered("description", "older name of " + component.key());
        property.put("deprecated", true);
        property.put("anyOf", List.of(value(component, component.type()), value(component, String.class)));
        return property;
    }

    private static String description(Component component) {
        String list = component.field().refersTo().replace('_', ' ');
        return component.field().value() + (list.isEmpty() ? "" : ". By id, of the " + list);
    }

    private static Object standard(Component component) {
        String text = component.field().absent();
        if (component.type() == boolean.class) {
            return Boolean.valueOf(text);
        }
        if (component.type() == int.class) {
            return Integer.valueOf(text);
        }
        boolean number = component.type() == double.class && component.kind() == Kind.NUMBER;
        return number ? Double.valueOf(text) : component.type() instanceof Class<?> ? text : "";
    }

    private Map<String, Object> value(Component component, Type type) {
        if (type instanceof ParameterizedType held && component.optional()) {
            return value(component, Component.held(held));
        }
        if (type instanceof ParameterizedType held) {
            return held.getRawType() == Map.class ? map(component, held) : list(component, held);
        }
        Class<?> plain = (Class<?>) type;
        if (plain == String.class) {
            return named("text", ordered("type", List.of("string", "number", "boolean")));
        }
        if (plain == boolean.class) {
            return ordered("type", "boolean");
        }
        if (plain == int.class || plain == Integer.class) {
            return ordered("type", "integer");
        }
        if (plain == Quantity.class) {
            return named("stated_quantity", stated());
        }
        if (plain.isEnum()) {
            return ordered(
                    "enum",
                    Arrays.stream(plain.getEnumConstants())
                            .map(AbsentValues::written)
                            .toList());
        }
        if (plain.isRecord()) {
            return reference(plain);
        }
        return component.kind() == Kind.NUMBER
                ? ordered("type", "number")
                : quantity("quantity_", component.kind(), QUANTITY);
    }

    /** Of which kind it is, another key of the same record says; so the unit is left to the reader. */
    private static Map<String, Object> stated() {
        Map<String, Object> text = ordered("type", List.of("string", "number"));
        text.put("pattern", STATED);
        return text;
    }

    private Map<String, Object> map(Component component, ParameterizedType type) {
        Map<String, Object> map = ordered("type", "object");
        map.put("additionalProperties", value(component, Component.held(type)));
        return map;
    }

    private Map<String, Object> list(Component component, ParameterizedType type) {
        Type held = Component.held(type);
        if (held == Double.class && component.kind() != Kind.NUMBER) {
            return quantity("row_", component.kind(), ROW);
        }
        Map<String, Object> list = ordered("type", "array");
        list.put("items", value(component, held));
        if (type.getRawType() == Set.class) {
            list.put("uniqueItems", true);
        }
        return list;
    }

    private Map<String, Object> reference(Class<?> record) {
        String name = Component.snake(record.getSimpleName());
        if (!definitions.containsKey(name)) {
            definitions.put(name, Map.of());
            definitions.put(name, object(record));
        }
        return ordered("$ref", "#/$defs/" + name);
    }

    private Map<String, Object> quantity(String prefix, Kind kind, String pattern) {
        String units = Units.of(kind).stream().map(MeasureUnit::symbol).collect(Collectors.joining(", "));
        Map<String, Object> text = ordered("type", "string");
        text.put("pattern", pattern);
        text.put("$comment", "units: " + units);
        return named(prefix + kind.name().toLowerCase(Locale.ROOT), text);
    }

    private Map<String, Object> named(String name, Map<String, Object> definition) {
        definitions.putIfAbsent(name, definition);
        return ordered("$ref", "#/$defs/" + name);
    }

    private static Map<String, Object> ordered(String key, Object value) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put(key, value);
        return one;
    }
}
