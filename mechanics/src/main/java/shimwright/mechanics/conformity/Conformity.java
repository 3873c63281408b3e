package shimwright.mechanics.conformity;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import shimwright.mechanics.measure.Student;

/**
 * Conformance of a measured value. The value's uncertainty is a scaled t with ν degrees of freedom, normal where ν is infinite
 * (JCGM 106:2012 7; JCGM 100:2008 G.3). Values, uncertainties and limits in one SI unit; u finite, 0 or more.
 */
public final class Conformity {
    private static final int MOST_READINGS = 50;

    private Conformity() {}

    /** P(lower ≤ true value ≤ upper) = F((upper−y)/u) − F((lower−y)/u) (7.4.1; one-sided 7.3.1). */
    public static double probability(double value, double u, double nu, Limits limits) {
        if (!(u >= 0) || !Double.isFinite(value) || !Double.isFinite(u)) {
            throw new IllegalArgumentException("value " + value + ", u " + u);
        }
        if (u == 0) {
            return limits.hold(value) ? 1 : 0;
        }
        double above = Student.cumulative((value - limits.high()) / u, nu);
        double below = Student.cumulative((limits.low() - value) / u, nu);
        return Math.max(0, 1 - above - below);
    }

    /** The same from the capability and the place between the limits: Φ(4Cm(1−ỹ)) − Φ(−4Cm ỹ) (7.7). */
    public static double probability(double capability, double place) {
        return Student.cumulative(4 * capability * (1 - place), Double.POSITIVE_INFINITY)
                - Student.cumulative(-4 * capability * place, Double.POSITIVE_INFINITY);
    }

    /** What the value proves under a rule. */
    public static Verdict verdict(double value, double u, double nu, Limits limits, Rule rule) {
        boolean inside = limits.hold(value);
        if (!inside && rule.nominalOutsideIsOut()) {
            return Verdict.OUT;
        }
        double probability = probability(value, u, nu, limits);
        if (probability >= rule.probability()) {
            return Verdict.IN;
        }
        return probability <= 1 - rule.probability() ? Verdict.OUT : Verdict.NOT_PROVEN;
    }

    /** Measurement capability index Cm = T/4u (7.6.3); infinite without uncertainty or with an open limit. */
    public static double capability(double u, Limits limits) {
        return u == 0 ? Double.POSITIVE_INFINITY : limits.width() / (4 * u);
    }

    /** Smallest Cm with which a probability can be shown anywhere: 2Φ(2Cm)−1 = p. */
    public static double leastCapability(double probability) {
        return Student.coverageFactor(probability, Double.POSITIVE_INFINITY) / 2;
    }

    /** The best probability any value can reach with this uncertainty: in the middle; 1 with an open limit. */
    public static double best(double u, double nu, Limits limits) {
        return limits.closed() ? probability((limits.low() + limits.high()) / 2, u, nu, limits) : 1;
    }

    /** Guard band on each side of one limit, z·u for a one-sided probability (8.3.2). */
    public static double guardBand(double probability, double u, double nu) {
        return Student.quantile(probability, nu) * u;
    }

    /** Largest step between shims with which every gap can be proven, T − 2zu; negative when none can. */
    public static double largestStep(double u, double probability, Limits limits) {
        return limits.width() - 2 * guardBand(probability, u, Double.POSITIVE_INFINITY);
    }

    /**
     * The largest standard uncertainty with which a value is still proven in.
     *
     * @param nu degrees of freedom of that uncertainty, positive infinity when taken as certain
     * @return empty when the value stands outside, or on a limit
     */
    public static OptionalDouble largestUncertainty(double value, double nu, Limits limits, Rule rule) {
        double room = Math.min(value - limits.low(), limits.high() - value);
        if (!(room > 0)) {
            return OptionalDouble.empty();
        }
        if (Double.isInfinite(room)) {
            return OptionalDouble.of(Double.MAX_VALUE);
        }
        double low = 0;
        double high = room / Student.quantile(rule.probability(), nu);
        if (probability(value, high, nu, limits) >= rule.probability()) {
            return OptionalDouble.of(high);
        }
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            boolean proven = probability(value, middle, nu, limits) >= rule.probability();
            low = proven ? middle : low;
            high = proven ? high : middle;
        }
        return OptionalDouble.of(low);
    }

    /**
     * How many more readings would prove a value in, if they agreed with those taken.
     *
     * @param value mean so far
     * @param deviation standard deviation of one reading
     * @param readings readings so far, at least 2
     * @param other standard uncertainty of all that repeating does not lessen
     * @return 0 when proven already; empty when 50 readings in all would not do
     */
    public static OptionalInt moreReadings(
            double value, double deviation, int readings, double other, Limits limits, Rule rule) {
        for (int n = readings; n <= MOST_READINGS; n++) {
            double random = deviation / Math.sqrt(n);
            double u = Math.hypot(random, other);
            double nu = random == 0 ? Double.POSITIVE_INFINITY : (n - 1) * Math.pow(u / random, 4);
            if (verdict(value, u, nu, limits, rule) == Verdict.IN) {
                return OptionalInt.of(n - readings);
            }
        }
        return OptionalInt.empty();
    }
}
