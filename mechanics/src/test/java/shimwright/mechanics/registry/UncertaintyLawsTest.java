package shimwright.mechanics.registry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.MeasureUnit;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.worksheet.Answer;
import shimwright.mechanics.worksheet.BoundCase;
import shimwright.mechanics.worksheet.SheetField;
import shimwright.mechanics.worksheet.SheetValues;
import shimwright.mechanics.worksheet.Worksheet;

/**
 * A ± is never lost: for each sheet and each number of its example, entries of lists too, what moves with the number
 * carries its uncertainty. The numbers moved are asked of the sheet anew, by hand, not of the propagation under test.
 */
class UncertaintyLawsTest {
    /** Of the number; small, so that no table is read in another row. */
    private static final double SHARE = 1e-4;

    @TestFactory
    Stream<DynamicTest> whateverMovesWithANumberCarriesItsUncertainty() {
        return Registry.all().stream().map(sheet -> DynamicTest.dynamicTest(sheet.name(), () -> law(sheet)));
    }

    private static void law(Worksheet<?, ?> sheet) {
        BoundCase<?> bound = sheet.read(sheet.example(), UnitSystem.METRIC).orElseThrow();
        Map<String, Object> given = record(sheet.inputs(), (Record) bound.value());
        List<List<Object>> leaves = new ArrayList<>();
        leaves(given, List.of(), leaves);
        Map<String, Double> base = numbers(answer(sheet, given).orElseThrow(), "value");
        for (List<Object> leaf : leaves) {
            Typed typed = (Typed) at(given, leaf);
            double value = typed.value();
            double u = SHARE * Math.abs(value);
            Outcome<Answer> doubted = answer(sheet, with(given, leaf, new Typed(typed.unit(), value, u)));
            Outcome<Answer> high = answer(sheet, with(given, leaf, new Typed(typed.unit(), value + u, 0)));
            Outcome<Answer> low = answer(sheet, with(given, leaf, new Typed(typed.unit(), value - u, 0)));
            if (u == 0 || !doubted.isOk() || !high.isOk() || !low.isOk()) {
                continue;
            }
            Answer answer = doubted.orElseThrow();
            Map<String, Double> above = numbers(high.orElseThrow(), "value");
            Map<String, Double> below = numbers(low.orElseThrow(), "value");
            Map<String, Double> carried = numbers(answer, "u");
            Map<String, Double> plain = numbers(answer, "value");
            boolean taken = !plain.equals(base);
            boolean said = answer.cautions().stream()
                    .anyMatch(c -> c.contains("±")
                            || c.startsWith("Within the uncertainty")
                            || c.contains("does not follow a straight line"));
            assertThat(taken || said || carried.values().stream().anyMatch(c -> c > 0))
                    .as("%s %s: its ± is told of", sheet.name(), leaf)
                    .isTrue();
            if (taken
                    || !above.keySet().equals(base.keySet())
                    || !below.keySet().equals(base.keySet())) {
                continue;
            }
            base.forEach((path, middle) -> {
                double difference = Math.abs(above.getOrDefault(path, middle) - below.getOrDefault(path, middle));
                if (difference > 1e-9 * Math.abs(middle) && !said) {
                    assertThat(carried.getOrDefault(path, 0.0))
                            .as("%s: ± of %s at %s", sheet.name(), leaf, path)
                            .isGreaterThan(0);
                }
            });
        }
    }

    private static Outcome<Answer> answer(Worksheet<?, ?> sheet, Map<String, Object> given) {
        Map<String, Object> json = new LinkedHashMap<>();
        given.forEach((key, value) -> json.put(key, json(value)));
        return sheet.answer(json, UnitSystem.METRIC);
    }

    private static Object json(Object value) {
        if (value instanceof Map<?, ?> map) {
            Map<Object, Object> json = new LinkedHashMap<>();
            map.forEach((key, inner) -> json.put(key, json(inner)));
            return json;
        }
        if (value instanceof List<?> list) {
            return list.stream().map(UncertaintyLawsTest::json).toList();
        }
        return value instanceof Typed typed ? typed.json() : value;
    }

