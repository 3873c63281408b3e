package shimwright.mechanics.measure;

/**
 * Standard uncertainties of single influences (JCGM 100:2008 4.3, Type B) and of means (4.2, Type A). All results are in
 * the unit of the argument. A negative or non-finite argument is a bug and throws.
 */
public final class Uncertainties {
    private Uncertainties() {}

    /** Any value within ±a is equally likely: a/√3 (4.3.7). */
    public static double rectangular(double a) {
        return sized(a) / Math.sqrt(3);
    }

    /** Values near the middle of ±a are likelier: a/√6 (4.3.9). */
    public static double triangular(double a) {
        return sized(a) / Math.sqrt(6);
    }

    /** Trapezoid of half-width a with a top of half-width b·a, 0 ≤ b ≤ 1: a·√((1+b²)/6) (4.3.9). */
    public static double trapezoid(double a, double b) {
        if (!(b >= 0 && b <= 1)) {
            throw new IllegalArgumentException("top ratio " + b);
        }
        return sized(a) * Math.sqrt((1 + b * b) / 6);
    }

    /** A quantity that swings between ±a like a sine: a/√2 (H.1.3.4). */
    public static double cyclic(double a) {
        return sized(a) / Math.sqrt(2);
    }

    /** Bounds below and above the estimate that differ: (b₋ + b₊)/√12 (4.3.8). */
    public static double betweenBounds(double below, double above) {
        return (sized(below) + sized(above)) / Math.sqrt(12);
    }

    /** One reading rounded to a step q: q/√12 (F.2.2.1). */
    public static double step(double q) {
        return sized(q) / Math.sqrt(12);
    }

    /** The difference of two readings, each rounded to a step q, is triangular with half-width q: q/√6. */
    public static double stepTwice(double q) {
        return triangular(q);
    }

    /** From a certificate's expanded uncertainty U = k·u, k greater than 0 (4.3.3). */
    public static double expanded(double expanded, double k) {
        if (!(k > 0)) {
            throw new IllegalArgumentException("coverage factor " + k);
        }
        return sized(expanded) / k;
    }

    /** Degrees of freedom of a guessed uncertainty that may be wrong by a relative amount: ½·(Δu/u)⁻² (G.4.2, G.3). */
    public static double degreesOfFreedom(double relativeUncertainty) {
        return 0.5 / (sized(relativeUncertainty) * relativeUncertainty);
    }

    /** Mean of n readings whose standard deviation s is known: s/√n (4.2.3; H.1.3.2 for a pooled s). */
    public static double ofMean(double s, int n) {
        if (n < 1) {
            throw new IllegalArgumentException("mean of " + n);
        }
        return sized(s) / Math.sqrt(n);
    }

    /** Standard deviation of a scaled t input, x + u·t(ν), ν above 2: u·√(ν/(ν−2)) (JCGM 101:2008 6.4.9.4). */
    public static double ofScaledT(double u, double nu) {
        if (!(nu > 2)) {
            throw new IllegalArgumentException("no standard deviation at " + nu + " degrees of freedom");
        }
        return sized(u) * Math.sqrt(nu / (nu - 2));
    }

    private static double sized(double a) {
        if (!(a >= 0) || !Double.isFinite(a)) {
            throw new IllegalArgumentException("uncertainty from " + a);
        }
        return a;
    }
}
