package shimwright.rebuild.unit.model;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import shimwright.mechanics.quantity.Kind;

/**
 * One key of the unit file: a component of one of the model's records with what its annotation says.
 *
 * @param key as written in the file
 * @param field what it means
 * @param kind the kind of quantity of its numbers
 * @param type of its value
 * @param source the record's component
 */
public record Component(String key, Field field, Kind kind, Type type, RecordComponent source) {
    private static final Map<Class<?>, List<Component>> KNOWN = new ConcurrentHashMap<>();

    private static final Map<Class<?>, Constructor<?>> MAKERS = new ConcurrentHashMap<>();

    /** The keys of a record, in the order of the file. */
    public static List<Component> of(Class<?> record) {
        return KNOWN.computeIfAbsent(
                record,
                r -> Arrays.stream(r.getRecordComponents()).map(Component::of).toList());
    }

    private static Component of(RecordComponent source) {
        Field field = source.getAnnotation(Field.class);
        if (field == null) {
            throw new IllegalStateException(source + " has no @Field");
        }
        return new Component(snake(source.getName()), field, field.kind(), source.getGenericType(), source);
    }

    /** The same key with the kind of quantity that its record says. */
    public Component as(Kind said) {
        return new Component(key, field, said, type, source);
    }

    /** True where the value may be absent without a stand-in: an {@link Optional}. */
    public boolean optional() {
        return type instanceof ParameterizedType held && held.getRawType() == Optional.class;
    }

    public boolean required() {
        return field.absent().equals(Field.REQUIRED);
    }

    /** This component's value in a record. */
    public Object in(Record record) {
        try {
            return source.getAccessor().invoke(record);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException("cannot read " + source, e);
        }
    }

    /** A record of these values, one for each component. */
    public static <T> T make(Class<T> record, Object[] values) {
        try {
            return record.cast(MAKERS.computeIfAbsent(record, Component::maker).newInstance(values));
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot make " + record, e);
        }
    }

    private static Constructor<?> maker(Class<?> record) {
        Class<?>[] types = of(record).stream().map(c -> c.source().getType()).toArray(Class<?>[]::new);
        try {
            return record.getDeclaredConstructor(types);
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException("cannot make " + record, e);
        }
    }

    /** What a list or a map holds. */
    public static Type held(ParameterizedType type) {
        Type[] arguments = type.getActualTypeArguments();
        return arguments[arguments.length - 1];
    }

    /** The name as written in the file: {@code tellTales} is {@code tell_tales}. */
    public static String snake(String name) {
        return name.replaceAll("([a-z0-9])([A-Z])", "$1_$2").toLowerCase(Locale.ROOT);
    }

    /** A type's name in words: {@code HoldPoint} is {@code hold point}. */
    public static String words(Class<?> type) {
        return snake(type.getSimpleName()).replace('_', ' ');
    }
}
