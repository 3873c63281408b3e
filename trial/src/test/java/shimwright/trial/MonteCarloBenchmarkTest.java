package shimwright.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** All loops draw the same thing: JCGM 101:2008 9.5, 838 nm and 36 nm. */
class MonteCarloBenchmarkTest {
    @Test
    void theLoopsAgree() {
        MonteCarloBenchmark benchmark = new MonteCarloBenchmark();
        assertThat(benchmark.oneThread()).isEqualTo(benchmark.twoThreads());
        for (double[] found : new double[][] {benchmark.oneThread(), benchmark.plainLoop()}) {
            assertThat(found[0]).isCloseTo(838, within(0.6));
            assertThat(found[1]).isCloseTo(36, within(0.6));
        }
    }
}
