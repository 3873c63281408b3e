package shimwright.mechanics.gears;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.worksheet.Answer;
import shimwright.mechanics.worksheet.Help;
import shimwright.mechanics.worksheet.Shape;
import shimwright.mechanics.worksheet.SheetField;
import shimwright.mechanics.worksheet.Worksheet;

/** What holds for every worksheet of this part: its example works, and nothing within its ranges breaks it. */
class AnySheetTest {
    static final List<String> NAMES = List.of(
            "involute",
            "tooth-thickness",
            "over-pins",
            "between-pins",
            "span",
            "spline-rework",
            "spline-tolerance",
            "spline-strength",
            "gear-pair",
            "backlash",
            "ratios",
            "turn-count",
            "road-speed",
            "bevel-slopes",
            "crown-shift",
            "pinion-depth",
            "shaft-forces",
            "mesh-forces",
            "bearing-life",
            "taper-pair",
            "rating-needed",
            "ring-reserve",
            "synchro-capacity",
            "cone-force");

    @TestFactory
    Stream<DynamicTest> theExampleOfTheHelpWorks() {
        return NAMES.stream()
                .map(name -> DynamicTest.dynamicTest(name, () -> {
                    Worksheet<?, ?> sheet = SheetCalls.sheet(name);
                    Outcome<Answer> outcome = sheet.answer(sheet.example(), UnitSystem.METRIC);
                    assertThat(outcome.refusals()).isEmpty();
                    Answer answer = outcome.orElseThrow();
                    assertThat(answer.working()).isNotEmpty();
                    assertThat(answer.text()).doesNotContain("NaN").doesNotContain("Infinity");
                    assertThat(answer.json()).containsKeys("worksheet", "result", "working", "cautions");
                    assertThat(Help.text(sheet, UnitSystem.INCH)).contains("Sources");
                }));
    }

    @TestFactory
    Stream<DynamicTest> withoutUncertaintyInThereIsNoneOut() {
        return NAMES.stream()
                .map(name -> DynamicTest.dynamicTest(name, () -> {
                    Worksheet<?, ?> sheet = SheetCalls.sheet(name);
                    Answer answer =
                            sheet.answer(sheet.example(), UnitSystem.METRIC).orElseThrow();
                    assertThat(answer.budgets()).isEmpty();
                }));
    }

    @Property(tries = 1500)
    void nothingWithinTheRangesBreaksASheet(@ForAll long seed) {
        Random random = new Random(seed);
        Worksheet<?, ?> sheet = SheetCalls.sheet(NAMES.get(random.nextInt(NAMES.size())));
        Map<String, Object> inputs = new LinkedHashMap<>();
        for (SheetField field : sheet.inputs()) {
            Object value = value(field, random, false);
            if (value != null) {
                inputs.put(field.name(), value);
            }
        }
        Outcome<Answer> outcome = sheet.answer(inputs, UnitSystem.METRIC);
        Statistics.collect(outcome.isOk() ? "computed" : "refused");
        if (outcome.isOk()) {
            String text = outcome.orElseThrow().text();
            assertThat(text)
                    .as("%s %s", sheet.name(), inputs)
                    .doesNotContain("NaN")
                    .doesNotContain("Infinity");
            outcome.orElseThrow()
                    .working()
                    .forEach(line -> assertThat(line.value())
                            .as("%s of %s", line.symbol(), sheet.name())
                            .isFinite());
        } else {
            assertThat(outcome.refusals())
                    .as("%s %s", sheet.name(), inputs)
                    .noneMatch(refusal -> refusal.fact().contains("no finite result"));
        }
    }

    private static @Nullable Object value(SheetField field, Random random, boolean inside) {
        int dice = random.nextInt(10);
        if (dice < 5 && !inside) {
            return field.example().isEmpty() ? null : field.example();
        }
        if (!field.needed() && random.nextBoolean()) {
            return null;
        }
        return switch (field.shape()) {
            case QUANTITY, OPTIONAL_QUANTITY -> quantity(field, random);
            case WHOLE_NUMBER -> (int) Math.rint(number(field, random));
            case YES_NO -> random.nextBoolean();
            case CHOICE ->
                field.type()
                        .getEnumConstants()[random.nextInt(field.type().getEnumConstants().length)]
                        .toString();
            case TEXT -> field.example().isEmpty() ? "x" + random.nextInt(100) : field.example();
            case LIST -> list(field, random);
            case RECORD, BUDGET -> throw new IllegalStateException("no such input here");
        };
    }

    private static Object list(SheetField field, Random random) {
        List<Object> items = new ArrayList<>();
        int count = Math.min(field.most(), 1 + random.nextInt(4));
        for (int i = 0; i < count; i++) {
            if (field.entry().shape() != Shape.RECORD) {
                items.add(quantity(field.entry(), random));
                continue;
            }
            Map<String, Object> record = new LinkedHashMap<>();
            for (SheetField child : field.entry().children()) {
                Object value = value(child, random, true);
                if (value != null) {
                    record.put(child.name(), value);
                }
            }
            items.add(record);
        }
        return items;
    }

    private static Object quantity(SheetField field, Random random) {
        Map<String, Object> quantity = new LinkedHashMap<>();
        quantity.put("value", number(field, random));
        quantity.put("unit", field.kind().siSymbol());
        return quantity;
    }

    private static double number(SheetField field, Random random) {
        double min = Math.max(field.range().min(), -1e9);
        double max = Math.min(field.range().max(), 1e9);
        double value = switch (random.nextInt(6)) {
            case 0 -> min;
            case 1 -> max;
            case 2 -> min + random.nextDouble() * (max - min);
            default -> {
                double low = Math.max(min, 1e-7 * Math.max(max, 1e-9));
                yield low * Math.pow(max / low, random.nextDouble());
            }
        };
        return Math.max(min, Math.min(max, value));
    }
}
