package shimwright.mechanics.worksheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The plain numbers of a result by path, {@code input.axial} and {@code gears[2].axial}. An entry of a list is known by
 * its texts and choices, so that a list in another order still gives each entry its own numbers; entries without any
 * are known by their place in lists of one length.
 */
final class Numbers {
    private Numbers() {}

    /** The numbers of a result, in the order of its fields. */
    static Map<String, Double> of(List<SheetField> fields, Object record) {
        return of(fields, record, record);
    }

    /** The numbers of another result of the same worksheet under the paths of the first; without those it has not. */
    static Map<String, Double> of(List<SheetField> fields, Object first, Object other) {
        Map<String, Double> numbers = new LinkedHashMap<>();
        record(fields, first, other, "", numbers);
        return numbers;
    }

    private static void record(
            List<SheetField> fields, Object first, Object other, String prefix, Map<String, Double> numbers) {
        for (SheetField field : fields) {
            value(
                    field,
                    Records.get(first, field.name()),
                    Records.get(other, field.name()),
                    prefix + field.name(),
                    numbers);
        }
    }

    private static void value(
            SheetField field,
            @Nullable Object first,
            @Nullable Object other,
            String path,
            Map<String, Double> numbers) {
        if (first == null || other == null) {
            return;
        }
        if (first instanceof Double && other instanceof Double number) {
            numbers.put(path, number);
        } else if (field.shape() == Shape.RECORD) {
            record(field.children(), first, other, path + ".", numbers);
        } else if (first instanceof List<?> one && other instanceof List<?> two && numeric(field.entry())) {
            list(field.entry(), one, two, path, numbers);
        }
    }

    private static boolean numeric(SheetField entry) {
        return switch (entry.shape()) {
            case QUANTITY, OPTIONAL_QUANTITY, RECORD, LIST -> true;
            case WHOLE_NUMBER, YES_NO, CHOICE, TEXT, BUDGET -> false;
        };
    }

    private static void list(SheetField entry, List<?> first, List<?> other, String path, Map<String, Double> numbers) {
        if (first == other) {
            for (int i = 0; i < first.size(); i++) {
                value(entry, first.get(i), first.get(i), path + "[" + i + "]", numbers);
            }
            return;
        }
        Map<String, List<Object>> byName = new HashMap<>();
        other.forEach(item -> byName.computeIfAbsent(name(entry, item), key -> new ArrayList<>())
                .add(item));
        Map<String, Integer> seen = new HashMap<>();
        for (int i = 0; i < first.size(); i++) {
            String name = name(entry, first.get(i));
            List<Object> alike = byName.getOrDefault(name, List.of());
            int at = seen.merge(name, 1, Integer::sum) - 1;
            boolean known = !name.isEmpty() || first.size() == other.size();
            if (known && at < alike.size()) {
                value(entry, first.get(i), alike.get(at), path + "[" + i + "]", numbers);
            }
        }
    }

    /** The texts and choices of an entry; empty where it has none. */
    private static String name(SheetField entry, Object item) {
        if (entry.shape() != Shape.RECORD) {
            return "";
        }
        StringBuilder name = new StringBuilder();
        for (SheetField field : entry.children()) {
            boolean texts = field.shape() == Shape.LIST && field.entry().shape() == Shape.TEXT;
            if (field.shape() == Shape.TEXT || texts) {
                name.append(Records.get(item, field.name())).append('\n');
            }
        }
        return name.toString();
    }
}
