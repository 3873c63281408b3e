package shimwright.mechanics.conformity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.measure.Quadrature;
import shimwright.mechanics.measure.Student;

class JointConformityTest {
    private static double phi(double x) {
        return Student.cumulative(x, Double.POSITIVE_INFINITY);
    }

    private static Limits[] limits(int n, double low, double high) {
        Limits[] limits = new Limits[n];
        Arrays.fill(limits, new Limits(low, high));
        return limits;
    }

    @Test
    void whatSharesNothingMultiplies() {
        double[][] apart = {{1, 0}, {0, 4}};
        assertThat(JointConformity.probability(new double[] {0, 0.5}, apart, limits(2, -1, 2)))
                .isEqualTo((phi(2) - phi(-1)) * (phi(0.75) - phi(-0.75)), within(1e-12));
    }

    /** Both above their mean: 1/4 + asin(ρ)/2π (W. F. Sheppard, 1899; in every handbook of statistics). */
    @Test
    void twoAboveTheirMeans() {
        for (double rho : new double[] {-0.9, -0.3, 0.1, 0.5, 0.95}) {
            double[][] covariance = {{1, rho}, {rho, 1}};
            assertThat(JointConformity.probability(new double[2], covariance, limits(2, 0, 40)))
                    .as("%s", rho)
                    .isEqualTo(0.25 + Math.asin(rho) / (2 * Math.PI), within(JointConformity.TOLERANCE));
        }
    }

    /** One error shared by all: given that error the others are independent, which leaves one integral. */
    @Test
    void oneSharedErrorIsOneIntegral() {
        Random random = new Random(7);
        for (int trial = 0; trial < 60; trial++) {
            int n = 2 + random.nextInt(7);
            double shared = random.nextDouble() * 1.5;
            double[] own = random.doubles(n, 0.2, 1.2).toArray();
            double[] values = random.doubles(n, -0.8, 0.8).toArray();
            double[] by = random.doubles(n, -1, 1).toArray();
            double half = 1 + 2 * random.nextDouble();
            double[][] covariance = new double[n][n];
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    covariance[i][j] = by[i] * by[j] * shared * shared + (i == j ? own[i] * own[i] : 0);
                }
            }
            double exact = Quadrature.integral(
                    z -> {
                        double product = Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
                        for (int i = 0; i < n; i++) {
                            double at = values[i] + by[i] * shared * z;
                            product *= phi((half - at) / own[i]) - phi((-half - at) / own[i]);
                        }
                        return product;
                    },
                    -8,
                    8,
                    16);
            assertThat(JointConformity.probability(values, covariance, limits(n, -half, half)))
                    .as("trial %d", trial)
                    .isEqualTo(exact, within(JointConformity.TOLERANCE));
        }
    }

    @Test
    void whatIsWhollySharedIsInOrOutTogether() {
        double[][] same = {{1, 1, 1}, {1, 1, 1}, {1, 1, 1}};
        assertThat(JointConformity.probability(new double[3], same, limits(3, -1, 1)))
                .isEqualTo(phi(1) - phi(-1), within(JointConformity.TOLERANCE));
    }

    @Test
    void theTableSaysWhatTheFunctionSays() {
        for (double z = -9; z < 9; z += 0.00173) {
            assertThat(NormalTable.below(z)).isEqualTo(phi(z), within(1e-11));
            if (Math.abs(z) < 7) {
                assertThat(NormalTable.below(NormalTable.quantile(phi(z)))).isEqualTo(phi(z), within(1e-9));
            }
        }
    }
}
