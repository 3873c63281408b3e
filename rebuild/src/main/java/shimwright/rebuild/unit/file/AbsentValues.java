package shimwright.rebuild.unit.file;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.unit.fault.QuantityText;
import shimwright.rebuild.unit.model.Component;

/** The value of a key that is absent, and a stand-in for one that could not be read. */
final class AbsentValues {
    /** As many as the model has keys that differ in it; read when first asked for. */
    private static final Map<Absent, Object> KNOWN = new ConcurrentHashMap<>();

    private record Absent(Class<?> type, Kind kind, String text) {}

    private static final Map<Class<?>, List<Object>> BY_RECORD = new ConcurrentHashMap<>();

    private static final Map<Class<?>, Map<String, Object>> CONSTANTS = new ConcurrentHashMap<>();

    private AbsentValues() {}

    /** The values of all keys of a record where they are absent, in the order of its components; of a required one a stand-in. */
    static List<Object> of(Class<?> record) {
        List<Object> known = BY_RECORD.get(record);
        if (known == null) {
            known = Component.of(record).stream()
                    .map(component -> component.required() ? blank(component.type()) : absent(component))
                    .toList();
            BY_RECORD.put(record, known);
        }
        return known;
    }

    /** The value that the annotation gives to an absent key. */
    static Object absent(Component component) {
        String text = component.field().absent();
        if (!(component.type() instanceof Class<?> type) || type == String.class) {
            return component.type() == String.class ? text : blank(component.type());
        }
        return KNOWN.computeIfAbsent(new Absent(type, component.kind(), text), key -> read(component, type, text));
    }

    private static Object read(Component component, Class<?> type, String text) {
        if (type.isEnum()) {
            return constant(type, text).orElseThrow();
        }
        if (type == boolean.class) {
            return Boolean.valueOf(text);
        }
        if (type == int.class) {
            return Integer.valueOf(text);
        }
        return component.kind() == Kind.NUMBER
                ? Double.valueOf(text)
                : QuantityText.one(text, component.kind()).orElseThrow();
    }

    /** A value of the type that says nothing; what carries it is never handed out. */
    static Object blank(Type type) {
        if (type instanceof ParameterizedType held && held.getRawType() == Optional.class) {
            return Optional.empty();
        }
        if (type instanceof ParameterizedType held) {
            return held.getRawType() == Map.class ? Map.of() : held.getRawType() == Set.class ? Set.of() : List.of();
        }
        Class<?> plain = (Class<?>) type;
        if (plain == String.class) {
            return "";
        }
        if (plain == boolean.class) {
            return false;
        }
        if (plain == int.class || plain == Integer.class) {
            return 0;
        }
        if (plain == double.class || plain == Double.class) {
            return 0.0;
        }
        if (plain.isEnum()) {
            return plain.getEnumConstants()[0];
        }
        Object[] values = Component.of(plain).stream().map(c -> blank(c.type())).toArray();
        return Component.make(plain, values);
    }

    /** The enum constant written in small letters, with blanks, hyphens or underscores between words. */
    static Optional<Object> constant(Class<?> type, String text) {
        Map<String, Object> constants = CONSTANTS.computeIfAbsent(type, AbsentValues::constants);
        Object exact = constants.get(text);
        return Optional.ofNullable(
                exact != null
                        ? exact
                        : constants.get(text.strip().toLowerCase(Locale.ROOT).replaceAll("[ -]+", "_")));
    }

    private static Map<String, Object> constants(Class<?> type) {
        Map<String, Object> constants = new HashMap<>();
        for (Object constant : type.getEnumConstants()) {
            constants.put(written(constant), constant);
        }
        return constants;
    }

    /** An enum constant as the file writes it. */
    static String written(Object constant) {
        return ((Enum<?>) constant).name().toLowerCase(Locale.ROOT);
    }
}
