package shimwright.mechanics.measure;

import java.util.List;

/**
 * Ratio Σ(xᵢ₊₁−xᵢ)²/Σ(xᵢ−mean)²: about 2 for independent readings, small for a drift (von Neumann 1941). Its
 * distribution for normal readings is that of a ratio of quadratic forms with λᵢ = 4 sin²(πi/2n), summed by Imhof's
 * integral (Biometrika 48, 1961). Hart's tables print n/(n−1) times this ratio.
 */
public final class VonNeumann {
    private VonNeumann() {}

    /** The ratio, 0 to 4; 2 for a series that stands still. At least two values. */
    public static double ratio(List<Double> values) {
        double mean = Statistics.mean(values);
        double steps = 0;
        double squares = 0;
        for (int i = 0; i < values.size(); i++) {
            squares += Math.pow(values.get(i) - mean, 2);
            steps += i == 0 ? 0 : Math.pow(values.get(i) - values.get(i - 1), 2);
        }
        return squares == 0 ? 2 : steps / squares;
    }

    /** P(ratio ≤ x) for n independent normal readings, n at least 4. */
    public static double cumulative(int n, double x) {
        if (n < 4) {
            throw new IllegalArgumentException("von Neumann ratio of " + n);
        }
        double[] a = new double[n - 1];
        for (int i = 1; i < n; i++) {
            a[i - 1] = 4 * Math.pow(Math.sin(Math.PI * i / (2 * n)), 2) - x;
        }
        double integral = Quadrature.integral(y -> imhof(a, y / (1 - y)) / ((1 - y) * (1 - y)), 0, 1, 400);
        return Math.max(0, Math.min(1, 0.5 - integral / Math.PI));
    }

    /** The ratio below which a share p of random series falls, 0 < p < ½. */
    public static double quantile(int n, double p) {
        return Quadrature.crossing(x -> cumulative(n, x), p, 0, 2);
    }

    private static double imhof(double[] a, double u) {
        double angle = 0;
        double decay = 0;
        for (double weight : a) {
            angle += 0.5 * Math.atan(weight * u);
            decay += 0.25 * Math.log1p(weight * weight * u * u);
        }
        return Math.sin(angle) / u * Math.exp(-decay);
    }
}
