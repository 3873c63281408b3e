package shimwright.bench.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.MeasureUnit;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Range;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.registry.BadInputs;
import shimwright.mechanics.registry.Registry;
import shimwright.mechanics.registry.Topics;
import shimwright.mechanics.working.Line;
import shimwright.mechanics.worksheet.Answer;
import shimwright.mechanics.worksheet.Shape;
import shimwright.mechanics.worksheet.SheetField;
import shimwright.mechanics.worksheet.Worksheet;

/** The manual: a page a worksheet and an index by topic, made from the sheets. */
public final class Manual {
    private static final String MADE =
            "<!-- Made by ./shimwright calc --manual docs/manual: change the sheet, not this page. -->\n\n";

    private Manual() {}

    /** Every page by file name. */
    public static Map<String, String> pages() {
        Map<String, String> pages = new LinkedHashMap<>();
        pages.put("README.md", index());
        Registry.all().forEach(sheet -> pages.put(sheet.name() + ".md", page(sheet)));
        return pages;
    }

    private static String index() {
        StringBuilder out = new StringBuilder(MADE);
        out.append("# The worksheets\n\n");
        out.append("Each is the same on the command line (`./shimwright calc NAME`), on the page `/sheets/NAME`,")
                .append(" and for programs at `/api/worksheets/NAME`.\n");
        out.append("A number may carry its unit and its standard uncertainty: `0.0412 in`, `0.24 ± 0.01 mm`.\n");
        out.append(
                        "Behind the ± may stand `k=2`, `nu=4`, `n=5`, or `rectangular`, `triangular`, `u-shaped` for a half-width,")
                .append(
                        " and `shared=NAME` where one gauge's uncertainty is in several inputs: it then cancels or adds as it")
                .append(" should.\n");
        out.append(
                        "The uncertainty is propagated to the first order; where that is shown not to hold, draws are taken beside it")
                .append(
                        " (Monte Carlo, seed on the answer), and always with `--monte-carlo N|auto --seed S --coverage P`,")
                .append(
                        " the form's own fields, or `?monte-carlo=N` for programs. Charts, lives and tolerance loops are")
                .append(" drawn only when asked.\n");
        out.append("What the sources are, and how far each was seen: [bibliography](bibliography.md).\n");
        for (Topics.Topic topic : Topics.all()) {
            out.append("\n## ").append(topic.title()).append("\n\n| worksheet | what it answers |\n|---|---|\n");
            for (Worksheet<?, ?> sheet : topic.sheets()) {
                row(out, List.of("[" + sheet.name() + "](" + sheet.name() + ".md)", sheet.doc()));
            }
        }
        return out.toString();
    }

    private static String page(Worksheet<?, ?> sheet) {
        Answer answer = sheet.answer(sheet.example(), UnitSystem.METRIC).orElseThrow();
        StringBuilder out = new StringBuilder(MADE);
        out.append("# ")
                .append(sheet.title())
                .append("\n\n`")
                .append(sheet.name())
                .append("` · ");
        out.append(Topics.title(sheet)).append("\n\n").append(sheet.doc()).append("\n\n## Inputs\n\n");
        out.append("| input | what it is | unit | range | when left out |\n|---|---|---|---|---|\n");
        inputs(sheet.inputs(), "", out);
        out.append("\n## Results\n\n| result | what it is | unit |\n|---|---|---|\n");
        outputs(sheet.outputs(), "", out);
        out.append("\n## A worked example\n\n```sh\n").append(command(sheet)).append("\n```\n\n```text\n");
        out.append(answer.text().strip()).append("\n```\n");
        working(answer, out);
        refusals(sheet, out);
        cautions(answer, out);
        out.append("\n## Sources\n\n");
        sheet.sources().forEach(source -> out.append("- ").append(source).append('\n'));
        return out.toString();
    }

    /** The example as it is typed in a shell. */
    public static String command(Worksheet<?, ?> sheet) {
        return "./shimwright calc " + sheet.name() + " "
                + sheet.example().entrySet().stream()
                        .map(entry -> entry.getKey() + "='" + entry.getValue() + "'")
                        .collect(Collectors.joining(" "));
    }

