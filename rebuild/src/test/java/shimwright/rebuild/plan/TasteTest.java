package shimwright.rebuild.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.search.SearchBudget;
import shimwright.rebuild.plan.search.SearchObserver;
import shimwright.rebuild.plan.verify.OrderVerifier;
import shimwright.rebuild.unit.model.Step;

/** What is said to be a matter of taste costs the same by the check that knows nothing of the search, and one place further it does not. */
class TasteTest {
    private static final BuildState FRESH = BuildState.inOrder(List.of());

    @Test
    void aMatterOfTasteCostsTheSameAndOnePlaceFurtherNotSo() {
        Plan plan = Planner.lay(
                        DemoUnit.A, Map.of(), FRESH, new SearchBudget(4, 500), SearchObserver.nobody(), List.of())
                .orElseThrow();
        SequencingProblem problem = Planner.problem(DemoUnit.A, Map.of(), FRESH);
        List<String> order = plan.ahead().stream().map(Step::id).toList();
        int taste = 0;
        int fixed = 0;
        for (StepReason why : plan.because()) {
            int from = order.indexOf(why.step().id());
            int last = why.asWellAfter().isEmpty() ? from : order.indexOf(why.asWellAfter());
            for (int to = from + 1; to <= last; to++) {
                OrderVerifier.Followed moved = moved(problem, order, from, to);
                assertThat(moved.faults())
                        .as("%s after %s", why.step().id(), order.get(to))
                        .isEmpty();
                assertThat(moved.cost().total()).isCloseTo(plan.cost().total(), within(1e-5));
                taste++;
            }
            if (last + 1 < order.size()) {
                OrderVerifier.Followed further = moved(problem, order, from, last + 1);
                assertThat(!further.faults().isEmpty()
                                || Math.abs(further.cost().total() - plan.cost().total()) > 1e-6)
                        .as("%s after %s", why.step().id(), order.get(last + 1))
                        .isTrue();
                fixed++;
            }
        }
        assertThat(taste).isPositive();
        assertThat(fixed).isPositive();
    }

    private static OrderVerifier.Followed moved(SequencingProblem problem, List<String> order, int from, int to) {
        List<String> other = new ArrayList<>(order);
        other.add(to, other.remove(from));
        return OrderVerifier.follow(problem, other);
    }
}
