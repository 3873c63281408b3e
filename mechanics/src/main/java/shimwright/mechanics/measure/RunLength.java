package shimwright.mechanics.measure;

import java.util.Arrays;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.LUDecomposition;

/**
 * Average run length of charts of normal values: how many values pass before a signal, on average, from a fresh start.
 * The integral equation of the chart (Page 1954; Crowder 1987) solved at Gauss-Legendre points. Values and limits in
 * standard deviations of one value. Infinite above ten million, where the solution has lost its digits.
 */
public final class RunLength {
    private static final NormalDistribution NORMAL = new NormalDistribution(0, 1);
    private static final int POINTS = 20;
    private static final int PANELS = 6;
    private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(POINTS);
    private static final double MOST = 1e7;

    private RunLength() {}

    /**
     * Exponentially weighted mean.
     *
     * @param lambda weight of the newest value, 0.01 to 1
     * @param width limits, in standard deviations of the weighted mean once steady, above 0
     * @param shift of the mean, in standard deviations of one value
     */
    public static double ewma(double lambda, double width, double shift) {
        double h = width * Math.sqrt(lambda / (2 - lambda));
        double[] x = points(-h, h);
        double[] weight = weights(-h, h);
        int n = x.length;
        double[][] a = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double step = (x[j] - (1 - lambda) * x[i]) / lambda - shift;
                a[i][j] = (i == j ? 1 : 0) - weight[j] * NORMAL.density(step) / lambda;
            }
        }
        double[] solved = solve(a);
        double start = 1;
        for (int j = 0; j < n; j++) {
            start += weight[j] * NORMAL.density(x[j] / lambda - shift) / lambda * solved[j];
        }
        return sound(start);
    }

    /**
     * Two-sided cumulative sums from 0.
     *
     * @param slack k, 0 or more
     * @param limit h, above 0 and at most 30
     * @param shift of the mean
     */
    public static double cusum(double slack, double limit, double shift) {
        double up = oneSided(slack, limit, shift);
        double down = oneSided(slack, limit, -shift);
        return sound(1 / (1 / up + 1 / down));
    }

    /** One cumulative sum, max(0, S + x − k), from 0. */
    public static double oneSided(double slack, double limit, double shift) {
        if (!(limit > 0 && limit <= 30)) {
            throw new IllegalArgumentException("limit " + limit);
        }
        double[] x = points(0, limit);
        double[] weight = weights(0, limit);
        int n = x.length;
        double[][] a = new double[n + 1][n + 1];
        for (int i = 0; i <= n; i++) {
            double from = i == n ? 0 : x[i];
            for (int j = 0; j < n; j++) {
                a[i][j] = (i == j ? 1 : 0) - weight[j] * NORMAL.density(x[j] - from + slack - shift);
            }
            a[i][n] = (i == n ? 1 : 0) - NORMAL.cumulativeProbability(slack - shift - from);
        }
        return sound(solve(a)[n]);
    }

    /** Infinite throughout where no signal ever comes, as far as doubles can tell. */
    private static double[] solve(double[][] a) {
        DecompositionSolver solver = new LUDecomposition(new Array2DRowRealMatrix(a, false), 0).getSolver();
        if (!solver.isNonSingular()) {
            double[] never = new double[a.length];
            Arrays.fill(never, Double.POSITIVE_INFINITY);
            return never;
        }
        return solver.solve(new ArrayRealVector(a.length, 1)).toArray();
    }

    private static double sound(double length) {
        return length >= 1 - 1e-9 && length < MOST ? length : Double.POSITIVE_INFINITY;
    }

    private static double[] points(double from, double to) {
        double[] x = new double[POINTS * PANELS];
        double width = (to - from) / PANELS;
        for (int i = 0; i < x.length; i++) {
            int panel = i / POINTS;
            x[i] = from + width * (panel + 0.5 + RULE.getPoint(i % POINTS) / 2);
        }
        return x;
    }

    private static double[] weights(double from, double to) {
        double[] weight = new double[POINTS * PANELS];
        for (int i = 0; i < weight.length; i++) {
            weight[i] = RULE.getWeight(i % POINTS) * (to - from) / PANELS / 2;
        }
        return weight;
    }
}
