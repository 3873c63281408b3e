package shimwright.mechanics.registry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.UnitSystem;

/** Every worksheet refuses at least five bad inputs, each with a sentence that says the fact. */
class BadInputsTest {
    @TestFactory
    Stream<DynamicTest> everyBadInputIsRefusedWithItsSentence() {
        return Registry.all().stream()
                .map(sheet -> DynamicTest.dynamicTest(sheet.name(), () -> {
                    List<BadInputs.Bad> all = BadInputs.of(sheet);
                    assertThat(all).as("bad inputs of " + sheet.name()).hasSizeGreaterThanOrEqualTo(5);
                    for (BadInputs.Bad bad : all) {
                        List<Refusal> refusals =
                                sheet.answer(bad.given(), UnitSystem.METRIC).refusals();
                        assertThat(refusals)
                                .as(sheet.name() + ": " + bad.words())
                                .extracting(Refusal::sentence)
                                .anyMatch(sentence -> sentence.contains(bad.says()))
                                .allMatch(sentence -> sentence.matches("(?s).*[.?!]"))
                                .noneMatch(sentence -> sentence.matches("(?s).*(NaN|Infinity|Exception|null).*"));
                        // a wrong kind says what is needed in the fact itself
                        assertThat(refusals)
                                .as("hints of " + sheet.name() + ": " + bad.words())
                                .allMatch(one -> !one.hint().isBlank()
                                        || one.fact().matches("(?s).*(is needed here|needs|below|above).*"));
                    }
                }));
    }
}
