package shimwright.rebuild.plan.evening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.plan.Plan;
import shimwright.rebuild.plan.Planner;
import shimwright.rebuild.plan.Present;

/** Chances by the table of the normal distribution: 1 - Φ(1.765) = 0.0388, 1 - Φ(0.882) = 0.189; from memory. */
class WindowChanceTest {
    private static final Plan PLAN = Planner.lay(DemoUnit.A, Map.of(), Set.of()).orElseThrow();

    private static List<WindowChance> chances(double share) {
        return WindowChance.of(DemoUnit.A, Map.of(), Present.inOrder(List.of()), PLAN, share);
    }

    @Test
    void theTightestWindowIsMissedInFourToNineteenOfAHundred() {
        WindowChance ten = tightest(0.1);
        assertThat(ten.planned()).isEqualTo(1020);
        assertThat(ten.longest()).isEqualTo(1200);
        assertThat(ten.missed()).isCloseTo(0.0388, within(0.0002));
        assertThat(ten.spare()).isZero();
        WindowChance twenty = tightest(0.2);
        assertThat(twenty.missed()).isCloseTo(0.189, within(0.0005));
        assertThat(twenty.spare()).isCloseTo(1020 + 1.6449 * 204 - 1200, within(0.01));
    }

    private static WindowChance tightest(double share) {
        return chances(share).stream()
                .filter(c -> c.planned() > 0.5 * c.longest())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void withoutSpreadNothingIsMissed() {
        assertThat(chances(0))
                .isNotEmpty()
                .allSatisfy(c -> assertThat(c.missed()).isZero());
    }
}
