package shimwright.mechanics.measure;

import java.util.List;

/**
 * The uncertainty of a result, by independent influences.
 *
 * @param contributions with their shares of the variance, which sum to 1 (or all 0 when nothing is uncertain)
 * @param u combined standard uncertainty, in the result's SI unit
 * @param nu effective degrees of freedom; positive infinity when every influence is taken as certain
 */
public record Budget(List<Contribution> contributions, double u, double nu) {
    /** Nothing uncertain. */
    public static final Budget NONE = of(List.of());

    public Budget {
        contributions = List.copyOf(contributions);
    }

    /**
     * Sums independent influences: u² = Σ(c·u)² (JCGM 100:2008 5.1.2), ν = u⁴/Σ((c·u)⁴/ν) (G.4.1, equation G.2b), not
     * truncated. Influences that are correlated must be summed into one before.
     */
    public static Budget of(List<Contribution> parts) {
        double u = 0;
        for (Contribution part : parts) {
            u = Math.hypot(u, part.part());
        }
        if (u == 0) {
            return new Budget(parts, 0, Double.POSITIVE_INFINITY);
        }
        double total = u;
        List<Contribution> shared = parts.stream()
                .map(part -> new Contribution(
                        part.name(), part.u(), part.sensitivity(), Math.pow(part.part() / total, 2), part.nu()))
                .toList();
        return new Budget(shared, u, degreesOfFreedom(u, parts));
    }

    /** Effective degrees of freedom for a combined u greater than 0 (G.4.1, equation G.2b), not truncated. */
    public static double degreesOfFreedom(double u, List<Contribution> parts) {
        double sum = 0;
        for (Contribution part : parts) {
            sum += Math.pow(part.part() / u, 4) / part.nu();
        }
        return sum == 0 ? Double.POSITIVE_INFINITY : 1 / sum;
    }
}
