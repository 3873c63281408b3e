package shimwright.mechanics.worksheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.measure.DrawSummary;
import shimwright.mechanics.measure.FirstOrderCheck;
import shimwright.mechanics.measure.Interval;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.UnitSystem;

/** Turns draws into data and words. */
record RenderDraws(Worksheet<?, ?> sheet, Simulation draws, UnitSystem system) {
    Map<String, Object> json() {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("draws", draws.draws());
        json.put("refused", draws.refused());
        json.put("seed", String.valueOf(draws.sampling().seed()));
        json.put("coverage", draws.sampling().coverage());
        json.put("settled", draws.settled());
        Map<String, Object> outputs = new LinkedHashMap<>();
        for (String output : inOrder()) {
            outputs.put(output, json(output));
        }
        json.put("outputs", outputs);
        json.put("choices", draws.choices());
        return json;
    }

    private Map<String, Object> json(String output) {
        DrawSummary one = sampled(output);
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("unit", Fields.at(sheet.outputs(), output).kind().siSymbol());
        json.put("mean", one.mean());
        json.put("u", one.u());
        json.put("shortest", ends(one.shortest()));
        json.put("symmetric", ends(one.symmetric()));
        json.put(
                "errors",
                List.of(
                        one.errors().mean(),
                        one.errors().u(),
                        one.errors().low(),
                        one.errors().high()));
        FirstOrderCheck check = draws.checks().get(output);
        if (check != null) {
            json.put("firstOrder", ends(check.firstOrder()));
            json.put("firstOrderHolds", check.holds());
        }
        return json;
    }

    private DrawSummary sampled(String output) {
        DrawSummary one = draws.outputs().get(output);
        if (one == null) {
            throw new IllegalArgumentException("no draws of " + output);
        }
        return one;
    }

    private static List<Double> ends(Interval interval) {
        return List.of(interval.low(), interval.high());
    }

    private List<String> inOrder() {
        List<String> order = new ArrayList<>();
        collect(sheet.outputs(), "", order);
        order.retainAll(draws.outputs().keySet());
        return order;
    }

    private void collect(List<SheetField> fields, String prefix, List<String> order) {
        for (SheetField field : fields) {
            order.add(prefix + field.name());
            if (field.shape() == Shape.RECORD) {
                collect(field.children(), prefix + field.name() + ".", order);
            }
            String list = prefix + field.name() + "[";
            for (int entry : entries(list)) {
                order.add(list + entry + "]");
                collect(field.entry().children(), list + entry + "].", order);
            }
        }
    }

    /** Places of the entries of a list that were drawn, in order. */
    private List<Integer> entries(String list) {
        return draws.outputs().keySet().stream()
                .filter(path -> path.startsWith(list))
                .map(path -> Integer.valueOf(path.substring(list.length(), path.indexOf(']', list.length()))))
                .distinct()
                .sorted()
                .toList();
    }

    /** {@code axial, + to the rear (gears 2)}: the entry counted from 1. */
    private static String label(SheetField field, String path) {
        int open = path.indexOf('[');
        if (open < 0) {
            return field.meaning();
        }
        int entry = Integer.parseInt(path.substring(open + 1, path.indexOf(']'))) + 1;
        return field.meaning() + " (" + path.substring(0, open) + " " + entry + ")";
    }

    void text(StringBuilder out) {
        out.append('\n');
        List<String> lines = lines();
        for (int i = 0; i < lines.size(); i++) {
            out.append(i == 0 ? "" : "  ").append(lines.get(i)).append('\n');
        }
    }

    /** How it was drawn, then a line for each uncertain result and each choice. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add("Monte Carlo, " + draws.draws() + " draws, seed "
                + draws.sampling().seed());
        for (String output : inOrder()) {
            DrawSummary one = sampled(output);
            if (one.u() == 0) {
                continue;
            }
            SheetField field = Fields.at(sheet.outputs(), output);
            UnitSystem.Display display = field.display(system);
            lines.add(label(field, output) + ": "
                    + Quantities.print(one.mean(), one.u(), display.unit(), display.decimals())
                    + ", " + percent(draws.sampling().coverage()) + " between "
                    + Quantities.print(one.shortest().low(), display.unit(), decimals(one, display))
                    + " and "
                    + Quantities.print(one.shortest().high(), display.unit(), decimals(one, display))
                    + agreement(draws.checks().get(output)));
        }
        draws.choices().forEach((name, shares) -> {
            List<String> words = new ArrayList<>();
            shares.forEach((word, share) -> words.add(word + " in " + percent(share)));
            lines.add(Fields.at(sheet.outputs(), name).meaning() + ": " + String.join(", ", words));
        });
        return lines;
    }

    private static String agreement(@Nullable FirstOrderCheck check) {
        return check == null ? "" : check.holds() ? "; the simple rule agrees" : "; the simple rule does not hold";
    }

    /** As many as two digits of u need. */
    private static int decimals(DrawSummary one, UnitSystem.Display display) {
        return Math.max(
                0, 1 - (int) Math.floor(Math.log10(one.u() / display.unit().factor())));
    }

    private static String percent(double share) {
        long tenths = Math.round(1000 * share);
        return (tenths % 10 == 0 ? String.valueOf(tenths / 10) : String.valueOf(tenths / 10.0)) + " %";
    }
}
