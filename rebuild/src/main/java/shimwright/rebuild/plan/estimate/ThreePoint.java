package shimwright.rebuild.plan.estimate;

import java.util.SplittableRandom;

/**
 * A figure that is not certain, by three points. Its mean is (least + 4 likely + most)/6 and its standard deviation
 * (most - least)/6, the usual three-point rules (Malcolm, Roseboom, Clark and Fazar 1959, from memory); draws follow the
 * beta distribution between least and most that has both. Without a span it is certain.
 *
 * @param least finite
 * @param likely not less than least
 * @param most not less than likely
 */
public record ThreePoint(double least, double likely, double most) {
    public ThreePoint {
        if (!(least <= likely && likely <= most) || Double.isInfinite(most - least)) {
            throw new IllegalArgumentException(least + " " + likely + " " + most);
        }
    }

    /** Symmetric about a figure; half is 0 or more. */
    public static ThreePoint plusMinus(double figure, double half) {
        return new ThreePoint(figure - half, figure, figure + half);
    }

    /** The mean of the three-point figure: (least + 4 · likely + most) / 6. */
    public double mean() {
        return (least + 4 * likely + most) / 6;
    }

    /** Standard deviation. */
    public double sd() {
        return (most - least) / 6;
    }

    double draw(SplittableRandom random) {
        double span = most - least;
        if (span == 0) {
            return likely;
        }
        double m = (mean() - least) / span;
        double sum = 36 * m * (1 - m) - 1;
        double a = gamma(m * sum, random);
        double b = gamma((1 - m) * sum, random);
        return least + span * a / (a + b);
    }

    /** Gamma draw of unit scale: Marsaglia and Tsang, ACM TOMS 26 (2000) 363, with the lift for shapes under 1. */
    private static double gamma(double shape, SplittableRandom random) {
        if (shape < 1) {
            return gamma(shape + 1, random) * Math.pow(1 - random.nextDouble(), 1 / shape);
        }
        double d = shape - 1.0 / 3;
        double c = 1 / Math.sqrt(9 * d);
        while (true) {
            double x = random.nextGaussian();
            double v = 1 + c * x;
            if (v > 0) {
                v = v * v * v;
                if (Math.log(1 - random.nextDouble()) < x * x / 2 + d - d * v + d * Math.log(v)) {
                    return d * v;
                }
            }
        }
    }
}
