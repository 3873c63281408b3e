package shimwright.mechanics.fit;

/**
 * A body that changes temperature as a whole (Incropera et al., Fundamentals of Heat and Mass Transfer, 5.1 to 5.3). Good
 * while the Biot number stays below 0.1.
 */
final class Cooling {
    /** W/(m²·K⁴), CODATA 2018. */
    private static final double STEFAN_BOLTZMANN = 5.670374419e-8;

    private Cooling() {}

    /** Volume over area of a ring, m: all faces in the air. */
    static double ringLength(double inner, double outer, double width) {
        double face = (outer * outer - inner * inner) / 4;
        return face * width / (2 * face + (outer + inner) * width);
    }

    /** Volume over area of a ring cooled at one cylindrical face only, m. */
    static double ringLengthAt(double face, double inner, double outer) {
        return (outer * outer - inner * inner) / (4 * face);
    }

    /** Biot number: film coefficient h, W/(m²·K), length m, conductivity W/(m·K). */
    static double biot(double h, double length, double conductivity) {
        return h * length / conductivity;
    }

    /** Time constant, s: density kg/m³, specific heat J/(kg·K). */
    static double timeConstant(double density, double specificHeat, double length, double h) {
        return density * specificHeat * length / h;
    }

    /** Time from one temperature to another nearer to that of the surroundings, s. */
    static double time(double timeConstant, double from, double to, double around) {
        return timeConstant * Math.log((from - around) / (to - around));
    }

    /** Radiation as a film coefficient, W/(m²·K), temperatures in K. */
    static double radiation(double emissivity, double body, double around) {
        return emissivity * STEFAN_BOLTZMANN * (body + around) * (body * body + around * around);
    }
}
