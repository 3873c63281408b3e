package shimwright.bench.web.kit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeldTest {
    @ParameterizedTest
    @CsvSource({
        "'', ''",
        "dark.left.gloves.aloud.silent.awake.pedal-F8, dark.left.gloves.aloud.silent.awake.pedal-F8",
        "pedal-PageDown.bright, bright.pedal-PageDown",
        "purple.pedal-<x>.left.., left",
        "words-de.pedal-F8, pedal-F8.words-de",
        "words-xx.left, left",
        "pedal-, ''"
    })
    void whatIsKeptIsReadAgainAndWhatIsNotOursIsPassedOver(String kept, String again) {
        assertThat(Held.of(kept).kept()).isEqualTo(again);
        assertThat(Held.of(Held.of(kept).kept())).isEqualTo(Held.of(kept));
    }
}
