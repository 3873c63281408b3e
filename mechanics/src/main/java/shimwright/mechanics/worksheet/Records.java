package shimwright.mechanics.worksheet;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Builds records and reads or replaces a value deep inside them, by path. */
final class Records {
    private Records() {}

    /** What reflection finds in a record class, looked up once; what a {@link Group} holds counts as the record's own. */
    private record Plan(
            Constructor<?> constructor, List<Part> parts, List<String> names, List<List<Method>> accessors) {
        static final ClassValue<Plan> OF = new ClassValue<>() {
            @Override
            protected Plan computeValue(Class<?> type) {
                RecordComponent[] components = type.getRecordComponents();
                Class<?>[] types =
                        Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
                try {
                    Constructor<?> constructor = type.getDeclaredConstructor(types);
                    constructor.setAccessible(true);
                    List<Part> parts =
                            Arrays.stream(components).map(Records::part).toList();
                    return new Plan(
                            constructor,
                            parts,
                            parts.stream()
                                    .flatMap(part -> part.names().stream())
                                    .toList(),
                            parts.stream()
                                    .flatMap(part -> part.accessors().stream())
                                    .toList());
                } catch (NoSuchMethodException broken) {
                    throw new IllegalStateException("no constructor of " + type.getSimpleName(), broken);
                }
            }
        };

        /** The record of the values from a place on. */
        Object build(@Nullable Object[] values, int from) throws ReflectiveOperationException {
            @Nullable Object[] own = new @Nullable Object[parts.size()];
            int at = from;
            for (int i = 0; i < own.length; i++) {
                Plan group = parts.get(i).group();
                own[i] = group == null ? values[at] : group.build(values, at);
                at += parts.get(i).names().size();
            }
            return constructor.newInstance(own);
        }
    }

    /** A component: what it is called and read by; for a group, its plan and what it holds. */
    private record Part(@Nullable Plan group, List<String> names, List<List<Method>> accessors) {}

    private static Part part(RecordComponent component) {
        Method accessor = component.getAccessor();
        accessor.setAccessible(true);
        if (!component.isAnnotationPresent(Group.class)) {
            return new Part(null, List.of(component.getName()), List.of(List.of(accessor)));
        }
        Plan group = Plan.OF.get(component.getType());
        List<List<Method>> through = group.accessors().stream()
                .map(inner -> Stream.concat(Stream.of(accessor), inner.stream()).toList())
                .toList();
        return new Part(group, group.names(), through);
    }

    static Object build(Class<?> type, @Nullable Object[] values) {
        try {
            return Plan.OF.get(type).build(values, 0);
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

    private static @Nullable Object read(Object record, List<Method> accessors) {
        @Nullable Object at = record;
        for (Method accessor : accessors) {
            try {
                at = accessor.invoke(at);
            } catch (ReflectiveOperationException broken) {
                throw new IllegalStateException("cannot read " + accessor.getName(), broken);
            }
        }
        return at;
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
