package shimwright.mechanics.measure;

import java.util.Arrays;

/**
 * The exact distribution of a sum of independent rectangular deviations of half-widths aᵢ (Irwin-Hall, for unequal
 * widths): F(x) = Σ over corners s of (−1)^|s| · max(0, x + Σaᵢ − 2Σ_s aᵢ)ⁿ / (n! · Π2aᵢ). Good to nine decimals where
 * the widths are of like size.
 */
public final class RectangularSum {
    /** Most terms; beyond this the alternating sum loses its digits. */
    public static final int MOST = 8;

    private final double[] halfWidths;

    /** From 1 to {@link #MOST} half-widths, each above 0. */
    public RectangularSum(double... halfWidths) {
        if (halfWidths.length < 1
                || halfWidths.length > MOST
                || Arrays.stream(halfWidths).anyMatch(a -> !(a > 0))) {
            throw new IllegalArgumentException("sum of " + Arrays.toString(halfWidths));
        }
        this.halfWidths = halfWidths.clone();
    }

    /** Half-width of the sum. */
    public double reach() {
        return Arrays.stream(halfWidths).sum();
    }

    /** P(sum ≤ x). */
    public double cumulative(double x) {
        return x > 0 ? 1 - below(-x) : below(x);
    }

    private double below(double x) {
        if (x <= -reach()) {
            return 0;
        }
        int n = halfWidths.length;
        double sum = 0;
        for (int corner = 0; corner < 1 << n; corner++) {
            double at = x + reach();
            for (int i = 0; i < n; i++) {
                at -= ((corner >> i) & 1) == 1 ? 2 * halfWidths[i] : 0;
            }
            double term = at > 0 ? 1 : 0;
            for (int i = 0; i < n; i++) {
                term *= at / (2 * halfWidths[i] * (i + 1));
            }
            sum += Integer.bitCount(corner) % 2 == 0 ? term : -term;
        }
        return Math.max(0, Math.min(1, sum));
    }

    /** The half-width h with P(−h ≤ sum ≤ h) = p, 0 < p < 1. */
    public double halfWidth(double p) {
        return Quadrature.crossing(this::cumulative, (1 + p) / 2, 0, reach());
    }
}
