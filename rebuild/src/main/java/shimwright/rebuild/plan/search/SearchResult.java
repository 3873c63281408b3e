package shimwright.rebuild.plan.search;

import java.util.List;
import java.util.Optional;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;

/**
 * What came of looking for an order.
 *
 * @param answer the best order found; empty where none was found
 * @param refusals why there is none, or that none was found; empty where there is one
 * @param impossible true where it is proven that there is no order, false where there is one or the search gave up
 */
public record SearchResult(Optional<Solution> answer, List<Refusal> refusals, boolean impossible) {
    public SearchResult {
        refusals = List.copyOf(refusals);
    }

    static SearchResult found(Solution answer) {
        return new SearchResult(Optional.of(answer), List.of(), false);
    }

    static SearchResult none(List<Refusal> refusals, boolean impossible) {
        return new SearchResult(Optional.empty(), refusals, impossible);
    }

    /** The order, or why there is none. */
    public Outcome<Solution> outcome() {
        return answer.map(Outcome::ok).orElseGet(() -> Outcome.refused(refusals));
    }
}
