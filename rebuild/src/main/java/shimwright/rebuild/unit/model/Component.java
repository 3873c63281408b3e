package shimwright.rebuild.unit.model;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import shimwright.mechanics.quantity.Kind;

/**
 * One key of the unit file: a component of one of the model's records with what its annotation says. The components of a
 * {@link FieldGroup} are keys of the record that has the group.
 *
 * @param key as written in the file
 * @param field what it means
 * @param kind the kind of quantity of its numbers
 * @param type of its value
 * @param path the component of the record; of each group in turn before it, where it stands in one
 */
public record Component(String key, Meaning field, Kind kind, Type type, List<RecordComponent> path) {
    /**
     * What the annotation of a key says, asked once: an annotation answers slowly.
     *
     * @param value one sentence for the person who writes the file
     * @param kindFrom the key that says which kind of quantity it is; may be empty
     * @param absent the value taken when the key is absent; {@link Field#REQUIRED} where it must be there
     * @param refersTo what list or map a text refers to; empty for free text
     * @param formerly an older name of the key; may be empty
     */
    public record Meaning(String value, String kindFrom, String absent, String refersTo, String formerly) {
        static Meaning of(Field field) {
            return new Meaning(field.value(), field.kindFrom(), field.absent(), field.refersTo(), field.formerly());
        }
    }

    private static final Map<Class<?>, List<Component>> KNOWN = new ConcurrentHashMap<>();

    private static final Map<Class<?>, Maker> MAKERS = new ConcurrentHashMap<>();

    private record Part(Class<?> type, boolean group) {}

    private record Maker(Constructor<?> constructor, List<Part> parts) {}

    /** The keys of a record, in the order of the file. */
    public static List<Component> of(Class<?> record) {
        return KNOWN.computeIfAbsent(record, r -> {
            List<Component> all = under(List.of(), r).toList();
            if (all.stream().map(Component::key).distinct().count() < all.size()) {
                throw new IllegalStateException(r + " has a key twice");
            }
            return all;
        });
    }

    private static Stream<Component> under(List<RecordComponent> path, Class<?> record) {
        return Arrays.stream(record.getRecordComponents()).flatMap(source -> {
            List<RecordComponent> longer =
                    Stream.concat(path.stream(), Stream.of(source)).toList();
            return group(source.getType()) ? under(longer, source.getType()) : Stream.of(of(source, longer));
        });
    }

    private static boolean group(Class<?> type) {
        return type.isAnnotationPresent(FieldGroup.class);
    }

    private static Component of(RecordComponent source, List<RecordComponent> path) {
        Field field = source.getAnnotation(Field.class);
        if (field == null) {
            throw new IllegalStateException(source + " has no @Field");
        }
        // asked often, and each time without another look at who asks
        path.forEach(part -> part.getAccessor().setAccessible(true));
        return new Component(snake(source.getName()), Meaning.of(field), field.kind(), source.getGenericType(), path);
    }

    /** The same key with the kind of quantity that its record says. */
    public Component as(Kind said) {
        return new Component(key, field, said, type, path);
    }

    /** True where the value may be absent without a stand-in: an {@link Optional}. */
    public boolean optional() {
        return type instanceof ParameterizedType held && held.getRawType() == Optional.class;
    }

    /** True where the key must be written in the file. */
    public boolean required() {
        return field.absent().equals(Field.REQUIRED);
    }

    /** This component's value in a record. */
    public Object in(Record record) {
        Object value = record;
        for (RecordComponent part : path) {
            try {
                value = part.getAccessor().invoke(value);
            } catch (IllegalAccessException | InvocationTargetException e) {
                throw new IllegalStateException("cannot read " + part, e);
            }
        }
        return value;
    }

    /** A record of these values, one for each of its keys in the order of {@link #of}. */
    public static <T> T make(Class<T> record, Object[] values) {
        if (values.length != of(record).size()) {
            throw new IllegalArgumentException(record + " has not " + values.length + " keys");
        }
        return record.cast(made(record, Arrays.asList(values).iterator()));
    }

    /**
     * The same record with another value under one of its keys.
     *
     * @param key as written in the file; one that the record does not have is a bug and throws
     */
    public static <T extends Record> T with(T record, String key, Object value) {
        List<Component> all = of(record.getClass());
        if (all.stream().noneMatch(one -> one.key().equals(key))) {
            throw new IllegalArgumentException(record.getClass() + " has no " + key);
        }
        Object[] values = all.stream()
                .map(one -> one.key().equals(key) ? value : one.in(record))
                .toArray();
        @SuppressWarnings("unchecked") // the class of a T
        Class<T> type = (Class<T>) record.getClass();
        return make(type, values);
    }

    private static Object made(Class<?> record, Iterator<Object> values) {
        Maker maker = MAKERS.computeIfAbsent(record, Component::maker);
        Object[] given = new Object[maker.parts().size()];
        for (int i = 0; i < given.length; i++) {
            Part part = maker.parts().get(i);
            given[i] = part.group() ? made(part.type(), values) : values.next();
        }
        try {
            return maker.constructor().newInstance(given);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot make " + record, e);
        }
    }

    private static Maker maker(Class<?> record) {
        Class<?>[] types = Arrays.stream(record.getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new);
        try {
            return new Maker(
                    record.getDeclaredConstructor(types),
                    Arrays.stream(types).map(t -> new Part(t, group(t))).toList());
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
