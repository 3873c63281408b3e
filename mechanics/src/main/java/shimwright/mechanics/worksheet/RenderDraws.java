package shimwright.mechanics.worksheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.measure.FirstOrderCheck;
import shimwright.mechanics.measure.Interval;
import shimwright.mechanics.measure.Sampled;
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
        Sampled one = sampled(output);
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

    private Sampled sampled(String output) {
        Sampled one = draws.outputs().get(output);
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

    private static void collect(List<Field> fields, String prefix, List<String> order) {
        for (Field field : fields) {
            order.add(prefix + field.name());
            if (field.shape() == Shape.RECORD) {
                collect(field.children(), prefix + field.name() + ".", order);
            }
        }
    }

    void text(StringBuilder out) {
        out.append("\nMonte Carlo, ")
                .append(draws.draws())
                .append(" draws, seed ")
                .append(draws.sampling().seed())
                .append('\n');
        for (String output : inOrder()) {
            Sampled one = sampled(output);
            if (one.u() == 0) {
                continue;
            }
            Field field = Fields.at(sheet.outputs(), output);
            UnitSystem.Display display = field.display(system);
            out.append("  ")
                    .append(field.meaning())
                    .append(": ")
                    .append(Quantities.print(one.mean(), one.u(), display.unit(), display.decimals()))
                    .append(", ")
                    .append(percent(draws.sampling().coverage()))
                    .append(" between ")
                    .append(Quantities.print(one.shortest().low(), display.unit(), decimals(one, display)))
                    .append(" and ")
                    .append(Quantities.print(one.shortest().high(), display.unit(), decimals(one, display)))
                    .append(agreement(draws.checks().get(output)))
                    .append('\n');
        }
        draws.choices().forEach((name, shares) -> {
            out.append("  ").append(Fields.at(sheet.outputs(), name).meaning()).append(": ");
            List<String> words = new ArrayList<>();
            shares.forEach((word, share) -> words.add(word + " in " + percent(share)));
            out.append(String.join(", ", words)).append('\n');
        });
    }

    private static String agreement(@Nullable FirstOrderCheck check) {
        return check == null ? "" : check.holds() ? "; the simple rule agrees" : "; the simple rule does not hold";
    }

    /** As many as two digits of u need. */
    private static int decimals(Sampled one, UnitSystem.Display display) {
        return Math.max(
                0, 1 - (int) Math.floor(Math.log10(one.u() / display.unit().factor())));
    }

    private static String percent(double share) {
        return Math.round(1000 * share) / 10.0 + " %";
    }
}
