package shimwright.mechanics.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A row that copies its answer from what was typed proves nothing; one that works it out does. */
class TypedRowTest {
    private static TypedRow row(String inputs, String expected, boolean product) {
        return new TypedRow(inputs, expected, Map.of("inputs", inputs), given -> {
            String[] parts = given.getOrDefault("inputs", "").split("; ");
            double first = Double.parseDouble(parts[0].substring(2));
            return OptionalDouble.of(product ? first * Double.parseDouble(parts[1].substring(2)) : first);
        });
    }

    @Test
    void aCopyIsCircularAndAProductIsNot() {
        assertThat(row("a=5; b=2", "5", false).circular()).isTrue();
        assertThat(row("a=5; b=2", "10", true).circular()).isFalse();
        assertThat(row("a=5; b=1.01", "5.05", true).circular()).isFalse();
    }
}
