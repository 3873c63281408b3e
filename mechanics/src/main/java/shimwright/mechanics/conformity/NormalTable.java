package shimwright.mechanics.conformity;

import shimwright.mechanics.measure.Student;

/**
 * The normal distribution by table, for where it is asked for many thousand times: values and slopes every 1/256 between which a cubic
 * goes, so that it differs from {@link Student} by less than 1e-11.
 */
final class NormalTable {
    private static final double REACH = 8.5;
    private static final int BY = 256;
    private static final int SIZE = (int) (2 * REACH * BY);
    private static final double[] AT = new double[SIZE + 1];
    private static final double[] SLOPE = new double[SIZE + 1];

    static {
        for (int k = 0; k <= SIZE; k++) {
            double z = (double) k / BY - REACH;
            AT[k] = Student.cumulative(z, Double.POSITIVE_INFINITY);
            SLOPE[k] = Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI) / BY;
        }
    }

    private NormalTable() {}

    /** P(Z ≤ z). */
    static double below(double z) {
        double x = (z + REACH) * BY;
        if (!(x > 0)) {
            return 0;
        }
        int k = (int) x;
        return k >= SIZE ? 1 : between(k, x - k);
    }

    private static double between(int k, double t) {
        double rise = AT[k + 1] - AT[k];
        double a = SLOPE[k] - rise;
        double b = rise - SLOPE[k + 1];
        return AT[k] + t * (rise + (1 - t) * (a * (1 - t) + b * t));
    }

    /** The z with P(Z ≤ z) = p; the ends of the table beyond it. */
    static double quantile(double p) {
        int low = 0;
        int high = SIZE;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (AT[middle] <= p) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double rise = AT[low + 1] - AT[low];
        double t = rise > 0 ? Math.max(0, Math.min(1, (p - AT[low]) / rise)) : 0;
        // the chord is nearly straight: one step along the slope is enough
        double slope = SLOPE[low] + t * (SLOPE[low + 1] - SLOPE[low]);
        double step = slope > 0 ? (p - between(low, t)) / slope : 0;
        return (low + Math.max(0, Math.min(1, t + step))) / BY - REACH;
    }
}
