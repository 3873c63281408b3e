package shimwright.mechanics.measure;

/**
 * A coverage interval.
 *
 * @param low lower end
 * @param high upper end, not below {@code low}
 */
public record Interval(double low, double high) {
    /** High minus low. */
    public double length() {
        return high - low;
    }

    /**
     * The shortest interval that holds a share of a sorted sample: q = p·M steps (rounded), the r that makes y(r+q) −
     * y(r) least (JCGM 101:2008 7.7.2); the lowest of equals.
     *
     * @param sorted rising, at least 2 values
     * @param p above 0 and below 1
     */
    public static Interval shortest(double[] sorted, double p) {
        int q = steps(sorted.length, p);
        int best = 0;
        for (int r = 1; r + q < sorted.length; r++) {
            if (sorted[r + q] - sorted[r] < sorted[best + q] - sorted[best]) {
                best = r;
            }
        }
        return new Interval(sorted[best], sorted[best + q]);
    }

    /** The interval with as many values of a sorted sample below it as above (7.7.1). */
    public static Interval symmetric(double[] sorted, double p) {
        int q = steps(sorted.length, p);
        int r = (sorted.length - q + 1) / 2;
        int low = Math.max(1, r) - 1;
        return new Interval(sorted[low], sorted[Math.min(sorted.length - 1, low + q)]);
    }

    private static int steps(int size, double p) {
        if (size < 2 || !(p > 0 && p < 1)) {
            throw new IllegalArgumentException("interval of " + size + " values, " + p);
        }
        return Math.max(1, Math.min(size - 1, (int) Math.floor(p * size + 0.5)));
    }
}
