package shimwright.rebuild.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.search.Search;
import shimwright.rebuild.plan.search.SearchBudget;
import shimwright.rebuild.plan.search.SearchObserver;
import shimwright.rebuild.plan.search.Solution;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/** What is begun beside the case is finished where that costs no more than the rebuilder says. More with {@code -Dshimwright.begun=1000}. */
class FinishingTest {
    private static final SearchBudget SMALL = new SearchBudget(8, 1_000);
    private static final int SEEDS = Integer.getInteger("shimwright.begun", 12);

    private static Plan lay(Unit unit, double minutes) {
        BuildState present =
                BuildState.inOrder(List.of()).weighing(new Weights(600, 3 * 3600, OptionalDouble.of(60 * minutes)));
        return Planner.lay(unit, Map.of(), present, SMALL, SearchObserver.nobody(), List.of())
                .orElseThrow();
    }

    private static Solution cheapest(Unit unit) {
        SequencingProblem problem = Planner.problem(unit, Map.of(), BuildState.inOrder(List.of()));
        return Search.best(problem, SMALL, SearchObserver.nobody()).orElseThrow();
    }

    /** Counted anew: the step before is of a sub-assembly, this one is not, and a step of it waits for nothing any more. */
    private static int left(Unit unit, List<String> steps) {
        Order order = Order.of(unit, Map.of());
        Map<String, String> assembly = Finishing.assemblies(unit, order);
        int left = 0;
        for (int k = 1; k < steps.size(); k++) {
            String begun = assembly.getOrDefault(steps.get(k - 1), "");
            Set<String> done = new HashSet<>(steps.subList(0, k));
            left += !begun.isEmpty()
                            && !begun.equals(assembly.get(steps.get(k)))
                            && assembly.entrySet().stream()
                                    .filter(one -> one.getValue().equals(begun) && !done.contains(one.getKey()))
                                    .anyMatch(one -> done.containsAll(order.before()
                                            .getOrDefault(one.getKey(), Map.of())
                                            .keySet()))
                    ? 1
                    : 0;
        }
        return left;
    }

    private static List<String> ids(Plan plan) {
        return plan.ahead().stream().map(Step::id).toList();
    }

    @Test
    void itCostsNoMoreThanWasSaidAndNeverLeavesMore() {
        int free = 0;
        int dear = 0;
        for (int seed = 0; seed < SEEDS; seed++) {
            Unit unit = RandomUnits.of(seed, 30 + seed % 5 * 10);
            Solution found = cheapest(unit);
            int before = left(unit, found.order());
            Plan nothing = lay(unit, 0);
            PlanCheck.check(unit, Map.of(), Set.of(), nothing);
            assertThat(nothing.cost().total())
                    .as("unit %d", seed)
                    .isLessThanOrEqualTo(found.cost().total() + 1e-6);
            assertThat(nothing.finishing()).isZero();
            assertThat(nothing.left()).isEqualTo(left(unit, ids(nothing))).isLessThanOrEqualTo(before);
            Plan five = lay(unit, 5);
            PlanCheck.check(unit, Map.of(), Set.of(), five);
            int saved = before - five.left();
            assertThat(five.left()).isEqualTo(left(unit, ids(five)));
            assertThat(five.finishing()).as("unit %d", seed).isBetween(0.0, 300.0 * saved + 1e-6);
            assertThat(five.cost().total() - five.finishing())
                    .isLessThanOrEqualTo(found.cost().total() + 1e-6);
            assertThat(five.bound()).isLessThanOrEqualTo(five.cost().total() + 1e-6);
            free += nothing.left() < before ? 1 : 0;
            dear += five.left() < nothing.left() ? 1 : 0;
        }
        assertThat(free).isPositive();
        assertThat(dear).isPositive();
    }

    @Test
    void theDemoUnitHasSubAssembliesBesideTheCase() {
        Map<String, String> assembly = Finishing.assemblies(DemoUnit.A, Order.of(DemoUnit.A, Map.of()));
        assertThat(assembly).isNotEmpty();
        assertThat(assembly.keySet())
                .allMatch(id -> !DemoUnit.A.station(DemoUnit.A.step(id).at()).holdsCase());
        assertThat(new HashSet<>(assembly.values())).hasSizeLessThan(assembly.size());
    }
}
