package shimwright.mechanics.measure;

import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;

/**
 * Does a short series climb? Mann-Kendall: S = Σ sign(xⱼ−xᵢ), j after i. Its distribution over all orders of the very
 * values, ties included, is exact up to 60 readings: the inversions of a multiset have the Gaussian multinomial
 * coefficient as generating function (MacMahon). Beyond, normal with tie correction and continuity (Kendall 1975).
 */
public final class Trend {
    private static final int EXACT_TO = 60;

    private Trend() {}

    /** S, from −n(n−1)/2 to n(n−1)/2; positive when climbing. */
    public static int s(List<Double> values) {
        int s = 0;
        for (int i = 0; i < values.size(); i++) {
            for (int j = i + 1; j < values.size(); j++) {
                s += (int) Math.signum(values.get(j) - values.get(i));
            }
        }
        return s;
    }

    /** P(S ≥ observed) if order were chance: small when the series climbs. One-sided. */
    public static double climbing(List<Double> values) {
        return tail(values, s(values));
    }

    /** P(S ≤ observed) if order were chance: small when the series falls. One-sided. */
    public static double falling(List<Double> values) {
        return tail(values, -s(values));
    }

    private static double tail(List<Double> values, int s) {
        if (values.size() < 2) {
            return 1;
        }
        if (values.size() > EXACT_TO) {
            double variance = variance(values);
            return variance == 0 ? 1 : 1 - Student.cumulative((s - 1) / Math.sqrt(variance), Double.POSITIVE_INFINITY);
        }
        return atLeast(ties(values), s);
    }

    /** P(S ≥ s) for n different values. */
    public static double atLeast(int n, int s) {
        int[] single = new int[n];
        Arrays.fill(single, 1);
        return atLeast(single, s);
    }

    /** Smallest S with P(S ≥ s) ≤ α for n different values; n(n−1)/2 + 1 where even perfect order is not enough. */
    public static int critical(int n, double alpha) {
        int most = n * (n - 1) / 2;
        int s = most + 1;
        for (int lower = most; lower >= -most && atLeast(n, lower) <= alpha; lower--) {
            if ((most - lower) % 2 == 0) {
                s = lower;
            }
        }
        return s;
    }

    /** Standard normal Z with continuity correction and tie-corrected variance (Kendall 1975; EPA QA/G-9S). */
    public static double z(List<Double> values) {
        int s = s(values);
        double variance = variance(values);
        return variance == 0 ? 0 : (s - Math.signum(s)) / Math.sqrt(variance);
    }

    private static double variance(List<Double> values) {
        double n = values.size();
        double sum = n * (n - 1) * (2 * n + 5);
        for (int t : ties(values)) {
            sum -= (double) t * (t - 1) * (2.0 * t + 5);
        }
        return sum / 18;
    }

    private static int[] ties(List<Double> values) {
        TreeMap<Double, Integer> counts = new TreeMap<>();
        values.forEach(value -> counts.merge(value, 1, Integer::sum));
        return counts.values().stream().mapToInt(Integer::intValue).toArray();
    }

    private static double atLeast(int[] groups, int s) {
        double[] inversions = {1};
        int placed = 0;
        int pairs = 0;
        for (int group : groups) {
            pairs += placed * group;
            placed += group;
            inversions = product(inversions, gaussianBinomial(placed, group));
        }
        double all = 0;
        double wanted = 0;
        for (int k = 0; k < inversions.length; k++) {
            all += inversions[k];
            wanted += pairs - 2 * k >= s ? inversions[k] : 0;
        }
        return wanted / all;
    }

    /** [n over k] in q by Pascal's rule, additions only: [n,k] = [n−1,k−1] + q^k [n−1,k]. */
    private static double[] gaussianBinomial(int n, int k) {
        double[][] row = new double[k + 1][];
        for (int j = 0; j <= k; j++) {
            row[j] = j == 0 ? new double[] {1} : new double[0];
        }
        for (int m = 1; m <= n; m++) {
            for (int j = Math.min(m, k); j >= 1; j--) {
                double[] next = new double[j * (m - j) + 1];
                add(next, row[j - 1], 0);
                add(next, row[j], j);
                row[j] = next;
            }
        }
        return row[k];
    }

    private static void add(double[] sum, double[] part, int shift) {
        for (int i = 0; i < part.length; i++) {
            sum[i + shift] += part[i];
        }
    }

    private static double[] product(double[] one, double[] two) {
        double[] product = new double[one.length + two.length - 1];
        for (int i = 0; i < one.length; i++) {
            for (int j = 0; j < two.length; j++) {
                product[i + j] += one[i] * two[j];
            }
        }
        return product;
    }
}
