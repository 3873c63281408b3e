package shimwright.mechanics.measure;

/**
 * What draws say of one result, in its SI unit.
 *
 * @param mean of the draws (JCGM 101:2008 7.6)
 * @param u their standard deviation
 * @param shortest the shortest coverage interval
 * @param symmetric the probabilistically symmetric one
 * @param errors standard deviation, by chance of the draws, of mean, u, and the two ends of the shortest interval
 *     (7.9.4); zeros below two blocks
 */
public record DrawSummary(double mean, double u, Interval shortest, Interval symmetric, Errors errors) {
    /** One standard deviation each. */
    public record Errors(double mean, double u, double low, double high) {
        static final Errors NONE = new Errors(0, 0, 0, 0);

        /** The largest of them. */
        public double largest() {
            return Math.max(Math.max(mean, u), Math.max(low, high));
        }
    }

    /**
     * Numerical tolerance δ = ½·10^l of a standard uncertainty written with one or two significant digits as c·10^l
     * (7.9.2); 0 for an uncertainty of 0.
     */
    public static double tolerance(double u, int digits) {
        if (!(u > 0)) {
            return 0;
        }
        int exponent = (int) Math.floor(Math.log10(u)) - (digits - 1);
        boolean carries = Math.rint(u / Math.pow(10, exponent)) >= Math.pow(10, digits);
        return 0.5 * Math.pow(10, carries ? exponent + 1 : exponent);
    }
}
