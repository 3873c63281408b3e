package shimwright.mechanics.measure;

import java.util.List;
import org.hipparchus.special.Gamma;
import org.hipparchus.util.FastMath;

/** Statistics of a series of readings, summed twice so that large common parts do no harm. Units as the readings. */
public final class Statistics {
    private Statistics() {}

    /** Arithmetic mean of at least one value (JCGM 100:2008 4.2.1). */
    public static double mean(List<Double> values) {
        need(values, 1);
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        double first = sum / values.size();
        double rest = 0;
        for (double value : values) {
            rest += value - first;
        }
        return first + rest / values.size();
    }

    /** Experimental standard deviation with n−1, of at least two values (4.2.2). */
    public static double deviation(List<Double> values) {
        need(values, 2);
        return Math.sqrt(covariance(values, values));
    }

    /** Experimental covariance with n−1 of two series read together (5.2.3, equation 17 times n). */
    public static double covariance(List<Double> one, List<Double> two) {
        need(one, 2);
        if (one.size() != two.size()) {
            throw new IllegalArgumentException("series of " + one.size() + " and " + two.size());
        }
        double meanOne = mean(one);
        double meanTwo = mean(two);
        double products = 0;
        double sumOne = 0;
        double sumTwo = 0;
        for (int i = 0; i < one.size(); i++) {
            double a = one.get(i) - meanOne;
            double b = two.get(i) - meanTwo;
            products += a * b;
            sumOne += a;
            sumTwo += b;
        }
        return (products - sumOne * sumTwo / one.size()) / (one.size() - 1);
    }

    /** Correlation coefficient of two series read together, −1 to 1 (5.2.2, equation 14); 0 when one stands still. */
    public static double correlation(List<Double> one, List<Double> two) {
        double spread = Math.sqrt(covariance(one, one) * covariance(two, two));
        return spread == 0 ? 0 : Math.max(-1, Math.min(1, covariance(one, two) / spread));
    }

    /** Middle value, or the mean of the two middle ones. */
    public static double median(List<Double> values) {
        need(values, 1);
        List<Double> sorted = values.stream().sorted().toList();
        int half = sorted.size() / 2;
        return sorted.size() % 2 == 1 ? sorted.get(half) : (sorted.get(half - 1) + sorted.get(half)) / 2;
    }

    /** Largest minus smallest. */
    public static double range(List<Double> values) {
        need(values, 1);
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            low = Math.min(low, value);
            high = Math.max(high, value);
        }
        return high - low;
    }

    /** Lag-1 autocorrelation, divided by the full sum of squares (NIST StRD); 0 for a series that stands still. */
    public static double lag1(List<Double> values) {
        need(values, 2);
        double mean = mean(values);
        double products = 0;
        double squares = 0;
        for (int i = 0; i < values.size(); i++) {
            double d = values.get(i) - mean;
            squares += d * d;
            if (i > 0) {
                products += d * (values.get(i - 1) - mean);
            }
        }
        return squares == 0 ? 0 : products / squares;
    }

    /** Readings of the same thing that an autocorrelated series is worth: n(1−r)/(1+r), between 1 and n. */
    public static double effectiveCount(List<Double> values) {
        double r = lag1(values);
        double n = values.size();
        return Math.max(1, Math.min(n, n * (1 - r) / (1 + r)));
    }

    /** c₄(n): expected standard deviation of n normal readings, over the true one; n at least 2. */
    public static double c4(int n) {
        if (n < 2) {
            throw new IllegalArgumentException("c4 of " + n);
        }
        return Math.sqrt(2.0 / (n - 1)) * FastMath.exp(Gamma.logGamma(n / 2.0) - Gamma.logGamma((n - 1) / 2.0));
    }

    /** How uncertain s itself is, relative: √(1−c₄²)/c₄ (JCGM 100:2008 table E.1). */
    public static double relativeUncertaintyOfDeviation(int n) {
        double c4 = c4(n);
        return Math.sqrt(1 - c4 * c4) / c4;
    }

    private static void need(List<Double> values, int least) {
        if (values.size() < least) {
            throw new IllegalArgumentException(values.size() + " values, " + least + " needed");
        }
    }
}
