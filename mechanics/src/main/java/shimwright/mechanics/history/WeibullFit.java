package shimwright.mechanics.history;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.special.Gamma;
import org.hipparchus.util.FastMath;
import shimwright.mechanics.measure.Interval;
import shimwright.mechanics.measure.Quadrature;
import shimwright.mechanics.measure.Statistics;

/** Two-parameter Weibull of lives, some cut off from the right. Lives above 0, all in one unit. */
final class WeibullFit {
    /** Shapes outside are not looked for. */
    static final double LEAST_SHAPE = 0.02;

    static final double MOST_SHAPE = 500;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    private static final double FARTHEST = Math.log(1e4);

    private final double unit;
    private final double[] logs;
    private final int failures;
    private final double sumOfFailures;

    WeibullFit(List<Double> failed, List<Double> unfailed) {
        double most = 0;
        for (double t : failed) {
            most = Math.max(most, t);
        }
        for (double t : unfailed) {
            most = Math.max(most, t);
        }
        unit = most;
        failures = failed.size();
        logs = new double[failed.size() + unfailed.size()];
        double sum = 0;
        for (int i = 0; i < logs.length; i++) {
            double t = i < failures ? failed.get(i) : unfailed.get(i - failures);
            logs[i] = FastMath.log(t / most);
            sum += i < failures ? logs[i] : 0;
        }
        sumOfFailures = sum;
    }

    /** Σ (t/largest)^shape over all lives. */
    private double powers(double shape) {
        double sum = 0;
        for (double log : logs) {
            sum += FastMath.exp(shape * log);
        }
        return sum;
    }

    /** Σt^b ln t/Σt^b − 1/b − mean ln of failures; rises with b and is 0 at the estimate. */
    private double slope(double shape) {
        double weighted = 0;
        for (double log : logs) {
            weighted += FastMath.exp(shape * log) * log;
        }
        return weighted / powers(shape) - 1 / shape - sumOfFailures / failures;
    }

    /** The most likely shape; empty where it lies beyond {@link #LEAST_SHAPE} to {@link #MOST_SHAPE}. */
    OptionalDouble shape() {
        if (failures == 0 || slope(LEAST_SHAPE) > 0 || slope(MOST_SHAPE) < 0) {
            return OptionalDouble.empty();
        }
        double log = Quadrature.crossing(b -> slope(FastMath.exp(b)), 0, Math.log(LEAST_SHAPE), Math.log(MOST_SHAPE));
        return OptionalDouble.of(FastMath.exp(log));
    }

    /** Most likely scale at a shape, (Σt^b/r)^(1/b); at least one failure. */
    double scale(double shape) {
        return unit * Math.pow(powers(shape) / failures, 1 / shape);
    }

    /** Lower bound of the scale at a known shape, (2Σt^b/χ²(C; 2r+2))^(1/b); with no failure (Σt^b/−ln(1−C))^(1/b). */
    double leastScale(double shape, double confidence) {
        double chi = new ChiSquaredDistribution(2 * failures + 2).inverseCumulativeProbability(confidence);
        return unit * Math.pow(2 * powers(shape) / chi, 1 / shape);
    }

    /** Logarithm of the likelihood. */
    double logLikelihood(double shape, double scale) {
        double logScale = FastMath.log(scale / unit);
        double exponents = 0;
        for (double log : logs) {
            exponents += FastMath.exp(shape * (log - logScale));
        }
        return failures * (FastMath.log(shape) - shape * logScale)
                + (shape - 1) * sumOfFailures
                - exponents
                - failures * FastMath.log(unit);
    }

    /** Life that a share of all does not reach: scale·(−ln(1−p))^(1/shape). */
    static double quantile(double shape, double scale, double p) {
        return scale * Math.pow(-Math.log1p(-p), 1 / shape);
    }

    static double mean(double shape, double scale) {
        return scale * FastMath.exp(Gamma.logGamma(1 + 1 / shape));
    }

    /** Likelihood-ratio interval of the shape. */
    Interval shapeBounds(double shape, double confidence) {
        return bounds(shape, b -> logLikelihood(b, scale(b)), confidence);
    }

    /** Likelihood-ratio interval of the life that a share p does not reach; the scale itself is p = 1 − 1/e. */
    Interval quantileBounds(double shape, double p, double confidence) {
        double stretch = -Math.log1p(-p);
        double at = quantile(shape, scale(shape), p);
        double logShape = FastMath.log(shape);
        return bounds(
                at,
                life -> most(
                        b -> logLikelihood(FastMath.exp(b), life * Math.pow(stretch, -1 / FastMath.exp(b))), logShape),
                confidence);
    }

    /** Where twice the loss of log-likelihood reaches χ²; an end beyond 10⁴ times is taken as 0 or infinite. */
    private static Interval bounds(double at, DoubleUnaryOperator profile, double confidence) {
        double loss = new ChiSquaredDistribution(1).inverseCumulativeProbability(confidence) / 2;
        double top = profile.applyAsDouble(at);
        DoubleUnaryOperator up = x -> top - profile.applyAsDouble(at * FastMath.exp(x));
        DoubleUnaryOperator down = x -> top - profile.applyAsDouble(at * FastMath.exp(-x));
        double high = up.applyAsDouble(FARTHEST) < loss
                ? Double.POSITIVE_INFINITY
                : at * FastMath.exp(Quadrature.crossing(up, loss, 0, FARTHEST));
        double low = down.applyAsDouble(FARTHEST) < loss
                ? 0
                : at * FastMath.exp(-Quadrature.crossing(down, loss, 0, FARTHEST));
        return new Interval(low, high);
    }

    /** Largest value near a place, of a function with one top, by golden section over e^±5. */
    private static double most(DoubleUnaryOperator f, double near) {
        double a = near - 5;
        double b = near + 5;
        double x = b - GOLDEN * (b - a);
        double y = a + GOLDEN * (b - a);
        double fx = f.applyAsDouble(x);
        double fy = f.applyAsDouble(y);
        while (b - a > 1e-9) {
            if (fx < fy) {
                a = x;
                x = y;
                fx = fy;
                y = a + GOLDEN * (b - a);
                fy = f.applyAsDouble(y);
            } else {
                b = y;
                y = x;
                fy = fx;
                x = b - GOLDEN * (b - a);
                fx = f.applyAsDouble(x);
            }
        }
        return Math.max(fx, fy);
    }

    /** Whether all failures are the same and nothing outlived them. */
    static boolean allAlike(List<Double> failed, List<Double> unfailed) {
        return Statistics.range(failed) == 0 && unfailed.stream().allMatch(t -> t <= failed.get(0));
    }
}
