package shimwright.rebuild.unit.edit;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import shimwright.rebuild.unit.model.Component;
import shimwright.rebuild.unit.model.UnitType;

/**
 * All places of a unit file that refer to one entry of one of its lists, as the keys of the model say.
 *
 * @param list to whose entry they refer
 * @param id of the entry
 * @param other what is written instead; null where the mention goes
 */
record Mentions(String list, String id, @Nullable String other) {
    /** The same tree with each mention changed. */
    Map<String, Object> in(Map<String, Object> tree) {
        return record(UnitType.class, tree);
    }

    private Map<String, Object> record(Class<?> type, Map<String, Object> values) {
        Map<String, Object> changed = new LinkedHashMap<>(values);
        for (Component c : Component.of(type)) {
            Object value = values.get(c.key());
            Object now = value == null ? null : value(c, c.type(), value);
            if (value != null && now == null && !c.required()) {
                changed.remove(c.key());
            } else if (now != null) {
                changed.put(c.key(), now);
            }
        }
        return changed;
    }

    private @Nullable Object value(Component c, Type type, Object value) {
        boolean refers = c.field().refersTo().equals(list);
        if (type instanceof Class<?> plain && plain.isRecord() && value instanceof Map<?, ?>) {
            return record(plain, TypeParts.map(value));
        }
        if (type instanceof ParameterizedType held && value instanceof List<?> all) {
            return list(c, Component.held(held), all);
        }
        if (type instanceof ParameterizedType held && value instanceof Map<?, ?> map) {
            Map<String, Object> changed = new LinkedHashMap<>();
            map.forEach((key, inner) -> {
                String name = refers && key.equals(id) ? other : key.toString();
                Object now = Component.held(held) instanceof Class<?> plain && plain.isRecord()
                        ? record(plain, TypeParts.map(inner))
                        : inner;
                if (name != null) {
                    changed.put(name, now);
                }
            });
            return changed;
        }
        return refers && value.equals(id) ? other : value;
    }

    private List<Object> list(Component c, Type held, List<?> all) {
        List<Object> changed = new ArrayList<>();
        for (Object one : all) {
            Object now = value(c, held, one);
            boolean pair =
                    one instanceof List<?> before && now instanceof List<?> after && after.size() < before.size();
            if (now != null && !pair) {
                changed.add(now);
            }
        }
        return changed;
    }
}
