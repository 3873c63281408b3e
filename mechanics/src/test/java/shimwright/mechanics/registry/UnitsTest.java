package shimwright.mechanics.registry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import shimwright.mechanics.quantity.MeasureUnit;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.worksheet.Answer;
import shimwright.mechanics.worksheet.Shape;
import shimwright.mechanics.worksheet.SheetField;
import shimwright.mechanics.worksheet.SheetValues;
import shimwright.mechanics.worksheet.Worksheet;

/** Every worksheet, without exception: the worked example typed in inch units, lists and records too, answers the same. */
class UnitsTest {
    @TestFactory
    Stream<DynamicTest> unitsDoNotMatter() {
        return Registry.all().stream().map(sheet -> DynamicTest.dynamicTest(sheet.name(), () -> same(sheet)));
    }

    /** Every number of the example given as ± 0: the answer is the same and nothing is uncertain. */
    @TestFactory
    Stream<DynamicTest> noUncertaintyInIsNoUncertaintyOut() {
        return Registry.all().stream()
                .map(sheet -> DynamicTest.dynamicTest(sheet.name(), () -> {
                    Object read = sheet.read(sheet.example(), UnitSystem.METRIC)
                            .orElseThrow()
                            .value();
                    Map<String, Object> plain = typed(sheet.inputs(), read, UnitSystem.METRIC);
                    Map<String, Object> sure = new LinkedHashMap<>(plain);
                    sure.replaceAll((key, value) -> surely(value));
                    assertThat(sure).isNotEqualTo(plain);
                    Answer one = sheet.answer(plain, UnitSystem.METRIC).orElseThrow();
                    Answer two = sheet.answer(sure, UnitSystem.METRIC).orElseThrow();
                    assertThat(two.budgets().values()).allMatch(budget -> budget.u() == 0);
                    assertThat(flat(two)).isEqualTo(flat(one));
                }));
    }

    /** Only quantities are texts that begin with a digit and hold a blank. */
    private static Object surely(Object value) {
        if (value instanceof List<?> list) {
            return list.stream().map(UnitsTest::surely).toList();
        }
        if (value instanceof Map<?, ?> map) {
            Map<Object, Object> sure = new LinkedHashMap<>();
            map.forEach((key, inner) -> sure.put(key, surely(inner)));
            return sure;
        }
        return value instanceof String text && text.matches("-?\\d[\\d.E-]* .*") ? text.strip() + " ± 0" : value;
    }

    private static void same(Worksheet<?, ?> sheet) {
        Object read =
                sheet.read(sheet.example(), UnitSystem.METRIC).orElseThrow().value();
        Map<String, Object> metric = typed(sheet.inputs(), read, UnitSystem.METRIC);
        Map<String, Object> inch = typed(sheet.inputs(), read, UnitSystem.INCH);
        if (metric.toString().matches("(?s).* (mm|N|N·m|MPa|L|°C|kg)[,}\\]].*")) {
            assertThat(inch).isNotEqualTo(metric);
        }
        Map<String, Object> one = flat(sheet.answer(metric, UnitSystem.METRIC).orElseThrow());
        Map<String, Object> two = flat(sheet.answer(inch, UnitSystem.METRIC).orElseThrow());
        assertThat(two.keySet()).isEqualTo(one.keySet());
        one.forEach((place, value) -> {
            if (value instanceof Double number) {
                double found = (Double) two.getOrDefault(place, Double.NaN);
                assertThat(Math.abs(found - number)).as(place).isLessThanOrEqualTo(1e-7 * Math.abs(number) + 1e-12);
            } else {
                assertThat(two.get(place)).as(place).isEqualTo(value);
            }
        });
    }

    private static Map<String, Object> typed(List<SheetField> fields, Object record, UnitSystem system) {
        Map<String, Object> typed = new LinkedHashMap<>();
        for (SheetField field : fields) {
            Object value = SheetValues.of(record, field);
            if (value != null) {
                typed.put(field.name(), typed(field, value, system));
            }
        }
        return typed;
    }

    private static Object typed(SheetField field, Object value, UnitSystem system) {
        if (value instanceof List<?> list) {
            List<Object> items = new ArrayList<>();
            for (Object item : list) {
                items.add(typed(field.entry(), item, system));
            }
            return items;
        }
        if (field.shape() == Shape.RECORD) {
            return typed(field.children(), value, system);
        }
        if (value instanceof Double si) {
            MeasureUnit unit = field.display(system).unit();
            return unit.fromSi(si) + " " + unit.symbol();
        }
        return value instanceof Enum<?> choice ? choice.name() : value;
    }

    /** Numbers and choices by place; words may be told in the units of the reader. */
    private static Map<String, Object> flat(Answer answer) {
        Map<String, Object> flat = new LinkedHashMap<>();
        flat(answer.json().get("result"), "", flat);
        return flat;
    }

    private static void flat(@Nullable Object value, String place, Map<String, Object> flat) {
        if (value instanceof Map<?, ?> map && map.containsKey("text")) {
            Object inner = map.get("value");
            if (inner instanceof Double || inner instanceof Integer || inner instanceof Boolean) {
                flat.put(place, inner);
            }
        } else if (value instanceof Map<?, ?> map) {
            map.forEach((key, inner) -> flat(inner, place + "." + key, flat));
        } else if (value instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                flat(list.get(i), place + "[" + i + "]", flat);
            }
        }
    }
}
