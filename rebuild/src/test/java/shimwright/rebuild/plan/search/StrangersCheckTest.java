package shimwright.rebuild.plan.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.plan.OrderCheck;
import shimwright.rebuild.plan.StrangersCheck;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.model.Task;
import shimwright.rebuild.plan.verify.OrderVerifier;

/**
 * Three checks of orders that know nothing of each other, on the same small problems: possible by all or by none, and priced alike. More of
 * them with {@code -Dshimwright.planned=10000}, from {@code -Dshimwright.planned.from} on.
 */
class StrangersCheckTest {
    private static final int FIRST = Integer.getInteger("shimwright.planned.from", 0);
    private static final int ORDERS = 20;

    @Test
    void orderFoundAndOrdersByChanceArePossibleByAllChecksOrByNone() {
        int count = Integer.getInteger("shimwright.planned", 300);
        int possible = 0;
        int impossible = 0;
        for (int seed = FIRST; seed < FIRST + count; seed++) {
            SequencingProblem problem = RandomProblems.small(seed);
            Random random = new Random(seed);
            Outcome<Solution> found = Search.best(problem, new SearchBudget(4096, 1_000_000), SearchObserver.nobody());
            if (found.isOk()) {
                Solution best = found.orElseThrow();
                StrangersCheck.Verdict verdict = StrangersCheck.check(problem, best.order());
                assertThat(verdict.reasons()).as("problem %d", seed).isEmpty();
                assertThat(verdict.against(best.cost())).as("problem %d", seed).isEmpty();
            }
            for (int k = 0; k < ORDERS; k++) {
                if (possible(problem, order(problem, random, k % 4 > 0), "problem " + seed)) {
                    possible++;
                } else {
                    impossible++;
                }
            }
        }
        assertThat(possible).isGreaterThan(count * ORDERS / 4);
        assertThat(impossible).isGreaterThan(count * ORDERS / 4);
    }

    private static boolean possible(SequencingProblem problem, List<String> order, String name) {
        OrderVerifier.Followed first = OrderVerifier.follow(problem, order);
        StrangersCheck.Verdict verdict = StrangersCheck.check(problem, order);
        assertThat(verdict.lawful())
                .as("%s, %s: %s / %s", name, order, first.faults(), verdict.reasons())
                .isEqualTo(first.faults().isEmpty());
        if (verdict.lawful()) {
            assertThat(verdict.against(first.cost())).as("%s, %s", name, order).isEmpty();
        }
        assertThat(OrderCheck.wrong(problem, order, first.cost().total()).isEmpty())
                .as("%s, %s", name, order)
                .isEqualTo(verdict.lawful());
        return verdict.lawful();
    }

    /** The tasks by chance, each after what it waits for where that is asked. */
    private static List<String> order(SequencingProblem problem, Random random, boolean straight) {
        List<Task> left = new ArrayList<>(problem.tasks());
        List<String> order = new ArrayList<>();
        while (!left.isEmpty()) {
            List<Task> free = left.stream()
                    .filter(task -> !straight || order.containsAll(task.after()))
                    .toList();
            Task next = free.get(random.nextInt(free.size()));
            left.remove(next);
            order.add(next.id());
        }
        return order;
    }
}
