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
public record Attempt(Optional<Answer> answer, List<Refusal> refusals, boolean impossible) {
    public Attempt {
        refusals = List.copyOf(refusals);
    }

    static Attempt found(Answer answer) {
        return new Attempt(Optional.of(answer), List.of(), false);
    }

    static Attempt none(List<Refusal> refusals, boolean impossible) {
        return new Attempt(Optional.empty(), refusals, impossible);
    }

    /** True where no order was found though there may be one. */
    public boolean gaveUp() {
        return answer.isEmpty() && !impossible;
    }

    /** The order, or why there is none. */
    public Outcome<Answer> outcome() {
        return answer.map(Outcome::ok).orElseGet(() -> Outcome.refused(refusals));
    }
}
