package shimwright.mechanics.worksheet;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shimwright.mechanics.measure.Budget;
import shimwright.mechanics.measure.Sampled;
import shimwright.mechanics.outcome.Outcome;

/**
 * Whether the first order suffices, from few values: the next terms of JCGM 100:2008 5.1.2 (note) shift the mean by
 * ½Σf″u² and raise the variance by ½Σ(f″u²)²; the mixed terms are read from all influences moved together. Judged
 * against δ of JCGM 101:2008 8.2 for one digit of u, k = 2.
 */
final class HigherOrderTerms {
    static final String ADVICE = "Ask for Monte Carlo.";

    private final Map<String, Double> middle;
    private final Map<String, Double> shift = new LinkedHashMap<>();
    private final Map<String, Double> square = new LinkedHashMap<>();

    HigherOrderTerms(Map<String, Double> middle) {
        this.middle = middle;
    }

    /** Values with one influence at +u and at −u. */
    void add(Map<String, Double> high, Map<String, Double> low) {
        middle.forEach((output, at) -> {
            Double above = high.get(output);
            Double below = low.get(output);
            if (above != null && below != null) {
                double second = above - 2 * at + below;
                shift.merge(output, second / 2, Double::sum);
                square.merge(output, second * second / 2, Double::sum);
            }
        });
    }

    /** Results that bend. */
    <C extends Record, R extends Record> Set<String> bent(
            PerturbedCase<C, R> mover, List<Influence> influences, Map<String, Budget> budgets) {
        Set<String> bent = new LinkedHashSet<>();
        if (influences.isEmpty()) {
            return bent;
        }
        Map<String, Double> together = together(mover, influences);
        budgets.forEach((output, budget) -> {
            double own = shift.getOrDefault(output, 0.0);
            double mixed = mixed(output, together, budget, own);
            double extra = square.getOrDefault(output, 0.0) + mixed * mixed;
            double u = Math.sqrt(budget.u() * budget.u() + extra);
            double delta = Sampled.tolerance(u, 1) + 1e-9 * Math.abs(middle.getOrDefault(output, 0.0));
            if (Double.isFinite(u) && Math.abs(own) + 2 * (u - budget.u()) > delta) {
                bent.add(output);
            }
        });
        return bent;
    }

    /** What to say of a result that bends. */
    static String caution(String output) {
        return "The doubt of " + output + " does not follow a straight line: the simple rule may mislead. " + ADVICE;
    }

    /** All influences moved by +u. */
    private static <C extends Record, R extends Record> Map<String, Double> together(
            PerturbedCase<C, R> mover, List<Influence> influences) {
        Map<String, Double> by = new LinkedHashMap<>();
        influences.forEach(influence -> influence.moves().forEach((path, u) -> by.merge(path, u, Double::sum)));
        Outcome<R> outcome = mover.by(by);
        return outcome.isOk() ? Render.numbers(mover.outputs(), outcome.orElseThrow(), "") : Map.of();
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
