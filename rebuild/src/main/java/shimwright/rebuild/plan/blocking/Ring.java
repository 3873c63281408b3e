package shimwright.rebuild.plan.blocking;

import org.jspecify.annotations.Nullable;

/**
 * A ring of an item or a wall of a casting about the axis of a shaft; m.
 *
 * @param line id of the shaft about whose axis it lies
 * @param from along the axis
 * @param to along the axis, not less than from
 * @param inner radius
 * @param outer radius; infinity for a wall
 */
record Ring(String line, double from, double to, double inner, double outer) {
    /** Why something does not pass a wall in which nothing is drawn: the weakest of reasons, for a hole may be there all the same. */
    static final String NO_HOLE = "no hole for it is drawn there";

    /** True for a wall in which nothing is drawn. */
    boolean blind() {
        return inner == 0 && Double.isInfinite(outer);
    }

    double middle() {
        return (from + to) / 2;
    }

    /**
     * Why this ring cannot pass another that stands still, moving along its axis; null where it can.
     *
     * @param other the ring that stands still
     * @param apart between the two axes; 0 for the same axis
     * @param play sideways play that this ring has on what runs through its bore
     * @param tolerance overlap that counts as touching
     */
    @Nullable
    String clash(Ring other, double apart, double play, double tolerance) {
        if (apart == 0) {
            boolean overlap = inner < other.outer - tolerance && other.inner < outer - tolerance;
            return overlap
                    ? other.blind()
                            ? NO_HOLE
                            : Double.isInfinite(other.outer)
                                    ? "radius " + mm(outer) + ", the hole has " + mm(other.inner)
                                    : "radii " + mm(inner) + " to " + mm(outer) + " and " + mm(other.inner) + " to "
                                            + mm(other.outer) + " overlap"
                    : null;
        }
        if (outer + other.outer <= apart + play + tolerance || Double.isInfinite(other.outer)) {
            return null;
        }
        return "radii " + mm(outer) + " and " + mm(other.outer) + " are " + mm(outer + other.outer) + " together, "
                + mm(apart) + " lie between the axes"
                + (play > 0 ? " and " + mm(play) + " is the play in its bore" : "");
    }

    private static String mm(double m) {
        double rounded = Math.round(m * 1e5) / 100.0;
        return rounded == Math.rint(rounded) ? Long.toString(Math.round(rounded)) : Double.toString(rounded);
    }
}
