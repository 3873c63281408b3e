package shimwright.mechanics.joints;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every published value of {@code checks/joints.csv}, its source beside it, met by the worksheet that answers it. */
class JointsCsvTest {
    private static final List<Binding> BINDINGS = Binding.all();
    private static final Map<String, String> LISTED = Binding.lines("listed.txt").stream()
            .map(line -> line.split("\\s*\\|\\s*", 2))
            .collect(Collectors.toMap(parts -> parts[0], parts -> parts[1]));

    @Test
    void everyRowIsBoundOrListedAndNothingElseIs() {
        List<String> ids = JointRow.all().stream().map(JointRow::id).toList();
        List<String> answered = Stream.concat(
                        BINDINGS.stream()
                                .flatMap(binding -> binding.ids().stream())
                                .distinct(),
                        LISTED.keySet().stream())
                .toList();
        assertThat(answered).containsExactlyInAnyOrderElementsOf(ids);
    }

    @TestFactory
    Stream<DynamicTest> isMetToItsTolerance() {
        return JointRow.all().stream()
                .filter(row -> !LISTED.containsKey(row.id()))
                .flatMap(row -> BINDINGS.stream()
                        .filter(binding -> binding.ids().contains(row.id()))
                        .map(binding -> DynamicTest.dynamicTest(
                                row.id() + " " + binding.sheet() + " [" + row.source() + "]",
                                () -> met(row, binding.answer(row)))));
    }

    private static void met(JointRow row, Object answer) {
        if (!(answer instanceof Double number)) {
            System.out.println(row.id() + ": " + answer + " [" + row.source() + "]");
            assertThat(answer).as(row.quantity()).isEqualTo(row.expected());
            return;
        }
        double deviation = number - Double.parseDouble(row.expected());
        System.out.printf(
                "%s: %s %s, off by %.3g of %.3g [%s]%n",
                row.id(), row.expected(), row.unit(), deviation, row.allowed(), row.source());
        // a printed tolerance of 0 means equal as printed; what binary arithmetic leaves is no deviation
        assertThat(Math.abs(deviation))
                .as(row.id() + ": " + row.quantity())
                .isLessThanOrEqualTo(row.allowed() + 1e-12 * Math.abs(number));
    }
}
