package shimwright.mechanics.oil;

/**
 * How an oil thins with heat: log log(ν + 0.7) = level − slope log T, ν in mm²/s, T in kelvin, for ν of 2 mm²/s or more.
 *
 * @param level A
 * @param slope B
 */
record Walther(double level, double slope) {
    static final String SOURCE = "ASTM D341, log log(ν + 0.7) = A − B log T";
    private static final double SHIFT = 0.7;
    private static final double MM2 = 1e-6;

    /** Through two points; temperatures in K, viscosities in m²/s. */
    static Walther through(double first, double viscosity, double second, double secondViscosity) {
        double slope = (loglog(viscosity) - loglog(secondViscosity)) / (Math.log10(second) - Math.log10(first));
        return new Walther(loglog(viscosity) + slope * Math.log10(first), slope);
    }

    private static double loglog(double viscosity) {
        return Math.log10(Math.log10(viscosity / MM2 + SHIFT));
    }

    /** Kinematic viscosity in m²/s at a temperature in K. */
    double at(double temperature) {
        return (Math.pow(10, Math.pow(10, level - slope * Math.log10(temperature))) - SHIFT) * MM2;
    }
}
