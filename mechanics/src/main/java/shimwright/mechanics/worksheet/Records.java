package shimwright.mechanics.worksheet;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Builds records and reads or replaces a value deep inside them, by path. */
final class Records {
    private Records() {}

    static Object build(Class<?> type, @Nullable Object[] values) {
        Class<?>[] types = Arrays.stream(type.getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new);
        try {
            Constructor<?> constructor = type.getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return constructor.newInstance(values);
        } catch (InvocationTargetException thrown) {
            throw new IllegalStateException("the constructor of " + type.getSimpleName() + " threw", thrown.getCause());
        } catch (ReflectiveOperationException broken) {
            throw new IllegalStateException("cannot build " + type.getSimpleName(), broken);
        }
    }

    static @Nullable Object get(Object record, String component) {
        for (RecordComponent candidate : record.getClass().getRecordComponents()) {
            if (candidate.getName().equals(component)) {
                return read(record, candidate);
            }
        }
        throw new IllegalArgumentException(record.getClass().getSimpleName() + " has no " + component);
    }

    private static @Nullable Object read(Object record, RecordComponent component) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException broken) {
            throw new IllegalStateException("cannot read " + component.getName(), broken);
        }
    }

    /** The number at a path such as {@code gauge.step} or {@code rounds[2][0]}. */
    static double number(Object root, String path) {
        Object at = root;
        for (Object step : steps(path)) {
            Object next = step instanceof Integer index ? ((List<?>) at).get(index) : get(at, step.toString());
            if (next == null) {
                throw new IllegalArgumentException("nothing at " + path);
            }
            at = next;
        }
        return (Double) at;
    }

    /** The same record with another number at a path. */
    static <T> T with(T root, String path, double value, Class<T> type) {
        return type.cast(replaced(root, steps(path), value));
    }

    private static Object replaced(Object at, List<Object> steps, double value) {
        if (steps.isEmpty()) {
            return value;
        }
        List<Object> rest = steps.subList(1, steps.size());
        if (steps.get(0) instanceof Integer index) {
            List<Object> copy = new ArrayList<>((List<?>) at);
            copy.set(index, replaced(copy.get(index), rest, value));
            return List.copyOf(copy);
        }
        String name = steps.get(0).toString();
        RecordComponent[] components = at.getClass().getRecordComponents();
        @Nullable Object[] values = new @Nullable Object[components.length];
        for (int i = 0; i < components.length; i++) {
            Object old = read(at, components[i]);
            values[i] = components[i].getName().equals(name) && old != null ? replaced(old, rest, value) : old;
        }
        return build(at.getClass(), values);
    }

    private static List<Object> steps(String path) {
        List<Object> steps = new ArrayList<>();
        for (String part : path.replace("]", "").split("[.\\[]", -1)) {
            boolean index = !part.isEmpty() && part.chars().allMatch(Character::isDigit);
            steps.add(index ? (Object) Integer.valueOf(part) : part);
        }
        return steps;
    }
}
