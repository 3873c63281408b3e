package shimwright.rebuild.unit.sense;

import java.lang.reflect.ParameterizedType;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import shimwright.rebuild.unit.model.Component;
import shimwright.rebuild.unit.model.VariantFilter;

/** What holds for a variant may name only what holds for that variant as well. */
final class VariantSense {
    /** Keys of records under which a variant's things may be named. */
    private static final Map<Class<?>, List<Component>> NAMING = new ConcurrentHashMap<>();

    private final SenseContext context;
    private final Map<String, Set<String>> everywhere;

    VariantSense(SenseContext context) {
        this.context = context;
        this.everywhere = new VariantFilter(context.type(), "").ids();
    }

    void check() {
        for (String variant : context.type().variants().keySet()) {
            walk(context.type(), variant, context.variants().ids(variant));
        }
    }

    private void walk(Record record, String variant, Map<String, Set<String>> ids) {
        Set<String> only = VariantFilter.only(record);
        if (!only.isEmpty() && !only.contains(variant)) {
            return;
        }
        for (Component component : NAMING.computeIfAbsent(record.getClass(), VariantSense::naming)) {
            Object value = component.in(record);
            if (component.key().equals("variants") && value instanceof Map<?, ?> variants) {
                visit(variants.get(variant), variant, ids);
            } else if (value instanceof Map<?, ?> map) {
                map.values().forEach(v -> visit(v, variant, ids));
            } else if (value instanceof Collection<?> list) {
                list.forEach(v -> visit(v, variant, ids));
            } else if (value instanceof String id) {
                single(record, component, id, variant, ids);
            } else {
                visit(value, variant, ids);
            }
        }
    }

    private static List<Component> naming(Class<?> record) {
        return Component.of(record).stream()
                .filter(component -> component.type() instanceof ParameterizedType held
                        ? !(Component.held(held) instanceof Class<?> plain) || plain.isRecord()
                        : component.type() != String.class
                                || !component.field().refersTo().isEmpty())
                .toList();
    }

    private void visit(@Nullable Object value, String variant, Map<String, Set<String>> ids) {
        if (value instanceof Record record) {
            walk(record, variant, ids);
        }
    }

    private void single(Record record, Component component, String id, String variant, Map<String, Set<String>> ids) {
        String list = component.field().refersTo();
        if (list.isEmpty() || id.isEmpty() || !ids.containsKey(list)) {
            return;
        }
        boolean here = ids.getOrDefault(list, Set.of()).contains(id);
        boolean anywhere = everywhere.getOrDefault(list, Set.of()).contains(id);
        if (!here && anywhere) {
            context.fault(
                    record,
                    component.key(),
                    "it holds for variant " + variant + ", but \"" + id + "\" of the " + list.replace('_', ' ')
                            + " does not",
                    "Restrict it with only to the variants that have it");
        }
    }
}
