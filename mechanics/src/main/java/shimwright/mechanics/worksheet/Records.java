package shimwright.mechanics.worksheet;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Builds records and reads or replaces a value deep inside them, by path. */
final class Records {
    private Records() {}

    /** What reflection finds in a record class, looked up once. */
    private record Plan(Constructor<?> constructor, List<String> names, List<Method> accessors) {
        static final ClassValue<Plan> OF = new ClassValue<>() {
            @Override
            protected Plan computeValue(Class<?> type) {
                RecordComponent[] components = type.getRecordComponents();
                Class<?>[] types =
                        Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
                try {
                    Constructor<?> constructor = type.getDeclaredConstructor(types);
                    constructor.setAccessible(true);
                    List<Method> accessors = Arrays.stream(components)
                            .map(RecordComponent::getAccessor)
                            .toList();
                    accessors.forEach(accessor -> accessor.setAccessible(true));
                    List<String> names = Arrays.stream(components)
                            .map(RecordComponent::getName)
                            .toList();
                    return new Plan(constructor, names, accessors);
                } catch (NoSuchMethodException broken) {
                    throw new IllegalStateException("no constructor of " + type.getSimpleName(), broken);
                }
            }
        };
    }

    static Object build(Class<?> type, @Nullable Object[] values) {
        try {
            return Plan.OF.get(type).constructor().newInstance(values);
        } catch (InvocationTargetException thrown) {
            throw new IllegalStateException("the constructor of " + type.getSimpleName() + " threw", thrown.getCause());
        } catch (ReflectiveOperationException broken) {
            throw new IllegalStateException("cannot build " + type.getSimpleName(), broken);
        }
    }

    static @Nullable Object get(Object record, String component) {
        Plan plan = Plan.OF.get(record.getClass());
        int at = plan.names().indexOf(component);
        if (at < 0) {
            throw new IllegalArgumentException(record.getClass().getSimpleName() + " has no " + component);
        }
        return read(record, plan.accessors().get(at));
    }

    private static @Nullable Object read(Object record, Method accessor) {
        try {
            return accessor.invoke(record);
        } catch (ReflectiveOperationException broken) {
            throw new IllegalStateException("cannot read " + accessor.getName(), broken);
        }
    }

    /** The number at a path such as {@code gauge.step} or {@code rounds[2][0]}. */
    static double number(Object root, String path) {
        return (Double) at(root, path);
    }

    /** The value at a path. */
    static Object at(Object root, String path) {
        Object at = root;
        for (Object step : steps(path)) {
            Object next = step instanceof Integer index ? ((List<?>) at).get(index) : get(at, step.toString());
            if (next == null) {
                throw new IllegalArgumentException("nothing at " + path);
            }
            at = next;
        }
        return at;
    }

    /** The same record with another value at a path. */
    static <T> T with(T root, String path, Object value, Class<T> type) {
        return with(root, steps(path), value, type);
    }

    /** The same at a path taken apart by {@link #steps}. */
    static <T> T with(T root, List<Object> steps, Object value, Class<T> type) {
        return type.cast(replaced(root, steps, value));
    }

    private static Object replaced(Object at, List<Object> steps, Object value) {
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
        Plan plan = Plan.OF.get(at.getClass());
        @Nullable Object[] values = new @Nullable Object[plan.names().size()];
        for (int i = 0; i < values.length; i++) {
            Object old = read(at, plan.accessors().get(i));
            values[i] = plan.names().get(i).equals(name) && old != null ? replaced(old, rest, value) : old;
        }
        return build(at.getClass(), values);
    }

    /** Names and indices of a path. */
    static List<Object> steps(String path) {
        List<Object> steps = new ArrayList<>();
        for (String part : path.replace("]", "").split("[.\\[]", -1)) {
            boolean index = !part.isEmpty() && part.chars().allMatch(Character::isDigit);
            steps.add(index ? (Object) Integer.valueOf(part) : part);
        }
        return steps;
    }
}
