package shimwright.bench.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.worksheet.Shape;
import shimwright.mechanics.worksheet.SheetField;
import shimwright.mechanics.worksheet.Worksheet;

/**
 * Makes what was typed under one system of units safe to read under another: a bare number gets the unit it was meant
 * in.
 */
public final class UnitWords {
    /** Numbers, decimal signs, ±, and what stands between the numbers of a list: no unit anywhere. */
    private static final Pattern BARE = Pattern.compile("(?s)(?=.*\\d)[\\d.,;/±+\\-−eE\\s]*");

    private UnitWords() {}

    /**
     * The same inputs with units.
     *
     * @param sheet whose inputs they are
     * @param typed as typed, by key
     * @param meant the system they were typed under
     */
    public static Map<String, String> carried(Worksheet<?, ?> sheet, Map<String, String> typed, UnitSystem meant) {
        Map<String, SheetField> fields = new LinkedHashMap<>();
        collect(sheet.inputs(), "", fields);
        Map<String, String> carried = new LinkedHashMap<>();
        typed.forEach((key, text) -> {
            SheetField field = fields.get(key);
            carried.put(key, field == null ? text : carried(field, text, meant));
        });
        return carried;
    }

    private static void collect(List<SheetField> inputs, String prefix, Map<String, SheetField> fields) {
        for (SheetField field : inputs) {
            fields.put(prefix + field.name(), field);
            if (field.shape() == Shape.RECORD) {
                collect(field.children(), prefix + field.name() + ".", fields);
            }
        }
    }

    /** As {@link #carried(Worksheet, Map, UnitSystem)} for one input. */
    public static String carried(SheetField field, String text, UnitSystem meant) {
        String unit = field.display(meant).unit().symbol();
        return switch (field.shape()) {
            case QUANTITY, OPTIONAL_QUANTITY -> withUnit(text, unit);
            case LIST -> list(field.entry(), text, meant);
            default -> text;
        };
    }

    private static String list(SheetField entry, String text, UnitSystem meant) {
        SheetField leaf = entry;
        while (leaf.shape() == Shape.LIST) {
            leaf = leaf.entry();
        }
        if (leaf.shape() == Shape.QUANTITY) {
            return withUnit(text, leaf.display(meant).unit().symbol());
        }
        if (leaf.shape() != Shape.RECORD) {
            return text;
        }
        List<String> lines = new ArrayList<>();
        for (String line : text.split("[;\\n]", -1)) {
            lines.add(parts(leaf.children(), line, meant));
        }
        return String.join("\n", lines);
    }

    private static String parts(List<SheetField> children, String line, UnitSystem meant) {
        String mark = line.contains(":") ? ":" : ", ";
        String[] parts = line.split(mark, -1);
        for (int i = 0; i < parts.length && i < children.size(); i++) {
            parts[i] = carried(children.get(i), parts[i], meant);
        }
        return String.join(mark, parts);
    }

    private static String withUnit(String text, String unit) {
        return unit.isEmpty() || !BARE.matcher(text).matches() ? text : text.stripTrailing() + " " + unit;
    }
}
