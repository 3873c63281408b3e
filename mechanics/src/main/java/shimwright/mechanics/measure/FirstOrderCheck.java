package shimwright.mechanics.measure;

/**
 * Whether the law of propagation of uncertainty stood the comparison with draws (JCGM 101:2008 8.1, 8.2).
 *
 * @param firstOrder its interval, y ± k·u
 * @param low how far the lower ends are apart
 * @param high how far the upper ends are apart
 * @param tolerance δ for one significant digit of u
 * @param holds whether both are within δ
 */
public record FirstOrderCheck(Interval firstOrder, double low, double high, double tolerance, boolean holds) {
    private static final double NORMAL_K = 1.96;
    private static final double QUANTILE_ERROR = 2.7;

    /**
     * Compares.
     *
     * @param y result at the estimates
     * @param budget its first-order uncertainty; k is t with its degrees of freedom
     * @param sampled the draws
     * @param coverage probability of the intervals
     * @param digits significant digits of u that matter, 1 or 2
     */
    public static FirstOrderCheck of(double y, Budget budget, DrawSummary sampled, double coverage, int digits) {
        double half = budget.u() == 0 ? 0 : Student.coverageFactor(coverage, budget.nu()) * budget.u();
        Interval interval = new Interval(y - half, y + half);
        double low = Math.abs(interval.low() - sampled.symmetric().low());
        double high = Math.abs(interval.high() - sampled.symmetric().high());
        double tolerance = DrawSummary.tolerance(sampled.u(), digits);
        double dust = 1e-12 * (Math.abs(y) + half);
        return new FirstOrderCheck(interval, low, high, tolerance, low <= tolerance + dust && high <= tolerance + dust);
    }

    /**
     * The same where the ends may also be apart by the chance of so many draws: twice the standard deviation of a
     * quantile, √(p(1 − p)/n)/f (normal, p = 2.5 %: 2.7·u/√n).
     */
    public FirstOrderCheck allowing(int draws) {
        double u = (firstOrder.high() - firstOrder.low()) / (2 * NORMAL_K);
        double chance = 2 * QUANTILE_ERROR * u / Math.sqrt(draws);
        boolean within = low <= tolerance + chance && high <= tolerance + chance;
        return new FirstOrderCheck(firstOrder, low, high, tolerance + chance, holds || within);
    }
}
