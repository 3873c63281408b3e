package shimwright.mechanics.measure;

/**
 * One influence in a budget.
 *
 * @param name what it is, in words
 * @param u standard uncertainty of the influence, in the influence's own SI unit, 0 or more
 * @param sensitivity change of the result per change of the influence, signed
 * @param share part of the combined variance, 0 to 1; 0 until the budget is summed
 * @param nu degrees of freedom, greater than 0; positive infinity when taken as certain
 */
public record Contribution(String name, double u, double sensitivity, double share, double nu) {
    public Contribution {
        if (!(u >= 0) || !Double.isFinite(u) || !Double.isFinite(sensitivity) || !(nu > 0)) {
            throw new IllegalArgumentException("contribution " + name + ": u " + u + ", c " + sensitivity);
        }
    }

    /** An influence that counts one for one. */
    public static Contribution of(String name, double u, double nu) {
        return new Contribution(name, u, 1, 0, nu);
    }

    /** An influence with its sensitivity. */
    public static Contribution of(String name, double u, double sensitivity, double nu) {
        return new Contribution(name, u, sensitivity, 0, nu);
    }

    /** Its part of the standard uncertainty of the result, in the result's SI unit. */
    public double part() {
        return Math.abs(sensitivity) * u;
    }
}
