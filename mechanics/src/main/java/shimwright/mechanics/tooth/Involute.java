package shimwright.mechanics.tooth;

/** The involute function inv a = tan a − a and its inverse (ISO 21771-1:2022 4.3; involute geometry). */
public final class Involute {
    private static final double SERIES_BELOW = 0.1;
    /** Taylor coefficients of tan a − a, from a³ on in steps of a². */
    private static final double[] SERIES = {
        1.0 / 3, 2.0 / 15, 17.0 / 315, 62.0 / 2835, 1382.0 / 155925, 21844.0 / 6081075, 929569.0 / 638512875
    };

    private static final int ROUNDS = 60;

    private Involute() {}

    /**
     * The involute of an angle, to full double precision.
     *
     * @param angle in radians, 0 to below π/2; anything else is a bug of the caller and throws
     * @return tan a − a, a plain number (radians), 0 or more
     */
    public static double of(double angle) {
        if (!(angle >= 0 && angle < Math.PI / 2)) {
            throw new IllegalArgumentException("no involute of " + angle);
        }
        if (angle >= SERIES_BELOW) {
            return Math.tan(angle) - angle;
        }
        double square = angle * angle;
        double sum = 0;
        for (int i = SERIES.length - 1; i >= 0; i--) {
            sum = sum * square + SERIES[i];
        }
        return sum * square * angle;
    }

    /**
     * The angle that has this involute, to about one part in 10¹⁴; Newton steps on a convex increasing function, kept
     * inside 0 to π/2.
     *
     * @param involute 0 or more, finite; anything else is a bug of the caller and throws
     * @return angle in radians, 0 to below π/2
     */
    public static double inverse(double involute) {
        if (!(involute >= 0) || Double.isInfinite(involute)) {
            throw new IllegalArgumentException("no angle has the involute " + involute);
        }
        if (involute == 0) {
            return 0;
        }
        double angle = involute < 0.5 ? Math.cbrt(3 * involute) : Math.atan(involute + 1.4);
        for (int i = 0; i < ROUNDS; i++) {
            double tan = Math.tan(angle);
            double next = angle - (of(angle) - involute) / (tan * tan);
            if (next >= Math.PI / 2) {
                next = (angle + Math.PI / 2) / 2;
            } else if (next <= 0) {
                next = angle / 2;
            }
            if (Math.abs(next - angle) <= 1e-15 * angle) {
                return next;
            }
            angle = next;
        }
        return angle;
    }
}
