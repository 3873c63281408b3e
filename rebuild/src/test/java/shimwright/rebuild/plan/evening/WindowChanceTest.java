package shimwright.rebuild.plan.evening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.plan.BuildState;
import shimwright.rebuild.plan.Plan;
import shimwright.rebuild.plan.Planner;

/** Chances against the normal distribution of Hipparchus, a general-purpose library. */
class WindowChanceTest {
    private static final Plan PLAN = Planner.lay(DemoUnit.A, Map.of(), Set.of()).orElseThrow();

    private static List<WindowChance> chances(double share) {
        return WindowChance.of(DemoUnit.A, Map.of(), BuildState.inOrder(List.of()), PLAN, share);
    }

    @Test
    void theTightestWindowIsMissedAsTheNormalDistributionSays() {
        WindowChance ten = tightest(0.1);
        assertThat(ten.planned()).isBetween(0.5 * ten.longest(), ten.longest());
        assertThat(ten.missed()).isCloseTo(over(ten, 0.1), within(0.0002));
        WindowChance twenty = tightest(0.2);
        assertThat(twenty.missed()).isCloseTo(over(twenty, 0.2), within(0.0005)).isGreaterThan(ten.missed());
        double short95 = twenty.planned() * (1 + 1.6449 * 0.2) - twenty.longest();
        assertThat(twenty.spare()).isCloseTo(Math.max(0, short95), within(0.01));
    }

    /** Chance that a normal duration of that mean and share of it as standard deviation is longer than the window. */
    private static double over(WindowChance chance, double share) {
        return 1
                - new NormalDistribution(chance.planned(), share * chance.planned())
                        .cumulativeProbability(chance.longest());
    }

    private static WindowChance tightest(double share) {
        return chances(share).stream()
                .max(Comparator.comparingDouble(c -> c.planned() / c.longest()))
                .orElseThrow();
    }

    @Test
    void withoutSpreadNothingIsMissed() {
        assertThat(chances(0))
                .isNotEmpty()
                .allSatisfy(c -> assertThat(c.missed()).isZero());
    }
}
