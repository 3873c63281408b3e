package shimwright.mechanics.registry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.decision.SeriesStatistics;
import shimwright.mechanics.quantity.UnitSystem;

/** NIST Statistical Reference Datasets, univariate: certified values of NumAcc1 and NumAcc2 (from memory, by construction). */
class SeriesStatisticsTest {
    private static SeriesStatistics.Result of(String readings, String... more) {
        Map<String, String> given = more.length == 0
                ? Map.of("readings", readings)
                : Map.of("readings", readings, more[0], more[1], more[2], more[3]);
        return (SeriesStatistics.Result) SeriesStatistics.SHEET
                .answer(given, UnitSystem.METRIC)
                .orElseThrow()
                .result();
    }

    @Test
    void certifiedValuesAreMet() {
        SeriesStatistics.Result one = of("10000001 10000003 10000002");
        assertThat(one.mean()).isEqualTo(10_000_002);
        assertThat(one.deviation()).isEqualTo(1);
        assertThat(one.autocorrelation()).isEqualTo(-0.5);
        StringBuilder two = new StringBuilder("1.2");
        for (int i = 0; i < 500; i++) {
            two.append(" 1.1 1.3");
        }
        SeriesStatistics.Result result = of(two.toString());
        assertThat(result.count()).isEqualTo(1001);
        assertThat(result.mean()).isCloseTo(1.2, within(1e-14));
        assertThat(result.deviation()).isCloseTo(0.1, within(1e-13));
        assertThat(result.autocorrelation()).isCloseTo(-0.999, within(1e-12));
    }

    @Test
    void moreReadingsAreAskedForWhereTheyWouldProve() {
        assertThat(of("0.081 0.095 0.094", "lower", "0.05", "upper", "0.1").advice())
                .contains("more readings");
        assertThat(of("0.0745 0.075 0.0755", "lower", "0.05", "upper", "0.1").advice())
                .contains("Proven");
        assertThat(of("0.11 0.12 0.13", "lower", "0.05", "upper", "0.1").advice())
                .contains("outside");
    }
}
