package shimwright.rebuild.unit.model;

import java.lang.reflect.ParameterizedType;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Takes out of a unit type what holds for other variants only, and every mention of it in lists and maps. */
public final class VariantFilter {
    private final String variant;
    private final Map<String, Set<String>> left = new HashMap<>();

    private VariantFilter(String variant) {
        this.variant = variant;
    }

    /** The unit type with only what holds for the variant. */
    public static UnitType filter(UnitType type, String variant) {
        VariantFilter filter = new VariantFilter(variant);
        UnitType kept = filter.copy(type, UnitType.class, false);
        return filter.copy(kept, UnitType.class, true);
    }

    /** The ids of the variant by list; of all variants for an empty text. */
    public static Map<String, Set<String>> idsOf(UnitType type, String variant) {
        VariantFilter filter = new VariantFilter(variant);
        filter.copy(type, UnitType.class, false);
        return filter.left;
    }

    /** The variants a record is restricted to; empty for all. */
    public static Set<String> only(Record record) {
        for (Component component : Component.of(record.getClass())) {
            if (component.key().equals("only")) {
                return texts((Collection<?>) component.in(record));
            }
        }
        return Set.of();
    }

    private static Set<String> texts(Collection<?> values) {
        Set<String> texts = new HashSet<>();
        values.forEach(value -> texts.add(value.toString()));
        return texts;
    }

    private boolean holds(Object element) {
        if (!(element instanceof Record record)) {
            return true;
        }
        Set<String> only = only(record);
        return variant.isEmpty() || only.isEmpty() || only.contains(variant);
    }

    private <T extends Record> T copy(T record, Class<T> type, boolean references) {
        Object[] values = Component.of(type).stream()
                .map(c -> value(c.in(record), c, references))
                .toArray();
        return Component.make(type, values);
    }

    private Object value(Object value, Component component, boolean references) {
        if (value instanceof Record record) {
            return copyAny(record, references);
        }
        if (value instanceof List<?> list) {
            return list(list, component, references);
        }
        if (value instanceof Map<?, ?> map) {
            return map(map, component, references);
        }
        return value;
    }

    @SuppressWarnings("unchecked")
    private Record copyAny(Record record, boolean references) {
        return copy(record, (Class<Record>) record.getClass(), references);
    }

    private List<Object> list(List<?> list, Component component, boolean references) {
        List<Object> kept = new ArrayList<>();
        boolean pairs =
                component.type() instanceof ParameterizedType type && Component.held(type) instanceof ParameterizedType;
        for (Object element : list) {
            boolean stays = references ? mentioned(element, component, pairs) : holds(element);
            if (stays) {
                kept.add(element instanceof Record record ? copyAny(record, references) : element);
            }
        }
        if (!references
                && Component.held((ParameterizedType) component.type()) instanceof Class<?> held
                && held.isRecord()) {
            left.computeIfAbsent(component.key(), key -> new HashSet<>());
            kept.forEach(element -> register(element, component.key()));
        }
        return List.copyOf(kept);
    }

    private void register(Object element, String list) {
        if (element instanceof Record record) {
            Component first = Component.of(record.getClass()).get(0);
            if (first.key().equals("id")) {
                left.computeIfAbsent(list, key -> new HashSet<>())
                        .add(first.in(record).toString());
            }
        }
    }

    private boolean mentioned(Object element, Component component, boolean pair) {
        String list = component.field().refersTo();
        if (list.isEmpty()) {
            return true;
        }
        if (pair) {
            return ((List<?>) element).stream().allMatch(one -> isLeft(list, one));
        }
        return isLeft(list, element);
    }

    private boolean isLeft(String list, Object id) {
        return !left.containsKey(list) || left.getOrDefault(list, Set.of()).contains(id.toString());
    }

    private Map<Object, Object> map(Map<?, ?> map, Component component, boolean references) {
        Map<Object, Object> kept = new LinkedHashMap<>();
        String list = component.field().refersTo();
        boolean variants = component.key().equals("variants");
        boolean all = !references || list.isEmpty() || list.equals("variants");
        map.forEach((key, value) -> {
            boolean stays = variants ? key.equals(variant) : all || isLeft(list, key);
            if (stays) {
                kept.put(key, value instanceof Record record ? copyAny(record, references) : value);
            }
        });
        return Collections.unmodifiableMap(kept);
    }
}
