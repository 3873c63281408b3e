package shimwright.mechanics.conformity;

/**
 * Conformance of several values at once whose errors hang together: the probability of a box under a normal distribution
 * (JCGM 106:2012 7.2, several quantities). Values that share no error multiply; the others are integrated one after the other, each
 * given those before it, over a fixed lattice of points (A. Genz, Numerical computation of multivariate normal probabilities, J. Comp.
 * Graph. Stat. 1, 1992), so that the same question has the same answer.
 */
public final class JointConformity {
    /** What the answer may be off by where errors are shared, for up to twelve values; seen in tests. */
    public static final double TOLERANCE = 2e-4;

    private static final int POINTS = 2048;
    /** Share of a variance below which what is left of it is taken for nothing. */
    private static final double NOTHING = 1e-12;

    private static final int[] PRIMES = {2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37};

    private final int n;
    /** Lower triangle whose product with its own transpose is the covariance, in the order of integration. */
    private final double[][] root;

    private final double[] low;
    private final double[] high;

    private JointConformity(double[][] covariance, double[] low, double[] high) {
        this.n = low.length;
        this.root = new double[n][n];
        this.low = low;
        this.high = high;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = covariance[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= root[i][k] * root[j][k];
                }
                if (i == j) {
                    root[i][i] = sum <= NOTHING * covariance[i][i] ? 0 : Math.sqrt(sum);
                } else {
                    root[i][j] = root[j][j] == 0 ? 0 : sum / root[j][j];
                }
            }
        }
    }

    /**
     * P(every true value lies within its limits).
     *
     * @param values the values
     * @param covariance of their errors, symmetric and never less than 0 in any direction
     * @param limits of each value
     * @return off by no more than {@link #TOLERANCE}; exact where no two values share an error
     */
    public static double probability(double[] values, double[][] covariance, Limits[] limits) {
        boolean[] taken = new boolean[values.length];
        double product = 1;
        for (int i = 0; i < values.length && product > 0; i++) {
            if (!taken[i]) {
                int[] together = together(covariance, i, taken);
                product *= together.length == 1
                        ? Conformity.probability(
                                values[i], Math.sqrt(covariance[i][i]), Double.POSITIVE_INFINITY, limits[i])
                        : box(values, covariance, limits, together);
            }
        }
        return product;
    }

    /** P(one true value lies within its closed limits), quickly: off by less than 1e-10. */
    public static double alone(double value, double u, Limits limits) {
        return u == 0
                ? (limits.hold(value) ? 1 : 0)
                : NormalTable.below((limits.high() - value) / u) - NormalTable.below((limits.low() - value) / u);
    }

    /** Those that hang together with one by shared errors, marked as taken. */
    private static int[] together(double[][] covariance, int first, boolean[] taken) {
        int[] found = new int[taken.length];
        int count = 0;
        found[count++] = first;
        taken[first] = true;
        for (int at = 0; at < count; at++) {
            for (int j = 0; j < taken.length; j++) {
                if (!taken[j] && covariance[found[at]][j] != 0) {
                    taken[j] = true;
                    found[count++] = j;
                }
            }
        }
        return java.util.Arrays.copyOf(found, count);
    }

    private static double box(double[] values, double[][] covariance, Limits[] limits, int[] members) {
        int m = members.length;
        Integer[] order = new Integer[m];
        double[] alone = new double[m];
        for (int k = 0; k < m; k++) {
            order[k] = k;
            int i = members[k];
            alone[k] =
                    Conformity.probability(values[i], Math.sqrt(covariance[i][i]), Double.POSITIVE_INFINITY, limits[i]);
        }
        java.util.Arrays.sort(order, java.util.Comparator.comparingDouble(k -> alone[k]));
        double[][] part = new double[m][m];
        double[] low = new double[m];
        double[] high = new double[m];
        for (int a = 0; a < m; a++) {
            int i = members[order[a]];
            low[a] = limits[i].low() - values[i];
            high[a] = limits[i].high() - values[i];
            for (int b = 0; b < m; b++) {
                part[a][b] = covariance[i][members[order[b]]];
            }
        }
        return new JointConformity(part, low, high).integral();
    }

    private double integral() {
        double sum = 0;
        double[] point = new double[n];
        double[] step = new double[n];
        for (int j = 0; j < n; j++) {
            step[j] = Math.sqrt(PRIMES[j % PRIMES.length]) * (1 + j / PRIMES.length);
        }
        double[] given = new double[n];
        for (int k = 1; k <= POINTS; k++) {
            for (int j = 0; j < n; j++) {
                double x = k * step[j];
                point[j] = Math.abs(2 * (x - Math.floor(x)) - 1);
            }
            sum += weight(point, given);
        }
        return sum / POINTS;
    }

    /** Product of the chances of each value given those before it, these taken at a point. */
    private double weight(double[] point, double[] given) {
        double product = 1;
        for (int i = 0; i < n; i++) {
            double shift = 0;
            for (int j = 0; j < i; j++) {
                shift += root[i][j] * given[j];
            }
            if (root[i][i] == 0) {
                if (shift < low[i] || shift > high[i]) {
                    return 0;
                }
                given[i] = 0;
                continue;
            }
            double from = NormalTable.below((low[i] - shift) / root[i][i]);
            double to = NormalTable.below((high[i] - shift) / root[i][i]);
            product *= to - from;
            if (product <= 0) {
                return 0;
            }
            if (i + 1 < n) {
                double p = from + point[i] * (to - from);
                given[i] = NormalTable.quantile(p);
            }
        }
        return product;
    }
}
