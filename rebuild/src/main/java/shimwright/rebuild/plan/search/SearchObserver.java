package shimwright.rebuild.plan.search;

import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * Someone who looks on.
 *
 * @param stop asked often; the search ends with what it has once it says true
 * @param progress told of every better answer and now and then of the bound
 */
public record SearchObserver(BooleanSupplier stop, Consumer<Progress> progress) {
    /**
     * How far the search is. All in seconds, counted as {@link shimwright.rebuild.plan.model.Cost#total()} counts.
     *
     * @param value cost of the best order so far; infinite before the first
     * @param bound cost that no order is below
     * @param states states made so far
     */
    public record Progress(double value, double bound, long states) {}

    /** Nobody. */
    public static SearchObserver nobody() {
        return new SearchObserver(() -> false, progress -> {});
    }
}
