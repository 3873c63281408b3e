package shimwright.rebuild.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.unit.model.Step;

/** After a surprise the order from before is kept as far as it can be, and is possible. */
class OnwardTest {
    private static final List<String> FIRST =
            Planner.lay(DemoUnit.A, Map.of(), java.util.Set.of()).orElseThrow().ahead().stream()
                    .map(Step::id)
                    .toList();

    @Test
    void withStepsDoneAsPlannedTheRestStays() {
        for (int k = 0; k < FIRST.size(); k += 5) {
            Plan plan = Planner.onward(DemoUnit.A, Map.of(), BuildState.inOrder(FIRST.subList(0, k)), FIRST)
                    .orElseThrow();
            assertThat(plan.ahead()).extracting(Step::id).isEqualTo(FIRST.subList(k, FIRST.size()));
            assertThat(plan.cost().total()).isGreaterThanOrEqualTo(plan.bound());
        }
    }

    @Test
    void afterAnyStepOutOfOrderOrUndoneItIsPossible() {
        for (int seed = 0; seed < 40; seed++) {
            Random random = new Random(seed);
            List<String> done = new ArrayList<>(FIRST.subList(0, random.nextInt(FIRST.size())));
            String any = FIRST.get(random.nextInt(FIRST.size()));
            if (!done.remove(any)) {
                done.add(any);
            }
            Planner.onward(DemoUnit.A, Map.of(), BuildState.inOrder(done), FIRST)
                    .ifPresent(plan -> PlanCheck.check(DemoUnit.A, Map.of(), new LinkedHashSet<>(done), plan));
        }
    }
}
