package shimwright.mechanics.worksheet;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shimwright.mechanics.measure.Budget;
import shimwright.mechanics.measure.DrawSummary;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.Uncertainty;

/**
 * Whether the first order suffices, from few values: y = y₀ + a·z + e·z² + b·z³ in each influence z of standard deviation
 * 1, read from five points. Then the mean lies Σe off and the variance is Σ(a² + 2ab·m₄ + b²·m₆ + e²(m₄ − 1)), m₄ and m₆
 * the moments of the influence's shape (JCGM 100:2008 5.1.2, note, for a normal one); the mixed terms are read from all
 * influences moved together. Judged against δ of JCGM 101:2008 7.9.2 and 8.2 for the two digits of u that are shown,
 * k = 2: the ends of an interval move by less than the digits tell.
 */
final class HigherOrderTerms {
    static final String ADVICE = "Ask for Monte Carlo.";

    private static final int DIGITS_SHOWN = 2;

    private final Map<String, Double> middle;
    private final Map<String, Double> shift = new LinkedHashMap<>();
    private final Map<String, Double> variance = new LinkedHashMap<>();

    HigherOrderTerms(Map<String, Double> middle) {
        this.middle = middle;
    }

    /** How many standard uncertainties out the further points lie: √3, or the end of the shape where that is nearer. */
    static double far(Influence influence) {
        double ends = influence.unit().form().ends();
        return ends > 1 ? Math.min(ends, Math.sqrt(3)) : Math.sqrt(3);
    }

    private record Moments(double fourth, double sixth) {
        static Moments of(Uncertainty.Form form) {
            return switch (form) {
                case NORMAL -> new Moments(3, 15);
                case RECTANGULAR -> new Moments(9 / 5.0, 27 / 7.0);
                case TRIANGULAR -> new Moments(12 / 5.0, 54 / 7.0);
                case U_SHAPED -> new Moments(3 / 2.0, 5 / 2.0);
            };
        }
    }

    /**
     * Values with one influence at +u and at −u.
     *
     * @param wide the same at {@link #far} times u, first up then down; empty where there is none
     */
    void add(Influence influence, Map<String, Double> high, Map<String, Double> low, List<Map<String, Double>> wide) {
        Moments m = Moments.of(influence.unit().form());
        double far = far(influence);
        middle.forEach((output, at) -> {
            Double above = high.get(output);
            Double below = low.get(output);
            if (above == null || below == null) {
                return;
            }
            double odd = (above - below) / 2;
            double e = (above - 2 * at + below) / 2;
            Double farAbove = wide.isEmpty() ? null : wide.get(0).get(output);
            Double farBelow = wide.isEmpty() ? null : wide.get(1).get(output);
            double b = farAbove == null || farBelow == null
                    ? 0
                    : ((farAbove - farBelow) / 2 / far - odd) / (far * far - 1);
            double a = odd - b;
            double whole = a * a + 2 * a * b * m.fourth() + b * b * m.sixth() + e * e * (m.fourth() - 1);
            shift.merge(output, e, Double::sum);
            variance.merge(output, whole - odd * odd, Double::sum);
        });
    }

    /** Results that bend. */
    <C extends Record, R extends Record> Set<String> bent(
            PerturbedCase<C, R> mover, R base, List<Influence> influences, Map<String, Budget> budgets) {
        Set<String> bent = new LinkedHashSet<>();
        if (influences.isEmpty()) {
            return bent;
        }
        Map<String, Double> together = together(mover, base, influences);
        budgets.forEach((output, budget) -> {
            double own = shift.getOrDefault(output, 0.0);
            double mixed = mixed(output, together, budget, own);
            double extra = variance.getOrDefault(output, 0.0) + mixed * mixed;
            double u = Math.sqrt(Math.max(0, budget.u() * budget.u() + extra));
            double delta = DrawSummary.tolerance(u, DIGITS_SHOWN) + 1e-9 * Math.abs(middle.getOrDefault(output, 0.0));
            if (Double.isFinite(u) && Math.abs(own) + 2 * Math.abs(u - budget.u()) > delta) {
                bent.add(output);
            }
        });
        return bent;
    }

    /** What to say of a result that bends. */
    static String caution(String output) {
        return "The uncertainty of " + output + " does not follow a straight line: the simple rule may mislead. "
                + ADVICE;
    }

    /** All influences moved by +u. */
    private static <C extends Record, R extends Record> Map<String, Double> together(
            PerturbedCase<C, R> mover, R base, List<Influence> influences) {
        Map<String, Double> by = new LinkedHashMap<>();
        influences.forEach(influence -> influence.moves().forEach((path, u) -> by.merge(path, u, Double::sum)));
        Outcome<R> outcome = mover.by(by);
        return outcome.isOk() ? Numbers.of(mover.outputs(), base, outcome.orElseThrow()) : Map.of();
    }

    /** What straight lines and each influence's own bend leave unexplained when all move. */
    private double mixed(String output, Map<String, Double> moved, Budget budget, double own) {
        Double at = moved.get(output);
        Double from = middle.get(output);
        if (at == null || from == null || budget.contributions().size() < 2) {
            return 0;
        }
        double straight = budget.contributions().stream()
                .mapToDouble(part -> part.sensitivity() * part.u())
                .sum();
        return Math.abs(at - from - own - straight);
    }
}
