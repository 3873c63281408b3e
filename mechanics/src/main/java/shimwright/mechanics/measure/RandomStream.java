package shimwright.mechanics.measure;

import org.hipparchus.util.FastMath;

/**
 * Random deviates by counter: number n of block b under a seed is always the same, whoever asks and on whatever thread.
 * SplitMix64 (Steele, Lea and Flood, OOPSLA 2014, figure 13); block b takes the 2³² counters from b·2³² on, so that
 * blocks never overlap.
 */
public final class RandomStream {
    private static final long STEP = 0x9E3779B97F4A7C15L;
    private static final double UNIT = 0x1.0p-53;

    private long counter;
    private double spare;
    private boolean hasSpare;

    /** The numbers of a block, 0 or more. */
    public RandomStream(long seed, int block) {
        counter = mixed(seed * STEP + STEP) + STEP * ((long) block << 32);
    }

    private static long mixed(long state) {
        long z = (state ^ (state >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    /** Uniform, above 0 and below 1. */
    public double uniform() {
        counter += STEP;
        return ((mixed(counter) >>> 11) + 0.5) * UNIT;
    }

    /** Uniform, above −1 and below 1. */
    public double symmetric() {
        return 2 * uniform() - 1;
    }

    /** Standard normal, by the polar method (JCGM 101:2008 C.4). */
    public double normal() {
        if (hasSpare) {
            hasSpare = false;
            return spare;
        }
        double x;
        double y;
        double square;
        do {
            x = symmetric();
            y = symmetric();
            square = x * x + y * y;
        } while (square >= 1 || square == 0);
        double factor = Math.sqrt(-2 * FastMath.log(square) / square);
        spare = y * factor;
        hasSpare = true;
        return x * factor;
    }

    /** Student's t with ν degrees of freedom, above 0, by the polar method for t (Bailey, Math. Comp. 62, 1994). */
    public double student(double nu) {
        double x;
        double square;
        do {
            x = symmetric();
            double y = symmetric();
            square = x * x + y * y;
        } while (square >= 1 || square == 0);
        return x * Math.sqrt(nu * FastMath.expm1(-2 / nu * FastMath.log(square)) / square);
    }
}
