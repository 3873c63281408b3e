package shimwright.rebuild.act;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShopFactsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "begins | 18:30",
                "begins | 7",
                "evening | 2.5",
                "evening | 2 2 2 2 3 6 0",
                "name | x",
                "rate | 60 EUR"
            })
    void whatCanBeUsedIsKept(String fact, String text) {
        assertThat(ShopFacts.faults(Map.of(fact, text))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "begins | 25:99",
                "begins | evening",
                "evening | abc",
                "evening | 2,5",
                "evening | 25",
                "rate | soon",
                "rate | 60 to 70"
            })
    void whatCannotBeUsedIsSaid(String fact, String text) {
        assertThat(ShopFacts.faults(Map.of(fact, text))).isNotEmpty();
    }
}
