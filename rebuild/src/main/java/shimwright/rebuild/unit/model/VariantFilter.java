package shimwright.rebuild.unit.model;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/** Takes out of a unit type what holds for other variants only, and every mention of it in lists and maps. */
public final class VariantFilter {
    private static final Map<Class<?>, Optional<Component>> ONLY = new ConcurrentHashMap<>();

    /** Keys of records in which something can be taken out: by class, and whether mentions are looked at. */
    private static final Map<Looked, List<Component>> OPEN = new ConcurrentHashMap<>();

    private record Looked(Class<?> record, boolean references) {}

    private final String variant;
    private final Map<String, Set<String>> left = new HashMap<>();

    private final UnitType kept;

    /**
     * The filter of a variant.
     *
     * @param variant of the type; empty for what holds for any
     */
    public VariantFilter(UnitType type, String variant) {
        this.variant = variant;
        this.kept = copy(type, UnitType.class, false);
    }

    /** The unit type with only what holds for the variant; records of which nothing is taken out are the same ones. */
    public static UnitType filter(UnitType type, String variant) {
        return new VariantFilter(type, variant).filtered();
    }

    /** The same, of this filter. */
    public UnitType filtered() {
        return copy(kept, UnitType.class, true);
    }

    /** The ids of the variant by list; of all variants for an empty text. */
    public Map<String, Set<String>> ids() {
        return Collections.unmodifiableMap(left);
    }

    /** The variants a record is restricted to; empty for all. */
    public static Set<String> only(Record record) {
        Optional<Component> only = ONLY.computeIfAbsent(
                record.getClass(),
                type -> Component.of(type).stream()
                        .filter(component -> component.key().equals("only"))
                        .findFirst());
        return only.isPresent() ? texts((Collection<?>) only.get().in(record)) : Set.of();
    }

    private static Set<String> texts(Collection<?> values) {
        if (values.isEmpty()) {
            return Set.of();
        }
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
        Map<String, Object> changed = new HashMap<>();
        for (Component component : open(type, references)) {
            Object value = component.in(record);
            Object copy = value(value, component, references);
            if (!isSame(copy, value)) {
                changed.put(component.key(), copy);
            }
        }
        return changed.isEmpty()
                ? record
                : Component.make(
                        type,
                        Component.of(type).stream()
                                .map(component -> changed.getOrDefault(component.key(), component.in(record)))
                                .toArray());
    }

    /** The keys of a record that can come out otherwise than they are; most records have none, and are not looked into. */
    private static List<Component> open(Class<?> record, boolean references) {
        Looked looked = new Looked(record, references);
        List<Component> known = OPEN.get(looked);
        if (known == null) {
            known = Component.of(record).stream()
                    .filter(component -> isOpen(component, references))
                    .toList();
            OPEN.put(looked, known);
        }
        return known;
    }

    private static boolean isOpen(Component component, boolean references) {
        if (!(component.type() instanceof ParameterizedType type)) {
            return isOpen(component.type(), references);
        }
        boolean refers = references && !component.field().refersTo().isEmpty();
        if (type.getRawType() == Map.class) {
            return refers || component.key().equals("variants") || isOpen(Component.held(type), references);
        }
        // the ids of a list of records are noted even where nothing is taken out of them
        boolean noted = !references && Component.held(type) instanceof Class<?> held && held.isRecord();
        return type.getRawType() == List.class && (refers || noted || isOpen(Component.held(type), references));
    }

    private static boolean isOpen(Type type, boolean references) {
        return type instanceof Class<?> plain
                && plain.isRecord()
                && !open(plain, references).isEmpty();
    }

    @SuppressWarnings("ReferenceEquality") // what is the very same need not be made again
    private static boolean isSame(Object one, @Nullable Object other) {
        return one == other;
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

    private List<?> list(List<?> list, Component component, boolean references) {
        List<Object> kept = new ArrayList<>();
        boolean pairs =
                component.type() instanceof ParameterizedType type && Component.held(type) instanceof ParameterizedType;
        boolean same = true;
        for (Object element : list) {
            boolean stays = references ? mentioned(element, component, pairs) : holds(element);
            if (stays) {
                Object copy = element instanceof Record record ? copyAny(record, references) : element;
                same &= isSame(copy, element);
                kept.add(copy);
            }
        }
        if (!references
                && Component.held((ParameterizedType) component.type()) instanceof Class<?> held
                && held.isRecord()) {
            left.computeIfAbsent(component.key(), key -> new HashSet<>());
            kept.forEach(element -> register(element, component.key()));
        }
        return same && kept.size() == list.size() ? list : List.copyOf(kept);
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

    private Map<?, ?> map(Map<?, ?> map, Component component, boolean references) {
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
        boolean same = kept.size() == map.size()
                && kept.entrySet().stream().allMatch(entry -> isSame(entry.getValue(), map.get(entry.getKey())));
        return same ? map : Collections.unmodifiableMap(kept);
    }
}
