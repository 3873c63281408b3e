package shimwright.mechanics.joints;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import shimwright.mechanics.measure.Budget;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.working.Line;
import shimwright.mechanics.worksheet.Answer;
import shimwright.mechanics.worksheet.Help;
import shimwright.mechanics.worksheet.Shape;
import shimwright.mechanics.worksheet.SheetField;
import shimwright.mechanics.worksheet.Worksheet;

/** What holds for each of these worksheets, whatever it computes. */
class EverySheetTest {
    static Stream<Worksheet<?, ?>> sheets() {
        return JointSheets.MINE.stream();
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void itsExampleIsAnsweredWithWorkingSourcesAndCautions(Worksheet<?, ?> sheet) {
        Answer answer = sheet.answer(sheet.example(), UnitSystem.METRIC).orElseThrow();
        assertThat(answer.working()).isNotEmpty();
        assertThat(answer.cautions()).isNotEmpty();
        assertThat(answer.text()).doesNotContain("NaN", "Infinity", "null");
        assertThat(Help.text(sheet, UnitSystem.METRIC)).contains(sheet.doc(), "Sources");
        assertThat(sheet.answer(sheet.example(), UnitSystem.INCH).orElseThrow().text())
                .doesNotContain("NaN");
    }

    /** The same case typed in other units gives the same numbers. */
    @ParameterizedTest
    @MethodSource("sheets")
    void unitsDoNotMatter(Worksheet<?, ?> sheet) {
        Map<String, String> metric = sheet.example();
        Map<String, String> inch = new LinkedHashMap<>(metric);
        for (SheetField field : sheet.inputs()) {
            String typed = metric.get(field.name());
            boolean number = field.shape() == Shape.QUANTITY || field.shape() == Shape.OPTIONAL_QUANTITY;
            if (typed != null && number && field.kind() != Kind.NUMBER) {
                double si = Quantities.parse(typed, field.kind(), field.metric().unit(), "")
                        .orElseThrow()
                        .si();
                var unit = UnitSystem.INCH.display(field.kind()).unit();
                inch.put(field.name(), unit.fromSi(si) + " " + unit.symbol());
            }
        }
        Map<String, Double> one =
                numbers(sheet.answer(metric, UnitSystem.METRIC).orElseThrow());
        Map<String, Double> two = numbers(sheet.answer(inch, UnitSystem.METRIC).orElseThrow());
        assertThat(two.keySet()).isEqualTo(one.keySet());
        one.forEach((name, value) -> assertThat(Math.abs(two.getOrDefault(name, Double.NaN) - value))
                .as(name)
                .isLessThanOrEqualTo(1e-9 * Math.abs(value) + 1e-15));
    }

    /** Zero uncertainty in gives zero out; some uncertainty in gives some out. */
    @ParameterizedTest
    @MethodSource("sheets")
    void zeroUncertaintyGivesZeroUncertainty(Worksheet<?, ?> sheet) {
        Map<String, String> none = new LinkedHashMap<>();
        Map<String, String> some = new LinkedHashMap<>();
        for (SheetField field : sheet.inputs()) {
            String typed = sheet.example().get(field.name());
            boolean number = field.shape() == Shape.QUANTITY || field.shape() == Shape.OPTIONAL_QUANTITY;
            if (typed != null) {
                none.put(field.name(), number ? typed + " ± 0" : typed);
                some.put(field.name(), number && field.kind() != Kind.NUMBER ? typed + " ± 0.01 %" : typed);
            }
        }
        Answer exact = sheet.answer(none, UnitSystem.METRIC).orElseThrow();
        assertThat(exact.budgets().values()).extracting(Budget::u).allMatch(u -> u == 0);
        // these two answer in lists, which carry no budget
        if (!List.of("bolt-order", "torque-tool").contains(sheet.name())) {
            Answer doubted = sheet.answer(some, UnitSystem.METRIC).orElseThrow();
            assertThat(doubted.budgets().values()).extracting(Budget::u).anyMatch(u -> u > 0);
        }
    }

    /** Anything typed is answered with finite numbers or refused with sentences; nothing throws. */
    @Property(tries = 300)
    void neverNaNNeverThrows(@ForAll long seed) {
        Random random = new Random(seed);
        for (Worksheet<?, ?> sheet : JointSheets.MINE) {
            Map<String, Object> given = new HashMap<>(sheet.example());
            for (SheetField field : sheet.inputs()) {
                int choice = random.nextInt(10);
                if (choice == 0) {
                    given.remove(field.name());
                } else if (choice <= 3) {
                    given.put(field.name(), typed(field, random));
                }
            }
            Outcome<Answer> outcome = sheet.answer(given, UnitSystem.METRIC);
            if (outcome.isOk()) {
                Answer answer = outcome.orElseThrow();
                assertThat(answer.text()).doesNotContain("NaN", "Infinity");
                assertThat(answer.working()).extracting(Line::value).allMatch(Double::isFinite);
            } else {
                assertThat(outcome.refusals())
                        .allSatisfy(r -> assertThat(r.sentence()).isNotBlank());
            }
        }
    }

    private static Object typed(SheetField field, Random random) {
        return switch (field.shape()) {
            case QUANTITY, OPTIONAL_QUANTITY -> {
                double min = Math.max(field.range().min(), -1e3);
                double max = Math.min(field.range().max(), 1e6);
                double share = random.nextInt(4) == 0 ? random.nextInt(2) : Math.pow(random.nextDouble(), 4);
                double si = Math.min(max, Math.max(min, min + share * (max - min)));
                yield field.metric().unit().fromSi(si) + " "
                        + field.metric().unit().symbol();
            }
            case WHOLE_NUMBER -> random.nextInt(14) - 1;
            case YES_NO -> random.nextBoolean();
            case CHOICE -> {
                Object[] choices = field.type().getEnumConstants();
                yield choices[random.nextInt(choices.length)].toString();
            }
            case LIST -> list(field, random);
            default -> List.of("", "8.8", "grade 5", "A380", "x").get(random.nextInt(5));
        };
    }

    private static Object list(SheetField field, Random random) {
        List<Object> items = new ArrayList<>();
        for (int i = random.nextInt(6); i > 0; i--) {
            if (field.entry().shape() == Shape.RECORD) {
                Map<String, Object> parts = new LinkedHashMap<>();
                field.entry().children().forEach(child -> parts.put(child.name(), typed(child, random)));
                items.add(parts);
            } else {
                items.add(typed(field.entry(), random));
            }
        }
        return items;
    }

    private static Map<String, Double> numbers(Answer answer) {
        Map<String, Double> numbers = new LinkedHashMap<>();
        ((Map<?, ?>) requireNonNull(answer.json().get("result"))).forEach((name, found) -> {
            if (found instanceof Map<?, ?> map && map.get("value") instanceof Double value) {
                numbers.put(String.valueOf(name), value);
            }
        });
        return numbers;
    }
}
