package shimwright.rebuild.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.plan.model.Cost;
import shimwright.rebuild.plan.search.SearchBudget;
import shimwright.rebuild.plan.search.SearchObserver;

/** Minutes at the bench first, then the day by the rebuilder's own weight; waiting in itself costs nothing. */
class WeightsTest {
    private static final double THREE_DAYS = 3 * 86_400;
    private static final boolean FIGURES = Boolean.getBoolean("shimwright.figures");

    private static Plan plan(BuildState present) {
        long began = System.nanoTime();
        SearchBudget budget = FIGURES ? SearchBudget.proof() : SearchBudget.page();
        Plan plan = Planner.lay(DemoUnit.A, Map.of(), present, budget, SearchObserver.nobody(), List.of())
                .orElseThrow();
        if (FIGURES) {
            Cost cost = plan.cost();
            System.out.printf(
                    Locale.ROOT,
                    "| %s, a day %.0f min | %.1f | %.0f | %.1f | %.0f | %s | %.1f |%n",
                    present.arrives().keySet(),
                    present.weights().daySooner() / 60,
                    setUps(plan),
                    cost.waiting() / 60,
                    cost.risk() / 60,
                    cost.elapsed() / 60,
                    plan.proven(),
                    (System.nanoTime() - began) / 1e9);
        }
        return plan;
    }

    private static double setUps(Plan plan) {
        return (plan.cost().bench() - plan.cost().work()) / 60;
    }

    private static BuildState awaiting(String step) {
        return new BuildState(List.of(), true, Map.of(), Map.of(step, THREE_DAYS));
    }

    /** The plan before stood up to 127 min longer at the bench, so that what is done before the arrival should cost no waiting. */
    @ParameterizedTest
    @ValueSource(strings = {"F01", "G09", "Q02"})
    void anAwaitedPartWastesNoMinutes(String step) {
        double without = setUps(plan(BuildState.inOrder(List.of())));
        // by the usual weight an evening sooner may cost some of its ten minutes
        assertThat(setUps(plan(awaiting(step)))).isLessThanOrEqualTo(without + 10);
        assertThat(setUps(plan(awaiting(step).weighing(new Weights(0))))).isLessThanOrEqualTo(without);
    }

    @Test
    void theMoreADayIsWorthTheSoonerItIsDoneAndTheLongerTheBenchIsStoodAt() {
        double bench = 0;
        double ends = Double.POSITIVE_INFINITY;
        for (double minutes : List.of(0.0, 10.0, 1440.0)) {
            Plan plan = plan(BuildState.inOrder(List.of()).weighing(new Weights(60 * minutes, 86_400)));
            double spent = plan.cost().bench() + plan.cost().risk();
            assertThat(spent).isGreaterThanOrEqualTo(bench);
            assertThat(plan.cost().waiting() + spent).isLessThanOrEqualTo(ends);
            assertThat(plan.cost().delay())
                    .isCloseTo(plan.cost().waiting() * minutes / 1440, org.assertj.core.data.Offset.offset(30.0));
            bench = spent;
            ends = plan.cost().waiting() + spent;
        }
    }
}
