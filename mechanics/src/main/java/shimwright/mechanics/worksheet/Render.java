package shimwright.mechanics.worksheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.measure.Budget;
import shimwright.mechanics.measure.Contribution;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.UnitSystem;

/** Turns result records into data and words by their fields. */
record Render(UnitSystem system, Map<String, Budget> budgets) {

    /** Whether every number is finite, or infinite where the field has a word for it. */
    static boolean finite(List<SheetField> fields, Object record) {
        return fields.stream().allMatch(field -> finite(field, Records.get(record, field.name())));
    }

    private static boolean finite(SheetField field, @Nullable Object value) {
        if (value instanceof Double number) {
            return Double.isFinite(number)
                    || (!Double.isNaN(number) && !field.infinite().isEmpty());
        }
        if (value instanceof List<?> list) {
            return list.stream().allMatch(item -> finite(field.entry(), item));
        }
        return value == null || field.shape() != Shape.RECORD || finite(field.children(), value);
    }

    static String words(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    static String choice(@Nullable Object value) {
        if (value instanceof Boolean yes) {
            return yes ? "yes" : "no";
        }
        return value instanceof Enum<?> constant ? words(constant) : String.valueOf(value);
    }

    Map<String, Object> json(List<SheetField> fields, Object record, String prefix) {
        Map<String, Object> json = new LinkedHashMap<>();
        for (SheetField field : fields) {
            Object value = Records.get(record, field.name());
            json.put(field.name(), json(field, value, record, prefix + field.name()));
        }
        return json;
    }

    private Object json(SheetField field, @Nullable Object value, Object record, String path) {
        if (field.shape() == Shape.RECORD && value != null) {
            return json(field.children(), value, path + ".");
        }
        if (value instanceof List<?> list) {
            List<Object> items = new ArrayList<>();
            for (int i = 0; i < list.size(); i++) {
                items.add(json(field.entry(), list.get(i), record, path + "[" + i + "]"));
            }
            return items;
        }
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        if (value instanceof Budget budget) {
            json.put("u", budget.u());
            json.put("unit", field.kind().siSymbol());
            json.put("degreesOfFreedom", Double.isInfinite(budget.nu()) ? null : budget.nu());
            json.put("parts", parts(budget));
            return json;
        }
        boolean infinite = value instanceof Double number && Double.isInfinite(number);
        json.put("value", infinite ? null : value instanceof Enum<?> constant ? constant.name() : value);
        if (value instanceof Double) {
            json.put("unit", field.kind().siSymbol());
        }
        json.put("text", text(field, value, record, path));
        double u = uncertainty(field, record, path);
        if (u > 0) {
            json.put("u", u);
        }
        Budget budget = budgets.get(path);
        if (budget != null) {
            json.put("budget", parts(budget));
            if (budget.u() > 0 && Double.isFinite(budget.nu())) {
                json.put("degreesOfFreedom", budget.nu());
            }
        }
        return json;
    }

    private static List<Map<String, Object>> parts(Budget budget) {
        List<Map<String, Object>> parts = new ArrayList<>();
        for (Contribution part : budget.contributions()) {
            Map<String, Object> json = new LinkedHashMap<>();
            json.put("input", part.name());
            json.put("u", part.u());
            json.put("sensitivity", part.sensitivity());
            json.put("share", part.share());
            parts.add(json);
        }
        return parts;
    }

    /** The whole uncertainty: the component that holds it, which that of the inputs is part of; else that of the inputs. */
    private double uncertainty(SheetField field, Object record, String path) {
        Budget budget = budgets.get(path);
        Object own = field.uncertainty().u().isEmpty()
                ? null
                : Records.get(record, field.uncertainty().u());
        if (own instanceof Double number && Double.isFinite(number)) {
            return number;
        }
        return budget == null ? 0 : budget.u();
    }

    private String text(SheetField field, @Nullable Object value, Object record, String path) {
        if (value instanceof Double number) {
            if (Double.isInfinite(number)) {
                return field.infinite();
            }
            UnitSystem.Display display = field.display(system);
            return Quantities.print(number, uncertainty(field, record, path), display.unit(), display.decimals());
        }
        if (value == null) {
            return "none";
        }
        return choice(value);
    }

    List<ShownValue> shown(List<SheetField> fields, Object record, String prefix) {
        List<ShownValue> shown = new ArrayList<>();
        for (SheetField field : fields) {
            shown.add(shown(field, Records.get(record, field.name()), record, prefix + field.name()));
        }
        return shown;
    }

    private ShownValue shown(SheetField field, @Nullable Object value, Object record, String path) {
        if (value instanceof Budget budget) {
            return new ShownValue(field, path, "", budget.contributions(), List.of());
        }
        if (value instanceof List<?> list && field.entry().shape() == Shape.RECORD) {
            List<List<ShownValue>> entries = new ArrayList<>();
            for (int i = 0; i < list.size(); i++) {
                entries.add(shown(field.entry().children(), list.get(i), path + "[" + i + "]."));
            }
            return new ShownValue(field, path, list.isEmpty() ? "none" : "", List.of(), entries);
        }
        if (value instanceof List<?> list) {
            List<String> items = new ArrayList<>();
            for (int i = 0; i < list.size(); i++) {
                items.add(text(field.entry(), list.get(i), record, path + "[" + i + "]"));
            }
            return new ShownValue(
                    field, path, items.isEmpty() ? "none" : String.join(", ", items), List.of(), List.of());
        }
        if (field.shape() == Shape.RECORD && value != null) {
            return new ShownValue(field, path, "", List.of(), List.of(shown(field.children(), value, path + ".")));
        }
        Budget budget = budgets.get(path);
        List<Contribution> parts = budget != null && budget.u() > 0 ? budget.contributions() : List.of();
        return new ShownValue(field, path, text(field, value, record, path), parts, List.of());
    }

    void text(List<SheetField> fields, Object record, String indent, String prefix, StringBuilder out) {
        for (SheetField field : fields) {
            Object value = Records.get(record, field.name());
            String path = prefix + field.name();
            out.append(indent).append(field.meaning()).append(": ");
            write(field, value, record, indent, path, out);
        }
    }

    private void write(
            SheetField field, @Nullable Object value, Object record, String indent, String path, StringBuilder out) {
        if (value instanceof Budget budget) {
            out.append('\n');
            budget(budget, field, indent + "  ", out);
        } else if (value instanceof List<?> list && field.entry().shape() == Shape.RECORD) {
            out.append(list.isEmpty() ? "none\n" : "\n");
            for (int i = 0; i < list.size(); i++) {
                out.append(indent).append("  ").append(i + 1).append(".\n");
                text(field.entry().children(), list.get(i), indent + "     ", path + "[" + i + "].", out);
            }
        } else if (value instanceof List<?> list) {
            List<String> items = new ArrayList<>();
            for (int i = 0; i < list.size(); i++) {
                items.add(text(field.entry(), list.get(i), record, path + "[" + i + "]"));
            }
            out.append(items.isEmpty() ? "none" : String.join(", ", items)).append('\n');
        } else if (field.shape() == Shape.RECORD && value != null) {
            out.append('\n');
            text(field.children(), value, indent + "  ", path + ".", out);
        } else {
            out.append(text(field, value, record, path)).append('\n');
            Budget budget = budgets.get(path);
            if (budget != null && budget.u() > 0 && !path.contains("[")) {
                budget(budget, field, indent + "  ", out);
            }
        }
    }

    /** Effective degrees of freedom, cut to a tenth (JCGM 100:2008 G.4.1 cuts to whole ones before a table is read). */
    private static String freedom(double nu) {
        return nu >= 1000 ? "over 1000" : String.valueOf(Math.floor(nu * 10) / 10);
    }

    private void budget(Budget budget, SheetField field, String indent, StringBuilder out) {
        UnitSystem.Display display = field.display(system);
        for (Contribution part : budget.contributions()) {
            out.append(indent)
                    .append(part.name())
                    .append(": ")
                    .append(Quantities.brief(part.part() + display.unit().offset(), display.unit(), 2))
                    .append(", ")
                    .append(Math.round(100 * part.share()))
                    .append(" % of the uncertainty\n");
        }
        if (budget.u() > 0 && Double.isFinite(budget.nu())) {
            out.append(indent)
                    .append("degrees of freedom: ")
                    .append(freedom(budget.nu()))
                    .append('\n');
        }
    }
}
