package shimwright.mechanics.worksheet;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import shimwright.mechanics.quantity.MeasureUnit;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Range;
import shimwright.mechanics.quantity.UnitSystem;

/** The help page of a worksheet: inputs with units, limits and defaults, an example, sources. */
public final class Help {
    private Help() {}

    /** The page as text. */
    public static String text(Worksheet<?, ?> sheet, UnitSystem system) {
        StringBuilder out = new StringBuilder();
        out.append(sheet.name()).append(": ").append(sheet.title()).append('\n');
        out.append(sheet.doc()).append("\n\nInputs\n");
        inputs(sheet.inputs(), "", system, out);
        out.append("\nA number may carry its own unit (0.0412 in, 41 thou) and its standard uncertainty (0.24 ± 0.01")
                .append(" mm, also +-).\n");
        out.append("\nResults\n");
        for (SheetField field : sheet.outputs()) {
            out.append("  ")
                    .append(field.name())
                    .append("  ")
                    .append(field.meaning())
                    .append('\n');
        }
        out.append("\nExample\n  ").append(sheet.name());
        for (Map.Entry<String, String> entry : sheet.example().entrySet()) {
            out.append(' ')
                    .append(entry.getKey())
                    .append("=\"")
                    .append(entry.getValue())
                    .append('"');
        }
        out.append("\n\nSources\n");
        sheet.sources().forEach(source -> out.append("  ").append(source).append('\n'));
        return out.toString();
    }

    private static void inputs(List<SheetField> fields, String prefix, UnitSystem system, StringBuilder out) {
        for (SheetField field : fields) {
            String key = prefix + field.name();
            if (field.shape() == Shape.RECORD) {
                out.append("  ")
                        .append(key)
                        .append("  ")
                        .append(field.meaning())
                        .append(", of:\n");
                inputs(field.children(), key + ".", system, out);
                continue;
            }
            out.append("  ").append(key).append("  ").append(field.meaning());
            out.append(" [").append(String.join("; ", notes(field, system))).append("]\n");
            if (field.shape() == Shape.LIST && field.entry().shape() == Shape.RECORD) {
                out.append("    each entry: ").append(field.entry().order()).append("; entries between ;\n");
                inputs(field.entry().children(), "  ", system, out);
            }
        }
    }

    private static List<String> notes(SheetField field, UnitSystem system) {
        SheetField leaf = field;
        while (leaf.shape() == Shape.LIST) {
            leaf = leaf.entry();
        }
        String what = switch (leaf.shape()) {
            case QUANTITY, OPTIONAL_QUANTITY -> {
                MeasureUnit unit = leaf.display(system).unit();
                yield (unit.symbol().isEmpty() ? "number" : unit.symbol()) + limits(leaf.range(), unit);
            }
            case WHOLE_NUMBER ->
                "whole number" + limits(leaf.range(), leaf.display(system).unit());
            case YES_NO -> "yes or no";
            case CHOICE -> "one of: " + CaseReader.choices(leaf);
            case TEXT -> "text";
            default -> "entries";
        };
        String list = field.shape() == Shape.LIST ? "list, " + field.fewest() + " to " + field.most() : "";
        String need = field.orElse()
                .map(text -> text.isEmpty() ? "may be left out" : "else " + text)
                .orElse(field.needed() ? "needed" : "may be left out");
        return List.of(list, what, need).stream()
                .filter(note -> !note.isEmpty())
                .collect(Collectors.toList());
    }

    private static String limits(Range range, MeasureUnit unit) {
        boolean low = Double.isFinite(range.min());
        boolean high = Double.isFinite(range.max());
        if (low && high) {
            return ", " + Quantities.brief(range.min(), unit) + " to " + Quantities.brief(range.max(), unit);
        }
        if (low) {
            return ", " + Quantities.brief(range.min(), unit) + " or more";
        }
        return high ? ", " + Quantities.brief(range.max(), unit) + " or less" : "";
    }
}
