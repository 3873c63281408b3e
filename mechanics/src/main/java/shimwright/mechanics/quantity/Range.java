package shimwright.mechanics.quantity;

/**
 * The SI values a quantity may take, ends included.
 *
 * @param min smallest, may be negative infinity
 * @param max largest, may be positive infinity
 */
public record Range(double min, double max) {
    /** Any finite number. */
    public static final Range ANY = new Range(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    public Range {
        if (!(min <= max)) {
            throw new IllegalArgumentException("empty range " + min + " to " + max);
        }
    }

    /** Whether a value lies within; binary dust of one part in 10¹² is forgiven. */
    public boolean holds(double si) {
        return si >= min - 1e-12 * Math.abs(min) && si <= max + 1e-12 * Math.abs(max);
    }
}
