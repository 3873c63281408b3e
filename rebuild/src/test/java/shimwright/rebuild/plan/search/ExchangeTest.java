package shimwright.rebuild.plan.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.plan.model.Cost;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.model.SetUps;
import shimwright.rebuild.plan.model.Task;
import shimwright.rebuild.plan.verify.OrderVerifier;

/** Orders bettered by changing the places of stretches. */
class ExchangeTest {
    /** Some possible order: the first that depth-first search comes to. */
    private static Optional<int[]> some(CompiledProblem c, StateCursor at, int[] order) {
        if (at.finished()) {
            return Optional.of(order);
        }
        for (int task = 0; task < c.n; task++) {
            StateCursor next = new StateCursor(c);
            next.set(at);
            if (at.free(task) && at.allowed(task) && next.take(task)) {
                int[] longer = Arrays.copyOf(order, order.length + 1);
                longer[order.length] = task;
                Optional<int[]> found = some(c, next, longer);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    @Test
    void theOrderStaysPossibleAndIsNeverDearerNorCheaperThanTheBest() {
        int better = 0;
        int best = 0;
        int looked = 0;
        for (int seed = 0; seed < 200; seed++) {
            SequencingProblem problem = RandomProblems.small(seed);
            CompiledProblem c = CompiledProblem.of(problem);
            Optional<int[]> some = some(c, new StateCursor(c), new int[0]);
            if (some.isEmpty()) {
                continue;
            }
            looked++;
            int[] order = new Exchange(c, some.get(), () -> false).best(20_000);
            assertThat(new Exchange(c, some.get(), () -> false).best(20_000)).isEqualTo(order);
            Cost cost = Evaluation.cost(c, order).orElseThrow();
            List<String> ids = new ArrayList<>();
            Arrays.stream(order).forEach(task -> ids.add(c.task(task).id()));
            assertThat(OrderVerifier.faults(problem, ids, cost))
                    .as("problem %d", seed)
                    .isEmpty();
            double before = Evaluation.cost(c, some.get()).orElseThrow().total();
            double least = Enumeration.of(problem).best;
            assertThat(cost.total()).isLessThanOrEqualTo(before + 1e-9).isGreaterThanOrEqualTo(least - 1e-9);
            better += cost.total() < before - 1e-9 ? 1 : 0;
            best += cost.total() < least + 1e-9 ? 1 : 0;
        }
        assertThat(better).isGreaterThan(looked / 2);
        assertThat(best).isGreaterThan(looked * 3 / 4);
    }

    @Test
    void twoToolsLaidOutTwiceEachAreLaidOutOnceEach() {
        List<Task> tasks = List.of(
                Task.of("a", 1, "").with("X"),
                Task.of("b", 1, "").with("Y"),
                Task.of("c", 1, "").with("X"),
                Task.of("d", 1, "").with("Y"));
        SetUps setUps = new SetUps(Set.of(), java.util.Map.of(), 1, 0, java.util.Map.of("X", 2.0, "Y", 3.0));
        CompiledProblem c = CompiledProblem.of(SequencingProblem.of(tasks, setUps));
        int[] order = new Exchange(c, new int[] {0, 1, 2, 3}, () -> false).best(1000);
        assertThat(Evaluation.cost(c, order).orElseThrow().tools()).isCloseTo(5, within(1e-9));
    }

    @Test
    void whatCannotBeChangedOrMayNotTakeLongIsHandedBack() {
        CompiledProblem one = CompiledProblem.of(SequencingProblem.of(List.of(Task.of("a", 1, "")), SetUps.none()));
        assertThat(new Exchange(one, new int[] {0}, () -> false).best(1000)).containsExactly(0);
        List<Task> chain = List.of(Task.of("a", 1, ""), Task.of("b", 1, "", "a"), Task.of("c", 1, "", "b"));
        CompiledProblem c = CompiledProblem.of(SequencingProblem.of(chain, SetUps.none()));
        assertThat(new Exchange(c, new int[] {0, 1, 2}, () -> false).best(1000)).containsExactly(0, 1, 2);
        assertThat(new Exchange(c, new int[] {0, 1, 2}, () -> true).best(1000)).containsExactly(0, 1, 2);
    }
}
