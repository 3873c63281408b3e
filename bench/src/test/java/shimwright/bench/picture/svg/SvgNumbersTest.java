package shimwright.bench.picture.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Numbers in a drawing against the JDK's decimal arithmetic. */
class SvgNumbersTest {
    private static String byTheJdk(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    @Test
    void areRoundedAsTheJdkRoundsThem() {
        Random random = new Random(20261129);
        for (int i = 0; i < 200_000; i++) {
            double value = random.nextGaussian() * Math.pow(10, random.nextInt(9) - 3);
            assertThat(Svg.n(value)).isEqualTo(byTheJdk(value));
        }
        for (double value : new double[] {0, -0.0, 0.004, -0.004, 0.25, -0.5, 10, 100, -1200, 0.1, 99.999, 3e12}) {
            assertThat(Svg.n(value)).isEqualTo(byTheJdk(value));
        }
        assertThatThrownBy(() -> Svg.n(Double.NaN)).isInstanceOf(IllegalStateException.class);
    }
}
