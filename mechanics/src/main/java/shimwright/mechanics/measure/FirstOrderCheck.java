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
    /**
     * Compares.
     *
     * @param y result at the estimates
     * @param budget its first-order doubt; k is t with its degrees of freedom
     * @param sampled the draws
     * @param coverage probability of the intervals
     * @param digits significant digits of u that matter, 1 or 2
     */
    public static FirstOrderCheck of(double y, Budget budget, Sampled sampled, double coverage, int digits) {
        double half = budget.u() == 0 ? 0 : Student.coverageFactor(coverage, budget.nu()) * budget.u();
        Interval interval = new Interval(y - half, y + half);
        double low = Math.abs(interval.low() - sampled.symmetric().low());
        double high = Math.abs(interval.high() - sampled.symmetric().high());
        double tolerance = Sampled.tolerance(sampled.u(), digits);
        double dust = 1e-12 * (Math.abs(y) + half);
        return new FirstOrderCheck(interval, low, high, tolerance, low <= tolerance + dust && high <= tolerance + dust);
    }
}
