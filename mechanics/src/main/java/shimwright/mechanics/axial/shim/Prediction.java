package shimwright.mechanics.axial.shim;

import shimwright.mechanics.conformity.Conformity;
import shimwright.mechanics.conformity.Limits;

/**
 * What a pack would give: clearance = measured + effect·(pack − trial), u² = u_measured² + effect²·(u_pack² +
 * u_trial²), ν by Welch-Satterthwaite with only the measurement uncertain of its own uncertainty.
 *
 * @param effect change of clearance per thickness, not 0
 * @param nu degrees of freedom of {@code uMeasured}, may be infinite
 */
record Prediction(
        double measured, double uMeasured, double nu, double trial, double uTrial, double effect, Limits limits) {
    static Prediction of(ShimPack.Case c) {
        Double nu = c.nu();
        return new Prediction(
                c.measured(),
                c.uMeasured(),
                nu == null ? Double.POSITIVE_INFINITY : nu,
                c.trialThickness(),
                c.uTrial(),
                c.effect(),
                new Limits(c.lower(), c.upper()));
    }

    double clearance(double thickness) {
        return measured + effect * (thickness - trial);
    }

    double thickness(double clearance) {
        return trial + (clearance - measured) / effect;
    }

    double u(double packVariance) {
        return Math.sqrt(uMeasured * uMeasured + effect * effect * (packVariance + uTrial * uTrial));
    }

    double freedom(double u) {
        return uMeasured == 0 || Double.isInfinite(nu) ? Double.POSITIVE_INFINITY : nu * Math.pow(u / uMeasured, 4);
    }

    double probability(double thickness, double packVariance) {
        double u = u(packVariance);
        return Conformity.probability(clearance(thickness), u, freedom(u), limits);
    }

    /** Never below {@link #probability}: with the same u the normal distribution is the narrowest of the t. */
    double bound(double thickness, double packVariance) {
        return Conformity.probability(clearance(thickness), u(packVariance), Double.POSITIVE_INFINITY, limits);
    }

    /** Grows as the probability falls, for packs with the same uncertainty: distance from the middle, or towards the limit. */
    double remoteness(double thickness) {
        double clearance = clearance(thickness);
        if (limits.closed()) {
            return Math.abs(clearance - (limits.low() + limits.high()) / 2);
        }
        return Double.isInfinite(limits.low()) ? clearance : -clearance;
    }

    /** Thinnest and thickest pack within the limits. */
    double[] window() {
        double one = thickness(limits.low());
        double two = thickness(limits.high());
        return new double[] {Math.min(one, two), Math.max(one, two)};
    }
}
