package shimwright.rebuild.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.unit.model.Unit;

/** What hinders a plan is what the plan itself would be refused for. */
class HindrancesTest {
    @Test
    void sidesThatContradictHinder() {
        Map<String, String> sides = Map.of("O1", "late", "O4", "first");
        assertThat(Planner.hindrances(DemoUnit.A, sides, Set.of()))
                .isNotEmpty()
                .isEqualTo(Planner.lay(DemoUnit.A, sides, Set.of()).refusals());
    }

    @Test
    void fromAnyStateOfTheDemoNothingHinders() {
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            Unit unit = random.nextBoolean() ? DemoUnit.A : DemoUnit.B;
            List<String> steps =
                    new ArrayList<>(Order.of(unit, Map.of()).steps().keySet());
            Collections.shuffle(steps, random);
            Set<String> done = new LinkedHashSet<>(steps.subList(0, random.nextInt(steps.size() + 1)));
            assertThat(Planner.hindrances(unit, Map.of(), done))
                    .as("seed %d", seed)
                    .isEmpty();
        }
    }

    @Test
    void impossibleUnitsAreHinderedAsTheirPlansAreRefused() {
        for (int seed = 0; seed < 20; seed++) {
            Unit possible = RandomUnits.of(seed, 60);
            assertThat(Planner.hindrances(possible, Map.of(), Set.of()))
                    .as("seed %d", seed)
                    .isEmpty();
            Unit impossible = RandomUnits.impossible(seed, 60);
            assertThat(Planner.hindrances(impossible, Map.of(), Set.of()))
                    .as("seed %d", seed)
                    .isNotEmpty();
        }
    }
}
