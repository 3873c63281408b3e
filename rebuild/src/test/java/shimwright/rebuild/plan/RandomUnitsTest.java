package shimwright.rebuild.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.search.SearchBudget;
import shimwright.rebuild.plan.search.SearchObserver;
import shimwright.rebuild.plan.verify.OrderVerifier;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/**
 * Units of 15 to 300 steps by chance: every plan possible by four checks that know nothing of the search, every impossible one
 * refused with a reason that is true. All 1,000 with {@code -Dshimwright.units=1000}, a part of them from
 * {@code -Dshimwright.units.from} on.
 */
class RandomUnitsTest {
    private static final int FIRST = Integer.getInteger("shimwright.units.from", 0);
    private static final int LAST = FIRST + Integer.getInteger("shimwright.units", 10);
    private static final int MOST_OPEN = 12;
    private static final SearchBudget SMALL = new SearchBudget(8, 1_000);

    private static int size(int seed) {
        return 15 + seed * 37 % 286;
    }

    private static Outcome<Plan> lay(Unit unit) {
        return Planner.lay(unit, Map.of(), BuildState.inOrder(List.of()), SMALL, SearchObserver.nobody(), List.of());
    }

    @Test
    void everyPlanIsPossible() {
        for (int seed = FIRST; seed < LAST; seed++) {
            Unit unit = RandomUnits.of(seed, size(seed));
            Plan plan = lay(unit).orElseThrow();
            PlanCheck.check(unit, Map.of(), Set.of(), plan);
            SequencingProblem problem = Planner.problem(unit, Map.of(), BuildState.inOrder(List.of()));
            List<String> order = plan.ahead().stream().map(Step::id).toList();
            assertThat(OrderVerifier.faults(problem, order, plan.cost()))
                    .as("unit %d", seed)
                    .isEmpty();
            assertThat(OrderCheck.wrong(problem, order, plan.cost().total()))
                    .as("unit %d", seed)
                    .isEmpty();
            StrangersCheck.Verdict verdict = StrangersCheck.check(problem, order);
            assertThat(verdict.reasons()).as("unit %d", seed).isEmpty();
            assertThat(verdict.against(plan.cost())).as("unit %d", seed).isEmpty();
            assertThat(plan.bound()).isLessThanOrEqualTo(plan.cost().total() + 1e-9);
        }
    }

    /** The plan gone on with is an order that keeps what is open, so nothing is late. */
    @Test
    void whatIsOpenAndCanBeKeptIsNotLate() {
        int open = 0;
        for (int seed = FIRST; seed < LAST; seed++) {
            Unit unit = RandomUnits.of(seed, size(seed));
            SequencingProblem problem = Planner.problem(unit, Map.of(), BuildState.inOrder(List.of()));
            List<String> order =
                    lay(unit).orElseThrow().ahead().stream().map(Step::id).toList();
            Map<String, Double> ends = new LinkedHashMap<>();
            for (int k = 0; k < order.size(); k++) {
                List<String> done = order.subList(0, k + 1);
                ends.put(
                        order.get(k), OrderVerifier.follow(problem, done).cost().elapsed());
                double now = ends.getOrDefault(order.get(k), 0.0);
                long windows = problem.windows().stream()
                        .filter(w -> done.contains(w.opens()) && !done.contains(w.closes()))
                        .count();
                if (windows > 0 && open < MOST_OPEN) {
                    open++;
                    Map<String, Double> ago = new LinkedHashMap<>();
                    ends.forEach((id, end) -> ago.put(id, now - end));
                    BuildState present = new BuildState(done, true, ago, Map.of());
                    Plan plan = Planner.lay(unit, Map.of(), present, SMALL, SearchObserver.nobody(), List.of())
                            .orElseThrow();
                    assertThat(plan.late()).as("unit %d at %d", seed, k).isEmpty();
                    assertThat(plan.remarks())
                            .as("unit %d at %d", seed, k)
                            .noneMatch(r -> r.startsWith("No order was found"));
                }
            }
        }
        assertThat(open).isPositive();
    }

    @Test
    void whatIsImpossibleIsRefusedWithATrueReason() {
        for (int seed = FIRST; seed < LAST; seed++) {
            Unit unit = RandomUnits.impossible(seed, size(seed));
            Refusal refusal = lay(unit).refusals().get(0);
            if (seed % 2 == 0) {
                circle(unit, refusal.fact());
            } else {
                assertThat(refusal.fact()).startsWith("no order keeps the window \"too short a window\"");
            }
        }
    }

    /** Each step named waits for the next, and the last for the first. */
    private static void circle(Unit unit, String fact) {
        assertThat(fact).startsWith("these steps wait for each other: ");
        List<String> named = Pattern.compile("(\\w+) \\(Do ")
                .matcher(fact)
                .results()
                .map(m -> m.group(1))
                .toList();
        assertThat(named).hasSizeGreaterThan(1);
        assertThat(fact).endsWith(" waits for " + named.get(0));
        for (int i = 0; i < named.size(); i++) {
            assertThat(unit.step(named.get(i)).after()).containsKey(named.get((i + 1) % named.size()));
        }
    }
}
