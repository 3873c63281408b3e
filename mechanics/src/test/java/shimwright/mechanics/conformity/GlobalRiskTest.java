package shimwright.mechanics.conformity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;

/** Risks against counting parts one by one, and against the normal distribution at the ends. */
class GlobalRiskTest {
    @Test
    void theRisksAreTheSharesThatAreCounted() {
        SplittableRandom random = new SplittableRandom(11);
        for (double[] c :
                new double[][] {{0.065, 0.010, 0.004, 0.002}, {0.03, 0.004, 0.02, 0}, {0.078, 0.01, 0.0005, 0.001}}) {
            Limits limits = new Limits(0.05, 0.08);
            GlobalRisk risk = new GlobalRisk(c[0], c[1], c[2], limits, c[3]);
            int n = 400_000;
            int consumer = 0;
            int producer = 0;
            for (int i = 0; i < n; i++) {
                double part = c[0] + c[1] * random.nextGaussian();
                double read = part + c[2] * random.nextGaussian();
                boolean accepted = read >= 0.05 + c[3] && read <= 0.08 - c[3];
                consumer += !limits.hold(part) && accepted ? 1 : 0;
                producer += limits.hold(part) && !accepted ? 1 : 0;
            }
            assertThat(risk.consumer()).isCloseTo(consumer / (double) n, within(0.0025));
            assertThat(risk.producer()).isCloseTo(producer / (double) n, within(0.0025));
        }
    }

    /** A fine gauge turns away what the guard covers, P(inside) − P(inside the guards), and passes nothing bad. */
    @Test
    void aFineGaugeLeavesTheGuardAlone() {
        NormalDistribution parts = new NormalDistribution(0.065, 0.01);
        GlobalRisk risk = new GlobalRisk(0.065, 0.01, 1e-5, new Limits(0.05, 0.08), 0.005);
        double covered = parts.probability(0.05, 0.08) - parts.probability(0.055, 0.075);
        assertThat(risk.consumer()).isCloseTo(0, within(1e-12));
        assertThat(risk.producer()).isCloseTo(covered, within(1e-6));
    }

    @Test
    void limitsFarFromAllPartsHoldNoRisk() {
        GlobalRisk risk = new GlobalRisk(0, 0.001, 0.001, new Limits(-1.0, 1.0), 0);
        assertThat(risk.consumer()).isZero();
        assertThat(risk.producer()).isCloseTo(0, within(1e-12));
    }
}
