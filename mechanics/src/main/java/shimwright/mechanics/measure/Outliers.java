package shimwright.mechanics.measure;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;

/** Tests for one outlier. A flagged reading is read again or explained; nothing here removes it. */
public final class Outliers {
    private static final NormalDistribution NORMAL = new NormalDistribution(0, 1);
    private static final double FAR = 7.5;
    private static final double LEVEL = 0.05;
    private static final int FEWEST_FOR_GRUBBS = 5;

    private Outliers() {}

    /** Grubbs: largest distance from the mean over s; 0 for a series that stands still. At least three values. */
    public static double grubbs(List<Double> values) {
        double s = Statistics.deviation(values);
        double mean = Statistics.mean(values);
        double most = 0;
        for (double value : values) {
            most = Math.max(most, Math.abs(value - mean));
        }
        return s == 0 ? 0 : most / s;
    }

    /** Largest G that n values can have: (n−1)/√n. */
    public static double mostGrubbs(int n) {
        return (n - 1) / Math.sqrt(n);
    }

    /** Critical G: (n−1)/√n · √(t²/(n−2+t²)), t at α/n one-sided or α/2n two-sided, ν = n−2 (Grubbs 1969). */
    public static double grubbsCritical(int n, double alpha, boolean twoSided) {
        double t = Student.quantile(1 - alpha / (twoSided ? 2.0 * n : n), n - 2);
        return mostGrubbs(n) * Math.sqrt(t * t / (n - 2 + t * t));
    }

    /** One-sided p of G by its t form, n·P(T > t), at most 1. */
    public static double grubbsProbability(int n, double g) {
        double rest = (n - 1.0) * (n - 1) - n * g * g;
        if (rest <= 0) {
            return 0;
        }
        double t = Math.sqrt(n * (n - 2.0) * g * g / rest);
        return Math.min(1, n * Student.cumulative(-t, n - 2));
    }

    /** Dixon's r₁₀ of the value farthest out: gap over range (Dixon 1951); 0 for a series that stands still. */
    public static double dixon(List<Double> values) {
        List<Double> sorted = values.stream().sorted().toList();
        int last = sorted.size() - 1;
        double range = sorted.get(last) - sorted.get(0);
        double gap = Math.max(sorted.get(1) - sorted.get(0), sorted.get(last) - sorted.get(last - 1));
        return range == 0 ? 0 : gap / range;
    }

    /**
     * P(r₁₀ of the largest > q) for n normal values, by integration over the two extremes: n(n−1) ∬ φ(a) φ(b) [Φ(b −
     * q(b−a)) − Φ(a)]ⁿ⁻². Good to six decimals for n = 3 to 30.
     */
    public static double dixonUpperTail(int n, double q) {
        return Quadrature.integral(b -> NORMAL.density(b) * inner(n, q, b), -FAR, FAR, 3) * n * (n - 1);
    }

    private static double inner(int n, double q, double b) {
        return Quadrature.integral(
                a -> NORMAL.density(a)
                        * Math.pow(
                                Math.max(
                                        0,
                                        NORMAL.cumulativeProbability(b - q * (b - a))
                                                - NORMAL.cumulativeProbability(a)),
                                n - 2),
                -FAR,
                b,
                2);
    }

    /** Critical r₁₀, two-sided α taken as α/2 at each end (Rorabacher 1991). */
    public static double dixonCritical(int n, double alphaTwoSided) {
        return Quadrature.crossing(q -> -dixonUpperTail(n, q), -alphaTwoSided / 2, 0, 1);
    }

    /**
     * The outliers, by place in the series, from 0: readings farther than {@code within} from the median of the others
     * while (a) the others agree within {@code within}, or (b) there are at least five and Grubbs' two-sided test at
     * 5 % says so. At most one is named: with more, the series is scattered, not an outlier.
     *
     * @param within largest range that counts as agreement, same unit, 0 or more
     */
    public static List<Integer> among(List<Double> values, double within) {
        List<Integer> outliers = new ArrayList<>();
        if (values.size() < 3) {
            return outliers;
        }
        double most = 0;
        int at = -1;
        for (int i = 0; i < values.size(); i++) {
            double away = Math.abs(values.get(i) - Statistics.median(others(values, i)));
            if (away > most) {
                most = away;
                at = i;
            }
        }
        double slack = within * (1 + 1e-9) + 1e-12;
        if (at < 0 || most <= slack) {
            return outliers;
        }
        boolean othersAgree = Statistics.range(others(values, at)) <= slack;
        boolean tested =
                values.size() >= FEWEST_FOR_GRUBBS && grubbs(values) > grubbsCritical(values.size(), LEVEL, true);
        if (othersAgree || tested) {
            outliers.add(at);
        }
        return outliers;
    }

    private static List<Double> others(List<Double> values, int without) {
        List<Double> others = new ArrayList<>(values);
        others.remove(without);
        return others;
    }
}
