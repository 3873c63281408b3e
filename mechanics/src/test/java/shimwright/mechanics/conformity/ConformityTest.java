package shimwright.mechanics.conformity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class ConformityTest {
    private static final double INF = Double.POSITIVE_INFINITY;
    private static final Limits BAND = new Limits(0.05, 0.10);

    @Test
    void fewDegreesOfFreedomAreLessSure() {
        // metrology notes CA-22: two u from the limit, 0.977 by Gauss, 0.942 at nu = 4
        Limits upper = new Limits(null, 0.0);
        assertThat(Conformity.probability(-2, 1, INF, upper)).isCloseTo(0.977, within(0.0005));
        assertThat(Conformity.probability(-2, 1, 4, upper)).isCloseTo(0.942, within(0.0005));
    }

    @Test
    void withoutUncertaintyTheLimitItselfIsWithinLimits() {
        assertThat(Conformity.probability(0.10, 0, INF, BAND)).isEqualTo(1);
        assertThat(Conformity.probability(0.1001, 0, INF, BAND)).isZero();
        assertThat(Conformity.verdict(0.1, 0, INF, BAND, Rule.DEFAULT)).isEqualTo(Verdict.IN);
        assertThat(Conformity.capability(0, BAND)).isInfinite();
        assertThat(Conformity.best(0.01, INF, new Limits(0.0, null))).isEqualTo(1);
    }

    @Test
    void aNominalOutsideIsOutUnlessTheRuleSaysOtherwise() {
        assertThat(Conformity.verdict(0.101, 0.02, INF, BAND, Rule.DEFAULT)).isEqualTo(Verdict.OUT);
        assertThat(Conformity.verdict(0.101, 0.02, INF, BAND, new Rule(0.95, false)))
                .isEqualTo(Verdict.NOT_PROVEN);
        assertThat(Conformity.verdict(0.2, 0.02, INF, BAND, new Rule(0.95, false)))
                .isEqualTo(Verdict.OUT);
    }

    @Property
    void theLargestUncertaintyIsTheEdgeOfProof(
            @ForAll @Scale(4) @DoubleRange(min = 0.0501, max = 0.0999) double value) {
        double edge = Conformity.largestUncertainty(value, Double.POSITIVE_INFINITY, BAND, Rule.DEFAULT)
                .orElseThrow();
        assertThat(Conformity.verdict(value, edge * 0.9999, INF, BAND, Rule.DEFAULT))
                .isEqualTo(Verdict.IN);
        assertThat(Conformity.verdict(value, edge * 1.001, INF, BAND, Rule.DEFAULT))
                .isEqualTo(Verdict.NOT_PROVEN);
    }

    @Property
    void lessUncertaintyNeverProvesLess(
            @ForAll @Scale(4) @DoubleRange(min = 0.05, max = 0.10) double value,
            @ForAll @Scale(4) @DoubleRange(min = 0.0001, max = 0.05) double u,
            @ForAll @Scale(4) @DoubleRange(min = 1, max = 50) double nu) {
        double here = Conformity.probability(value, u, nu, BAND);
        assertThat(Conformity.probability(value, u / 2, nu, BAND)).isGreaterThanOrEqualTo(here - 1e-12);
        assertThat(Conformity.probability(value, u, INF, BAND)).isGreaterThanOrEqualTo(here - 1e-12);
        assertThat(Conformity.best(u, nu, BAND)).isGreaterThanOrEqualTo(here - 1e-12);
        assertThat(here).isBetween(0.0, 1.0);
    }

    @Test
    void moreReadingsSettleWhatScatterLeavesOpen() {
        assertThat(Conformity.moreReadings(0.09, 0.01, 3, 0.001, BAND, Rule.DEFAULT)
                        .orElseThrow())
                .isBetween(1, 4);
        assertThat(Conformity.moreReadings(0.075, 0.001, 3, 0.001, BAND, Rule.DEFAULT))
                .hasValue(0);
        assertThat(Conformity.moreReadings(0.099, 0.01, 3, 0.005, BAND, Rule.DEFAULT))
                .isEmpty();
        assertThat(Conformity.largestUncertainty(0.1, Double.POSITIVE_INFINITY, BAND, Rule.DEFAULT))
                .isEmpty();
        assertThat(Conformity.largestUncertainty(0.1, Double.POSITIVE_INFINITY, new Limits(null, null), Rule.DEFAULT))
                .isPresent();
    }

    @Test
    void limitsTheWrongWayRoundAreABug() {
        assertThatThrownBy(() -> new Limits(1.0, 0.0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Limits(Double.NaN, null)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Rule(0.4, true)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new GlobalRisk(0, 0, 1, BAND, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Conformity.probability(0, -1, 1, BAND)).isInstanceOf(IllegalArgumentException.class);
    }
}
