package shimwright.mechanics.quantity;

/**
 * One uncertainty behind ±.
 *
 * @param u standard uncertainty in SI, finite, 0 or more; the scale of t where {@code nu} is finite
 * @param form shape of the uncertainty about the value
 * @param nu degrees of freedom, 1 or more, positive infinity when taken as certain; finite for a normal form only
 * @param shared name of an influence that moves every value bearing it at once; empty when the uncertainty is the value's own
 */
public record Uncertainty(double u, Form form, double nu, String shared) {
    /** Shapes of an uncertainty (JCGM 101:2008 6.4). */
    public enum Form {
        NORMAL(1),
        /** Anywhere between two ends alike. */
        RECTANGULAR(Math.sqrt(3)),
        TRIANGULAR(Math.sqrt(6)),
        /** Of a value that swings between two ends like a sine. */
        U_SHAPED(Math.sqrt(2));

        private final double ends;

        Form(double ends) {
            this.ends = ends;
        }

        /** Half-width over standard uncertainty; 1 for the normal form, which has no ends. */
        public double ends() {
            return ends;
        }
    }

    public Uncertainty {
        boolean sound = u >= 0 && Double.isFinite(u) && nu >= 1 && (form == Form.NORMAL || Double.isInfinite(nu));
        if (!sound) {
            throw new IllegalArgumentException("uncertainty " + u + ", " + form + ", " + nu);
        }
    }
}
