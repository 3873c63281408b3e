package shimwright.rebuild.money;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LabourTest {
    @ParameterizedTest
    @CsvSource({"60 EUR", "EUR 60", "60", "'72,50 CHF'", "€ 62.5"})
    void aRateHasOneNumber(String rate) {
        assertThat(Rate.of(rate)).isPresent();
    }

    @ParameterizedTest
    @CsvSource({"soon", "60 to 70 EUR", "''"})
    void anythingElseIsNone(String rate) {
        assertThat(Rate.of(rate)).isEmpty();
    }
}
