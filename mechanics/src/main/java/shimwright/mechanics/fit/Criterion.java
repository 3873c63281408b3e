package shimwright.mechanics.fit;

/** How a stress state is compared with the yield strength. */
public enum Criterion {
    /** Distortion energy, plane stress. */
    VON_MISES,
    /** Greatest shear, plane stress; the most cautious. */
    TRESCA,
    /** Tresca times √3/2 as in the DIN 7190 family, from memory; the least cautious. */
    MODIFIED_TRESCA;

    /**
     * Equivalent stress at the bore of a hub, Pa.
     *
     * @param p joint pressure, Pa
     * @param q joint diameter over outside diameter, 0 to 1
     */
    double hub(double p, double q) {
        double wall = 1 - q * q;
        return switch (this) {
            case VON_MISES -> p * Math.sqrt(3 + Math.pow(q, 4)) / wall;
            case TRESCA -> 2 * p / wall;
            case MODIFIED_TRESCA -> Math.sqrt(3) * p / wall;
        };
    }

    /**
     * Greatest equivalent stress of a shaft, Pa: at the bore of a hollow one, anywhere in a solid one.
     *
     * @param p joint pressure, Pa
     * @param c bore over joint diameter, 0 to 1
     */
    double shaft(double p, double c) {
        double shear = c > 0 ? 2 * p / (1 - c * c) : p;
        return this == MODIFIED_TRESCA ? shear * Math.sqrt(3) / 2 : shear;
    }
}
