package shimwright.rebuild.act;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Units;

/** Readings as people write them one behind the other. */
class TypedReadingsTest {
    @ParameterizedTest
    @CsvSource({
        "'0.30 0.25', 0.3 0.25",
        "'0.30, 0.25', 0.3 0.25",
        "'0,30, 0,25, 0,2', 0.3 0.25 0.2",
        "'0.30; 0.25', 0.3 0.25",
        "'0,30', 0.3",
        "'0.012 in, 0.25', slip",
        "'12, 13', 12.0 13.0",
    })
    void aCommaWithABlankPartsTwo(String typed, String values) {
        var read = TypedReadings.parse(typed, Kind.LENGTH, Units.MM, "shims");
        String said = read.isOk()
                ? String.join(
                        " ",
                        read.orElseThrow().stream()
                                .map(value -> String.valueOf(Math.round(value * 1e6) / 1e3))
                                .toList())
                : "slip";
        assertThat(said).isEqualTo(values);
    }
}
