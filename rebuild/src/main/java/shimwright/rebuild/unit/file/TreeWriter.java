package shimwright.rebuild.unit.file;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shimwright.rebuild.unit.model.Component;

/** Records to the keys and values that their text would be read as: what is as it would be when absent is left out. */
final class TreeWriter {
    private TreeWriter() {}

    /** The keys of a record that would be written, each with a text, a list or further keys. */
    static Map<String, Object> tree(Record record) {
        Map<String, Object> tree = new LinkedHashMap<>();
        List<Component> components = Component.of(record.getClass());
        List<Object> absent = AbsentValues.of(record.getClass());
        for (int i = 0; i < components.size(); i++) {
            Component component = components.get(i);
            Object value = UnitWriter.held(component.in(record));
            if (component.required() || !value.equals(absent.get(i))) {
                tree.put(component.key(), value(value, component));
            }
        }
        return tree;
    }

    private static Object value(Object value, Component component) {
        if (value instanceof Record record) {
            return tree(record);
        }
        if (UnitWriter.isRow(value, component.kind())) {
            return UnitWriter.row((List<?>) value, component.kind());
        }
        if (value instanceof Collection<?> list) {
            List<Object> values = new ArrayList<>(list.size());
            list.forEach(one -> values.add(value(one, component)));
            return values;
        }
        if (value instanceof Map<?, ?> map) {
            Map<String, Object> values = new LinkedHashMap<>();
            map.forEach((key, held) -> values.put(key.toString(), value(held, component)));
            return values;
        }
        return UnitWriter.plain(value, component.kind());
    }
}
