package shimwright.mechanics.measure;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/** Student's t with real degrees of freedom ν above 0; the normal distribution where ν is infinite or above 10⁷. */
public final class Student {
    private static final double NORMAL_FROM = 1e7;
    private static final NormalDistribution NORMAL = new NormalDistribution(0, 1);

    private Student() {}

    /** P(T ≤ t). */
    public static double cumulative(double t, double nu) {
        if (Double.isInfinite(t)) {
            return t > 0 ? 1 : 0;
        }
        return nu > NORMAL_FROM ? NORMAL.cumulativeProbability(t) : new TDistribution(nu).cumulativeProbability(t);
    }

    /** The t with P(T ≤ t) = p, 0 < p < 1. */
    public static double quantile(double p, double nu) {
        if (!(p > 0 && p < 1)) {
            throw new IllegalArgumentException("quantile of " + p);
        }
        return nu > NORMAL_FROM
                ? NORMAL.inverseCumulativeProbability(p)
                : new TDistribution(nu).inverseCumulativeProbability(p);
    }

    /** Coverage factor t_p(ν) of a two-sided interval with probability p (JCGM 100:2008 table G.2). */
    public static double coverageFactor(double p, double nu) {
        return quantile((1 + p) / 2, nu);
    }
}
