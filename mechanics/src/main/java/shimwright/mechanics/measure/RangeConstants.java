package shimwright.mechanics.measure;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.hipparchus.distribution.continuous.NormalDistribution;

/** Constants of the range of n normal values of unit standard deviation, by integration; n from 2 to 1000. */
public final class RangeConstants {
    private static final NormalDistribution NORMAL = new NormalDistribution(0, 1);
    private static final double FAR = 8.5;
    private static final int PANELS = 12;
    private static final int MOST = 1000;
    private static final Map<Integer, double[]> KNOWN = new ConcurrentHashMap<>();

    private RangeConstants() {}

    /** d₂: mean of the range, ∫ 1 − (1−Φ)ⁿ − Φⁿ (Tippett 1925). */
    public static double d2(int n) {
        return both(n)[0];
    }

    /** d₃: standard deviation of the range. */
    public static double d3(int n) {
        return both(n)[1];
    }

    /** d₂*: √(d₂² + d₃²/g), for the root mean square of the mean of g ranges (Patnaik 1950). */
    public static double d2Star(int n, int g) {
        double d3 = d3(n);
        return Math.sqrt(d2(n) * d2(n) + d3 * d3 / g);
    }

    /** D₄: upper limit of a range over the mean range, 1 + 3d₃/d₂. */
    public static double upperRange(int n) {
        return 1 + 3 * d3(n) / d2(n);
    }

    /** D₃: lower limit of a range over the mean range, 1 − 3d₃/d₂, not below 0. */
    public static double lowerRange(int n) {
        return Math.max(0, 1 - 3 * d3(n) / d2(n));
    }

    /** A₂: three standard deviations of a mean of n, over the mean range. */
    public static double meanLimit(int n) {
        return 3 / (d2(n) * Math.sqrt(n));
    }

    private static double[] both(int n) {
        if (n < 2 || n > MOST) {
            throw new IllegalArgumentException("range of " + n);
        }
        return KNOWN.computeIfAbsent(n, RangeConstants::integrated);
    }

    private static double[] integrated(int n) {
        double d2 = Quadrature.integral(x -> 1 - Math.pow(upper(x), n) - Math.pow(lower(x), n), -FAR, FAR, PANELS);
        double square = 2 * Quadrature.integral(y -> inner(n, y), -FAR, FAR, PANELS);
        return new double[] {d2, Math.sqrt(square - d2 * d2)};
    }

    /** P(least ≤ x, greatest > y) over x below y: the mean square of the range is twice its integral. */
    private static double inner(int n, double y) {
        double below = lower(y);
        double all = Math.pow(below, n);
        return Quadrature.integral(
                x -> 1 - all - Math.pow(upper(x), n) + Math.pow(Math.max(0, below - lower(x)), n), -FAR, y, PANELS);
    }

    private static double lower(double x) {
        return NORMAL.cumulativeProbability(x);
    }

    private static double upper(double x) {
        return NORMAL.cumulativeProbability(-x);
    }
}
