package shimwright.rebuild.plan.search;

import java.util.List;
import shimwright.rebuild.plan.model.Cost;

/**
 * An order and how good it is.
 *
 * @param order ids of the tasks in order
 * @param cost its cost
 * @param bound seconds that the cost of no order is below
 * @param proven true only where bound and cost are equal: no order is better
 * @param states states made
 */
public record Solution(List<String> order, Cost cost, double bound, boolean proven, long states) {
    public Solution {
        order = List.copyOf(order);
    }
}