    private static void inputs(List<SheetField> fields, String prefix, StringBuilder out) {
        for (SheetField field : fields) {
            String key = prefix + field.name();
            SheetField leaf = field;
            while (leaf.shape() == Shape.LIST) {
                leaf = leaf.entry();
            }
            boolean list = field.shape() == Shape.LIST;
            String count = list ? field.fewest() + " to " + field.most() + " entries" : "";
            if (leaf.shape() == Shape.RECORD) {
                String order = list ? "each as `" + leaf.order() + "`" : "";
                row(out, List.of("`" + key + "`", field.meaning(), order, count, absent(field)));
                inputs(leaf.children(), list ? key + "[]." : key + ".", out);
            } else {
                String range = count.isEmpty() ? range(leaf) : count + "; " + range(leaf);
                row(out, List.of("`" + key + "`", field.meaning(), unit(leaf), range, absent(field)));
            }
        }
    }

    private static String absent(SheetField field) {
        return field.orElse()
                .filter(text -> !text.isEmpty())
                .map(text -> "`" + text + "`")
                .orElse(field.needed() ? "needed" : "left out");
    }

    private static String unit(SheetField leaf) {
        return switch (leaf.shape()) {
            case QUANTITY, OPTIONAL_QUANTITY -> {
                String metric = leaf.display(UnitSystem.METRIC).unit().symbol();
                String inch = leaf.display(UnitSystem.INCH).unit().symbol();
                yield metric.isEmpty() ? "number" : metric.equals(inch) ? metric : metric + " or " + inch;
            }
            case WHOLE_NUMBER -> "whole number";
            case YES_NO -> "yes or no";
            default -> "text";
        };
    }

    private static String range(SheetField leaf) {
        return switch (leaf.shape()) {
            case QUANTITY, OPTIONAL_QUANTITY, WHOLE_NUMBER ->
                range(leaf.range(), leaf.display(UnitSystem.METRIC).unit());
            case CHOICE -> String.join(", ", leaf.choices());
            default -> "";
        };
    }

    private static String range(Range range, MeasureUnit unit) {
        boolean low = Double.isFinite(range.min());
        boolean high = Double.isFinite(range.max());
        if (low && high) {
            return Quantities.brief(range.min(), unit) + " to " + Quantities.brief(range.max(), unit);
        }
        if (low) {
            return Quantities.brief(range.min(), unit) + " or more";
        }
        return high ? Quantities.brief(range.max(), unit) + " or less" : "any";
    }

    private static void outputs(List<SheetField> fields, String prefix, StringBuilder out) {
        for (SheetField field : fields) {
            SheetField leaf = field;
            while (leaf.shape() == Shape.LIST) {
                leaf = leaf.entry();
            }
            String key = prefix + field.name() + (field.shape() == Shape.LIST ? "[]" : "");
            boolean number = leaf.shape() == Shape.QUANTITY || leaf.shape() == Shape.OPTIONAL_QUANTITY;
            String unit = number ? leaf.display(UnitSystem.METRIC).unit().symbol() : "";
            row(out, List.of("`" + key + "`", field.meaning(), unit));
            if (leaf.shape() == Shape.RECORD) {
                outputs(leaf.children(), key + ".", out);
            }
        }
    }

    private static void working(Answer answer, StringBuilder out) {
        if (answer.working().isEmpty()) {
            return;
        }
        out.append("\n## How it is worked out\n\n| line | formula | here | source |\n|---|---|---|---|\n");
        for (Line line : answer.working()) {
            row(out, List.of(line.symbol(), line.expression(), answer.finely(line), line.source()));
        }
    }

    private static void refusals(Worksheet<?, ?> sheet, StringBuilder out) {
        List<BadInputs.Bad> bad = BadInputs.of(sheet);
        if (bad.isEmpty()) {
            return;
        }
        out.append("\n## What it refuses\n\nThe example, changed:\n\n| change | what it says |\n|---|---|\n");
        for (BadInputs.Bad one : bad) {
            String said = sheet.answer(one.given(), UnitSystem.METRIC).refusals().stream()
                    .map(Refusal::sentence)
                    .filter(sentence -> sentence.contains(one.says()))
                    .findFirst()
                    .orElse("");
            row(out, List.of("`" + one.words() + "`", said));
        }
    }

    private static void cautions(Answer answer, StringBuilder out) {
        out.append("\n## Cautions\n\n");
        if (answer.cautions().isEmpty()) {
            out.append("None with this example; others come with the answer where they apply.\n");
        } else {
            answer.cautions()
                    .forEach(caution -> out.append("- ").append(caution).append('\n'));
        }
    }

    private static void row(StringBuilder out, List<String> cells) {
        List<String> safe = new ArrayList<>();
        cells.forEach(cell -> safe.add(cell.replace("|", "\\|").replace("\n", " ")));
        out.append("| ").append(String.join(" | ", safe)).append(" |\n");
    }
}
