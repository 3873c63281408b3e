package shimwright.mechanics.measure;

import java.util.function.ToDoubleFunction;

/** Combined standard uncertainty where inputs are correlated, or where the first order does not suffice. */
public final class Combination {
    private Combination() {}

    /**
     * √(Σᵢ Σⱼ cᵢ cⱼ uᵢ uⱼ rᵢⱼ) (JCGM 100:2008 5.2.2, equation 16).
     *
     * @param c sensitivities
     * @param u standard uncertainties
     * @param r correlation coefficients, symmetric, 1 on the diagonal
     */
    public static double correlated(double[] c, double[] u, double[][] r) {
        double variance = 0;
        for (int i = 0; i < c.length; i++) {
            for (int j = 0; j < c.length; j++) {
                variance += c[i] * c[j] * u[i] * u[j] * r[i][j];
            }
        }
        return Math.sqrt(Math.max(0, variance));
    }

    /**
     * Readings by one gauge whose offset is common to all: the offset's part is |Σc|·u, not √n·u (5.2.2 with r = 1); it
     * vanishes where as many are added as subtracted.
     */
    public static double commonOffset(double[] c, double u) {
        double sum = 0;
        for (double sensitivity : c) {
            sum += sensitivity;
        }
        return Math.abs(sum) * u;
    }

    /** First-order standard uncertainty by differences over ±u of each independent input (5.1.3 note 2). */
    public static double firstOrder(ToDoubleFunction<double[]> f, double[] x, double[] u) {
        double variance = 0;
        for (int i = 0; i < x.length; i++) {
            double slope = slope(f, x, u, i);
            variance += slope * slope;
        }
        return Math.sqrt(variance);
    }

    /**
     * With the next terms, Σᵢ Σⱼ (½ fᵢⱼ² + fᵢ fᵢⱼⱼ) uᵢ² uⱼ² (5.1.2 note), by differences over ±u: for products of
     * inputs near zero, where first derivatives vanish. Symmetric, independent inputs.
     */
    public static double secondOrder(ToDoubleFunction<double[]> f, double[] x, double[] u) {
        double variance = Math.pow(firstOrder(f, x, u), 2);
        for (int i = 0; i < x.length; i++) {
            double slope = slope(f, x, u, i);
            for (int j = 0; j < x.length; j++) {
                double mixed = i == j ? curvature(f, x, u, i) : mixed(f, x, u, i, j);
                double third = i == j ? third(f, x, u, i) : third(f, x, u, i, j);
                variance += 0.5 * mixed * mixed + slope * third;
            }
        }
        return Math.sqrt(Math.max(0, variance));
    }

    private static double at(ToDoubleFunction<double[]> f, double[] x, double[] u, int i, double a, int j, double b) {
        double[] moved = x.clone();
        moved[i] += a * u[i];
        moved[j] += b * u[j];
        return f.applyAsDouble(moved);
    }

    private static double slope(ToDoubleFunction<double[]> f, double[] x, double[] u, int i) {
        return (at(f, x, u, i, 1, i, 0) - at(f, x, u, i, -1, i, 0)) / 2;
    }

    private static double curvature(ToDoubleFunction<double[]> f, double[] x, double[] u, int i) {
        return at(f, x, u, i, 1, i, 0) - 2 * f.applyAsDouble(x) + at(f, x, u, i, -1, i, 0);
    }

    private static double mixed(ToDoubleFunction<double[]> f, double[] x, double[] u, int i, int j) {
        return (at(f, x, u, i, 1, j, 1)
                        - at(f, x, u, i, 1, j, -1)
                        - at(f, x, u, i, -1, j, 1)
                        + at(f, x, u, i, -1, j, -1))
                / 4;
    }

    private static double third(ToDoubleFunction<double[]> f, double[] x, double[] u, int i, int j) {
        double high = at(f, x, u, i, 1, j, 1) - 2 * at(f, x, u, i, 1, j, 0) + at(f, x, u, i, 1, j, -1);
        double low = at(f, x, u, i, -1, j, 1) - 2 * at(f, x, u, i, -1, j, 0) + at(f, x, u, i, -1, j, -1);
        return (high - low) / 2;
    }

    private static double third(ToDoubleFunction<double[]> f, double[] x, double[] u, int i) {
        return (at(f, x, u, i, 2, i, 0)
                        - 2 * at(f, x, u, i, 1, i, 0)
                        + 2 * at(f, x, u, i, -1, i, 0)
                        - at(f, x, u, i, -2, i, 0))
                / 2;
    }
}
