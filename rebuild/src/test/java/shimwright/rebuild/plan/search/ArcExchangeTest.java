package shimwright.rebuild.plan.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.model.SetUps;
import shimwright.rebuild.plan.model.Task;
import shimwright.rebuild.plan.verify.OrderVerifier;

/** Orders bettered where all cost lies between neighbours, against every order of small problems. */
class ArcExchangeTest {
    /** Each task in a stand of its own, any time from one to the other, no way round shorter counted. */
    private static SequencingProblem problem(long seed) {
        Random random = new Random(seed);
        int n = 3 + random.nextInt(5);
        List<Task> tasks = new ArrayList<>();
        Map<String, Map<String, Double>> turn = new LinkedHashMap<>();
        for (int i = 0; i < n; i++) {
            List<String> after = new ArrayList<>();
            Map<String, Double> to = new HashMap<>();
            for (int j = 0; j < n; j++) {
                if (j < i && random.nextInt(5) == 0) {
                    after.add("t" + j);
                }
                to.put("O" + j, (double) random.nextInt(20));
            }
            tasks.add(Task.of("t" + i, 1, "O" + i, after.toArray(new String[0])));
            turn.put("O" + i, to);
        }
        Set<String> stands = new LinkedHashSet<>(turn.keySet());
        return SequencingProblem.of(tasks, new SetUps(stands, turn, 1, 0, Map.of()));
    }

    @Test
    void theOrderStaysPossibleAndMostlyIsTheBestOfAllOrders() {
        int better = 0;
        int best = 0;
        for (int seed = 0; seed < 100; seed++) {
            SequencingProblem problem = problem(seed);
            CompiledProblem c = CompiledProblem.of(problem);
            int[] given = c.topological.clone();
            ArcExchange exchange = ArcExchange.of(c).orElseThrow();
            int[] order = exchange.best(given, 200, () -> false);
            List<String> ids =
                    Arrays.stream(order).mapToObj(task -> c.task(task).id()).toList();
            assertThat(OrderVerifier.follow(problem, ids).faults())
                    .as("problem %d", seed)
                    .isEmpty();
            long cost = Evaluation.counted(c, order).orElseThrow();
            double least = Enumeration.of(problem).best;
            assertThat(cost / Solver.SECOND + c.work / 1e3)
                    .as("problem %d", seed)
                    .isGreaterThanOrEqualTo(least);
            best += cost / Solver.SECOND + c.work / 1e3 == least ? 1 : 0;
            better += cost < Evaluation.counted(c, given).orElseThrow() ? 1 : 0;
            int[] again = exchange.best(order, 50, () -> false);
            assertThat(Evaluation.counted(c, again).orElseThrow()).isLessThanOrEqualTo(cost);
        }
        assertThat(better).isGreaterThan(50);
        assertThat(best).isGreaterThan(95);
    }

    @Test
    void whereMoreCountsThanNeighboursThereIsNone() {
        int none = 0;
        for (int seed = 0; seed < 200; seed++) {
            CompiledProblem c = CompiledProblem.of(RandomProblems.small(seed));
            boolean more = c.lag.length > 0
                    || c.spans.count > 0
                    || Arrays.stream(c.ready.kit).anyMatch(k -> k < 0);
            none += more ? 1 : 0;
            assertThat(more && ArcExchange.of(c).isPresent())
                    .as("problem %d", seed)
                    .isFalse();
        }
        assertThat(none).isPositive();
        CompiledProblem c = CompiledProblem.of(problem(1));
        assertThat(ArcExchange.of(c).orElseThrow().best(c.topological, 1_000, () -> true))
                .hasSize(c.n);
    }
}
