package shimwright.mechanics.registry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.worksheet.Answer;
import shimwright.mechanics.worksheet.Help;
import shimwright.mechanics.worksheet.SheetField;
import shimwright.mechanics.worksheet.Worksheet;

/** What every worksheet owes, whoever wrote it. */
class RegistryTest {
    @TestFactory
    Stream<DynamicTest> everyWorksheetAnswersItsExampleAndExplainsItself() {
        return Registry.all().stream()
                .map(sheet -> DynamicTest.dynamicTest(sheet.name(), () -> {
                    for (UnitSystem system : UnitSystem.values()) {
                        Outcome<Answer> answer = sheet.answer(sheet.example(), UnitSystem.METRIC);
                        assertThat(answer.refusals()).isEmpty();
                        whole(answer.orElseThrow());
                        String help = Help.text(sheet, system);
                        sheet.inputs().forEach(field -> assertThat(help).contains(field.name(), field.meaning()));
                    }
                    assertThat(sheet.sources()).allMatch(source -> !source.isBlank());
                    assertThat(sheet.answer(Map.of(), UnitSystem.METRIC).refusals())
                            .hasSizeGreaterThanOrEqualTo((int) sheet.inputs().stream()
                                    .filter(SheetField::needed)
                                    .count());
                }));
    }

    @Test
    void namesAreUniqueAndFound() {
        assertThat(Registry.all())
                .extracting(Worksheet::name)
                .doesNotHaveDuplicates()
                .isSorted();
        assertThat(Registry.find("end-play")).isPresent();
        assertThat(Registry.find("flux")).isEmpty();
    }

    @TestFactory
    Stream<DynamicTest> everyWorksheetIsDeclaredInOneStyle() {
        return Registry.all().stream()
                .map(sheet -> DynamicTest.dynamicTest(sheet.name(), () -> {
                    Class<?> host = sheet.caseType().getEnclosingClass();
                    assertThat(host).isNotNull();
                    assertThat(sheet.caseType().getSimpleName()).isEqualTo("Case");
                    assertThat(sheet.resultType().getSimpleName()).isEqualTo("Result");
                    assertThat(sheet.resultType().getEnclosingClass()).isSameAs(host);
                    assertThat(host.getField("SHEET").get(null)).isSameAs(sheet);
                }));
    }

    /** How many inputs: enough for every run, or as many as -Dshimwright.fuzz asks for. */
    private static final int FUZZ = Integer.getInteger("shimwright.fuzz", 10_000);

    private static final long SEED = Long.getLong("shimwright.fuzz.seed", 20_260_125L);

    @Test
    void inputsWithinTheirRangesGiveFiniteAnswersOrSentences() {
        Random random = new Random(SEED);
        for (int i = 0; i < FUZZ * 6 / 10; i++) {
            Worksheet<?, ?> sheet = Registry.all().get(i % Registry.all().size());
            Map<String, Object> given = new LinkedHashMap<>();
            for (SheetField field : sheet.inputs()) {
                if (field.needed() || random.nextInt(3) > 0) {
                    given.put(field.name(), RandomInputs.within(field, random));
                }
            }
            answered(sheet, given);
        }
    }

    /** The worked example with one or two inputs changed: most of these are answered, and come near every edge. */
    @Test
    void examplesWithAnInputChangedGiveFiniteAnswersOrSentences() {
        Random random = new Random(SEED);
        for (int i = 0; i < FUZZ * 3 / 10; i++) {
            Worksheet<?, ?> sheet = Registry.all().get(i % Registry.all().size());
            Map<String, Object> given = new LinkedHashMap<>(sheet.example());
            for (int change = random.nextInt(2); change < 2; change++) {
                SheetField field =
                        sheet.inputs().get(random.nextInt(sheet.inputs().size()));
                given.keySet().removeIf(key -> key.startsWith(field.name() + "."));
                given.put(field.name(), RandomInputs.within(field, random));
            }
            answered(sheet, given);
        }
    }

    @Property(tries = 1000)
    void anyTextIsAnsweredOrRefused(@ForAll @Size(max = 5) List<String> texts, @ForAll long seed) {
        Random random = new Random(seed);
        // a tenth of all in a thousand tries
        for (int i = 0; i < Math.max(1, FUZZ / 10_000); i++) {
            Worksheet<?, ?> sheet =
                    Registry.all().get(random.nextInt(Registry.all().size()));
            Map<String, Object> given = new LinkedHashMap<>(sheet.example());
            for (String text : texts) {
                List<SheetField> fields = sheet.inputs();
                given.put(fields.get(random.nextInt(fields.size())).name(), text);
            }
            answered(sheet, given);
        }
    }

    private static void answered(Worksheet<?, ?> sheet, Map<String, Object> given) {
        Outcome<Answer> outcome;
        try {
            outcome = sheet.answer(given, UnitSystem.INCH);
        } catch (RuntimeException bug) {
            throw new AssertionError(sheet.name() + " threw for " + given, bug);
        }
        if (outcome.isOk()) {
            whole(outcome.orElseThrow());
        } else {
            assertThat(outcome.refusals()).isNotEmpty().allSatisfy(refusal -> {
                assertThat(refusal.sentence()).as("%s %s", sheet.name(), given).isNotBlank();
                assertThat(refusal.sentence()).doesNotContain("no finite result");
            });
            assertThat(outcome.refusals()).extracting(Refusal::fact).doesNotContain("");
        }
    }

    private static void whole(Answer answer) {
        assertThat(answer.text()).isNotBlank().doesNotContain("NaN", "Infinity");
        assertThat(answer.shown()).hasSameSizeAs(answer.sheet().outputs());
        assertThat(answer.diagrams()).allMatch(diagram -> !diagram.title().isBlank());
        plain(answer.json(), answer.sheet().name());
        assertThat(answer.json().toString()).doesNotContain("NaN", "Infinity");
    }

    /** Only what a JSON writer knows; no number that JSON cannot hold. */
    private static void plain(@Nullable Object value, String place) {
        if (value instanceof Map<?, ?> map) {
            map.forEach((key, inner) -> plain(inner, place + "." + key));
        } else if (value instanceof List<?> list) {
            list.forEach(inner -> plain(inner, place + "[]"));
        } else if (value instanceof Double number) {
            assertThat(number).as(place).isFinite();
        } else if (value != null) {
            assertThat(value).as(place).isInstanceOfAny(String.class, Boolean.class, Integer.class);
        }
    }
}
