package shimwright.mechanics.gears;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.UnitSystem;

/** Bad inputs of {@code refusals.txt}: the worksheet's example with something wrong, and what the sentence must say. */
class RefusalsTest {
    @TestFactory
    Stream<DynamicTest> badInputIsRefusedWithASentence() {
        return Bench.resource("/gears/refusals.txt").stream().map(line -> {
            String[] parts = line.split("\\s*::\\s*", -1);
            return DynamicTest.dynamicTest(line, () -> {
                Map<String, String> inputs =
                        new LinkedHashMap<>(Bench.sheet(parts[0]).example());
                Bench.inputs(parts[1]).forEach((key, value) -> {
                    if (value.equals("-")) {
                        inputs.remove(key);
                    } else {
                        inputs.put(key, value);
                    }
                });
                List<String> sentences = Bench.sheet(parts[0]).answer(inputs, UnitSystem.METRIC).refusals().stream()
                        .map(Refusal::sentence)
                        .toList();
                assertThat(sentences).as(line).isNotEmpty();
                assertThat(String.join(" ", sentences)).contains(parts[2]);
                assertThat(sentences)
                        .allSatisfy(sentence -> assertThat(sentence).matches(".*[.?]"));
            });
        });
    }

    @Test
    void everySheetHasAtLeastFive() {
        Map<String, Long> counts = Bench.resource("/gears/refusals.txt").stream()
                .collect(Collectors.groupingBy(line -> line.split("\\s*::", 2)[0], Collectors.counting()));
        assertThat(counts.keySet()).containsExactlyInAnyOrderElementsOf(AnySheetTest.NAMES);
        assertThat(counts.values()).allMatch(count -> count >= 5);
    }
}
