package shimwright.rebuild.job;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Values of any record of the log, made up from its components. */
final class RecordSamples {
    private static final String[] TEXTS = {
        "", "0.24 / 0.32", "käfig \"a\"\n", "µ 😀", "a\\b", "null", "  ", "x".repeat(300)
    };
    private static final double[] NUMBERS = {0, -0.0, 1e-300, -0.00024, 52.07e-3, 1e9, Double.MIN_VALUE, 1.0 / 3};

    private RecordSamples() {}

    static <T> T of(Class<T> record, Random random) {
        RecordComponent[] components = record.getRecordComponents();
        Object[] values = new Object[components.length];
        Class<?>[] types = new Class<?>[components.length];
        for (int i = 0; i < components.length; i++) {
            types[i] = components[i].getType();
            values[i] = value(components[i].getGenericType(), random);
        }
        try {
            return record.getDeclaredConstructor(types).newInstance(values);
        } catch (ReflectiveOperationException broken) {
            throw new IllegalStateException(record + " cannot be made", broken);
        }
    }

    private static Object value(Type type, Random random) {
        if (type instanceof ParameterizedType generic) {
            return generic.getRawType() == Map.class ? map(generic, random) : list(generic, random);
        }
        if (type == String.class) {
            return TEXTS[random.nextInt(TEXTS.length)];
        }
        if (type == double.class || type == Double.class) {
            return NUMBERS[random.nextInt(NUMBERS.length)];
        }
        if (type == long.class) {
            return random.nextLong();
        }
        if (type == int.class) {
            return random.nextInt();
        }
        if (type == LocalDate.class) {
            return LocalDate.ofEpochDay(random.nextInt(40_000) - 10_000);
        }
        if (type == boolean.class) {
            return random.nextBoolean();
        }
        Class<?> plain = (Class<?>) type;
        if (plain.isEnum()) {
            Object[] constants = plain.getEnumConstants();
            return constants[random.nextInt(constants.length)];
        }
        return of(plain, random);
    }

    private static List<Object> list(ParameterizedType type, Random random) {
        List<Object> list = new ArrayList<>();
        for (int i = random.nextInt(4); i > 0; i--) {
            list.add(value(type.getActualTypeArguments()[0], random));
        }
        return list;
    }

    private static Map<Object, Object> map(ParameterizedType type, Random random) {
        Map<Object, Object> map = new LinkedHashMap<>();
        for (int i = random.nextInt(4); i > 0; i--) {
            map.put(
                    value(type.getActualTypeArguments()[0], random) + "-" + i,
                    value(type.getActualTypeArguments()[1], random));
        }
        return map;
    }
}
