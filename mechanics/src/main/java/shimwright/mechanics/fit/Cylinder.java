package shimwright.mechanics.fit;

/**
 * A ring or solid shaft under even pressure inside or outside: Lamé's thick-walled cylinder in plane stress (Boresi and
 * Schmidt, Advanced Mechanics of Materials, ch. 11; Ugural and Fenster, ch. 8). Elastic, away from the ends, contact all
 * round. Lengths in metres, pressures and stresses in Pa, tension positive, diameters not radii.
 *
 * @param inner inside diameter, 0 for a solid shaft
 * @param outer outside diameter, greater than {@code inner}
 * @param material modulus and Poisson's ratio count
 */
record Cylinder(double inner, double outer, Material.Data material) {
    Cylinder {
        if (!(inner >= 0 && inner < outer)) {
            throw new IllegalArgumentException("a cylinder from " + inner + " to " + outer);
        }
    }

    private double ratio() {
        return (outer * outer + inner * inner) / (outer * outer - inner * inner);
    }

    /** Hoop stress at a diameter under inside pressure p. */
    static double hoopUnderInside(double p, double inner, double outer, double at) {
        return p * inner * inner / (outer * outer - inner * inner) * (1 + outer * outer / (at * at));
    }

    /** Radial stress at a diameter under inside pressure p. */
    static double radialUnderInside(double p, double inner, double outer, double at) {
        return p * inner * inner / (outer * outer - inner * inner) * (1 - outer * outer / (at * at));
    }

    /** Hoop stress at a diameter under outside pressure p; compression, so negative. */
    static double hoopUnderOutside(double p, double inner, double outer, double at) {
        return -p * outer * outer / (outer * outer - inner * inner) * (1 + inner * inner / (at * at));
    }

    /** By how much the bore opens under 1 Pa inside, m/Pa. */
    double boreOpens() {
        return inner / material.modulus() * (ratio() + material.poisson());
    }

    /** By how much the outside grows under 1 Pa inside, m/Pa. */
    double outsideGrows() {
        return 2 * inner * inner * outer / (material.modulus() * (outer * outer - inner * inner));
    }

    /** By how much the outside shrinks under 1 Pa outside, m/Pa. */
    double outsideShrinks() {
        return outer / material.modulus() * (ratio() - material.poisson());
    }

    /** By how much the bore closes under 1 Pa outside, m/Pa; 0 for a solid shaft. */
    double boreCloses() {
        return 2 * outer * outer * inner / (material.modulus() * (outer * outer - inner * inner));
    }

    /** Growth of the bore by turning, free of pressure, m at rad/s (Ugural and Fenster, 8.5). */
    double boreGrowsBySpeed(double omega) {
        double nu = material.poisson();
        return bySpeed(omega) * inner * ((3 + nu) * outer * outer + (1 - nu) * inner * inner);
    }

    /** Growth of the outside by turning, free of pressure, m at rad/s. */
    double outsideGrowsBySpeed(double omega) {
        double nu = material.poisson();
        return bySpeed(omega) * outer * ((1 - nu) * outer * outer + (3 + nu) * inner * inner);
    }

    private double bySpeed(double omega) {
        return material.density() * omega * omega / (16 * material.modulus());
    }
}
