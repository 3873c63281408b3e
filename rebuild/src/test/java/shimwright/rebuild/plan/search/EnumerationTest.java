package shimwright.rebuild.plan.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.plan.OrderCheck;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.verify.OrderVerifier;

/**
 * The search against every order of small problems with turns that are metric and not, windows, waits, arrivals, risks and weights, started and not. More of them with
 * {@code -Dshimwright.planned=10000}.
 */
class EnumerationTest {
    private static final int FIRST = Integer.getInteger("shimwright.planned.from", 0);

    @Test
    void theBestOrderIsTheBestOfAllOrders() {
        int count = Integer.getInteger("shimwright.planned", 200);
        int possible = 0;
        for (int seed = FIRST; seed < FIRST + count; seed++) {
            SequencingProblem problem = RandomProblems.small(seed);
            Enumeration all = Enumeration.of(problem);
            Outcome<Solution> outcome =
                    Search.best(problem, new SearchBudget(4096, 1_000_000), SearchObserver.nobody());
            if (all.best == Double.POSITIVE_INFINITY) {
                assertThat(outcome.isOk()).as("problem %d has no order", seed).isFalse();
                continue;
            }
            possible++;
            assertThat(outcome.refusals()).as("problem %d", seed).isEmpty();
            Solution answer = outcome.orElseThrow();
            assertThat(answer.proven()).as("problem %d is proven", seed).isTrue();
            assertThat(answer.cost().total()).as("problem %d", seed).isCloseTo(all.best, within(1e-6));
            assertThat(answer.bound()).isCloseTo(all.best, within(1e-6));
            assertThat(OrderVerifier.faults(problem, answer.order(), answer.cost()))
                    .isEmpty();
            assertThat(OrderCheck.wrong(problem, answer.order(), answer.cost().total()))
                    .as("problem %d", seed)
                    .isEmpty();
            Solver tables = new Solver(CompiledProblem.of(problem), SearchObserver.nobody(), -1, seed % 4);
            tables.run(new SearchBudget(4096, 1_000_000, 1 << 20));
            assertThat(tables.proven()).as("problem %d with tables", seed).isTrue();
            assertThat(tables.bound() / Solver.SECOND)
                    .as("problem %d with tables", seed)
                    .isCloseTo(all.best, within(1e-6));
            assertThat(OrderCheck.wrong(problem, all.at, all.best))
                    .as("problem %d", seed)
                    .isEmpty();
        }
        assertThat(possible).isBetween(count / 2, count - 1);
    }
}
