package shimwright.mechanics.conformity;

import java.util.List;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.distribution.continuous.NormalDistribution;
import shimwright.mechanics.measure.Quadrature;
import shimwright.mechanics.measure.Student;

/**
 * What a rule does over many parts: the part of all that is wrongly accepted (consumer's) or wrongly rejected
 * (producer's), for a normal process and a normal measurement (JCGM 106:2012 9.5, A.4).
 *
 * @param mean of the process
 * @param deviation of the process, greater than 0
 * @param u standard uncertainty of one measurement, greater than 0
 * @param limits both given
 * @param guard what each limit is moved inwards for acceptance, may be 0
 */
public record GlobalRisk(double mean, double deviation, double u, Limits limits, double guard) {
    private static final double FAR = 9;
    private static final int PANELS = 40;

    public GlobalRisk {
        if (!(deviation > 0) || !(u > 0) || !limits.closed()) {
            throw new IllegalArgumentException("global risk of an exact process, measurement or an open limit");
        }
    }

    /** Share of all parts that are outside and accepted. */
    public double consumer() {
        NormalDistribution process = new NormalDistribution(mean, deviation);
        DoubleUnaryOperator outside = x -> process.density(x) * accepted(x);
        return integral(outside, mean - FAR * deviation, limits.low())
                + integral(outside, limits.high(), mean + FAR * deviation);
    }

    /** Share of all parts that are inside and rejected. */
    public double producer() {
        NormalDistribution process = new NormalDistribution(mean, deviation);
        double from = Math.max(limits.low(), mean - FAR * deviation);
        double to = Math.min(limits.high(), mean + FAR * deviation);
        return integral(x -> process.density(x) * (1 - accepted(x)), from, to);
    }

    /** In parts, so that the steps of acceptance are met however fine the measurement; 0 where b is not above a. */
    private double integral(DoubleUnaryOperator f, double a, double b) {
        TreeSet<Double> ends = new TreeSet<>(List.of(a, b));
        for (double step : new double[] {limits.low() + guard, limits.high() - guard}) {
            ends.addAll(List.of(step - FAR * u, step, step + FAR * u));
        }
        double sum = 0;
        double from = a;
        for (double to : ends.subSet(a, false, Math.max(a, b), true)) {
            sum += Quadrature.integral(f, from, to, PANELS);
            from = to;
        }
        return sum;
    }

    private double accepted(double x) {
        return Student.cumulative((limits.high() - guard - x) / u, Double.POSITIVE_INFINITY)
                - Student.cumulative((limits.low() + guard - x) / u, Double.POSITIVE_INFINITY);
    }
}
