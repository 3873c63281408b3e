package shimwright.mechanics.conformity;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.InSentence;

/**
 * Limits, ends included; a missing one is open.
 *
 * @param lower lower limit of the value, SI
 * @param upper upper limit of the value, SI, not below {@code lower}
 */
public record Limits(@Nullable Double lower, @Nullable Double upper) {
    private static final double DUST = 1e-9;

    public Limits {
        if ((lower != null && !Double.isFinite(lower)) || (upper != null && !Double.isFinite(upper))) {
            throw new IllegalArgumentException("limits " + lower + " to " + upper);
        }
        if (lower != null && upper != null && lower > upper) {
            throw new IllegalArgumentException("limits the wrong way round: " + lower + " to " + upper);
        }
    }

    /** Lower limit, or negative infinity. */
    public double low() {
        return lower == null ? Double.NEGATIVE_INFINITY : lower;
    }

    /** Upper limit, or positive infinity. */
    public double high() {
        return upper == null ? Double.POSITIVE_INFINITY : upper;
    }

    /** Whether both are given. */
    public boolean closed() {
        return lower != null && upper != null;
    }

    /** Upper minus lower; infinite when one is open. */
    public double width() {
        return high() - low();
    }

    /** Whether a value lies within, forgiving binary dust of one part in 10⁹. */
    public boolean hold(double value) {
        double low = low();
        double high = high();
        return value >= low - dust(low, value) && value <= high + dust(high, value);
    }

    private static double dust(double limit, double value) {
        return Double.isInfinite(limit) ? 0 : DUST * Math.max(Math.abs(limit), Math.abs(value));
    }

    /** What is wrong with limits as given: none at all, or a lower one not below the upper; lengths, m. */
    public static Optional<Refusal> fault(@Nullable Double lower, @Nullable Double upper) {
        if (lower == null && upper == null) {
            return Optional.of(new Refusal("lower", "lower and upper limit", "no limit given", "Give at least one"));
        }
        if (lower != null && upper != null && lower >= upper) {
            return Optional.of(new Refusal(
                    "lower",
                    "lower and upper limit",
                    "the lower limit " + InSentence.length(lower) + " is not below the upper "
                            + InSentence.length(upper),
                    "Check which is which"));
        }
        return Optional.empty();
    }
}