    /** A number as typed: in the unit of its field. */
    private record Typed(MeasureUnit unit, double value, double u) {
        Object json() {
            Map<String, Object> json = new LinkedHashMap<>();
            json.put("value", value);
            json.put("unit", unit.symbol());
            if (u > 0) {
                json.put("u", u);
            }
            return json;
        }
    }

    /** What a JSON reader would give for the same case, with {@link Typed} for its numbers. */
    private static Map<String, Object> record(List<SheetField> fields, Record value) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (SheetField field : fields) {
            Object part = SheetValues.of(value, field);
            if (part != null) {
                map.put(field.name(), plain(field, part));
            }
        }
        return map;
    }

    private static Object plain(SheetField field, Object value) {
        if (value instanceof Record inner) {
            return record(field.children(), inner);
        }
        if (value instanceof List<?> list) {
            return list.stream().map(item -> plain(field.entry(), item)).toList();
        }
        if (value instanceof Double number) {
            MeasureUnit unit = field.metric().unit();
            return new Typed(unit, unit.fromSi(number), 0);
        }
        return value instanceof Enum<?> choice ? choice.name() : value;
    }

    private static void leaves(Object value, List<Object> path, List<List<Object>> leaves) {
        if (value instanceof Typed) {
            leaves.add(path);
        } else if (value instanceof Map<?, ?> map) {
            map.forEach((key, inner) -> leaves(inner, longer(path, key), leaves));
        } else if (value instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                leaves(list.get(i), longer(path, i), leaves);
            }
        }
    }

    private static List<Object> longer(List<Object> path, Object step) {
        List<Object> longer = new ArrayList<>(path);
        longer.add(step);
        return List.copyOf(longer);
    }

    private static Object at(Object value, List<Object> path) {
        Object at = value;
        for (Object step : path) {
            Object inner = at instanceof Map<?, ?> map ? map.get(step) : ((List<?>) at).get((Integer) step);
            at = Objects.requireNonNull(inner);
        }
        return at;
    }

    /** The case with one number in place of another. */
    @SuppressWarnings("unchecked")
    private static Map<String, Object> with(Map<String, Object> given, List<Object> leaf, Typed number) {
        return (Map<String, Object>) replaced(given, leaf, 0, number);
    }

    private static Object replaced(Object at, List<Object> leaf, int depth, Object number) {
        if (depth == leaf.size()) {
            return number;
        }
        if (at instanceof Map<?, ?> map) {
            Map<Object, Object> copy = new LinkedHashMap<>(map);
            copy.compute(leaf.get(depth), (key, old) -> replaced(old, leaf, depth + 1, number));
            return copy;
        }
        List<Object> copy = new ArrayList<>((List<?>) at);
        int i = (Integer) leaf.get(depth);
        copy.set(i, replaced(copy.get(i), leaf, depth + 1, number));
        return copy;
    }

    /** The values, or the standard uncertainties beside them, of an answer by path. */
    private static Map<String, Double> numbers(Answer answer, String what) {
        Map<String, Double> numbers = new TreeMap<>();
        collect(answer.json().get("result"), "", what, numbers);
        return numbers;
    }

    private static void collect(@Nullable Object json, String path, String what, Map<String, Double> numbers) {
        if (json instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                collect(list.get(i), path + "[" + i + "]", what, numbers);
            }
        } else if (json instanceof Map<?, ?> map && map.containsKey("text")) {
            if (map.get("value") instanceof Double && map.get(what) instanceof Double number) {
                numbers.put(path, number);
            }
        } else if (json instanceof Map<?, ?> map && !(map.get("parts") instanceof List)) {
            map.forEach((key, inner) -> collect(inner, path + "." + key, what, numbers));
        }
    }
}
