package shimwright.mechanics.worksheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import shimwright.mechanics.measure.Budget;
import shimwright.mechanics.measure.Contribution;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;

/**
 * First-order propagation through any worksheet, by numbers: the sensitivity to an influence is (f(x+u) − f(x−u))/2u
 * (JCGM 100:2008 5.1.3, note 2), one-sided where one end is refused; independent influences add by squares (5.1.2); one
 * that moves several inputs moves them together, so that it cancels or adds as it should (5.2.2 with r = 1).
 *
 * @param budgets one per scalar output whose inputs carry uncertainty, by path
 * @param bent outputs whose uncertainty does not follow a straight line, by path
 * @param cautions sentences on outputs that jump within the uncertainty of an input, or bend too much for the first order
 */
public record Propagation(Map<String, Budget> budgets, Set<String> bent, List<String> cautions) {
    private static final double DUST = 1e-12;

    public Propagation {
        budgets = Map.copyOf(budgets);
        bent = Set.copyOf(bent);
        cautions = List.copyOf(cautions);
    }

    /**
     * Propagates the uncertainties of a case.
     *
     * @param sheet the worksheet
     * @param bound the case and the uncertainties of its inputs
     * @param base its result without uncertainty
     * @return budgets by output path; refused where neither x+u nor x−u can be computed
     */
    public static <C extends Record, R extends Record> Outcome<Propagation> of(
            Worksheet<C, R> sheet, BoundCase<C> bound, R base) {
        return Influence.of(bound.uncertainties()).flatMap(influences -> of(sheet, bound.value(), base, influences));
    }

    private static <C extends Record, R extends Record> Outcome<Propagation> of(
            Worksheet<C, R> sheet, C value, R base, List<Influence> influences) {
        Map<String, List<Contribution>> parts = new LinkedHashMap<>();
        List<String> cautions = new ArrayList<>();
        List<Refusal> refusals = new ArrayList<>();
        Map<String, Double> middle = Numbers.of(sheet.outputs(), base);
        HigherOrderTerms bend = new HigherOrderTerms(middle);
        PerturbedCase<C, R> mover = new PerturbedCase<>(sheet, value, influences);
        for (Influence influence : influences) {
            Optional<R> up = mover.along(influence, 1);
            Optional<R> down = mover.along(influence, -1);
            if (up.isEmpty() && down.isEmpty()) {
                refusals.add(influence.refusal(
                        "the uncertainty behind ± reaches beyond what can be computed",
                        "Give a smaller uncertainty, or the value alone"));
                continue;
            }
            Map<String, Double> high = numbers(sheet, base, up);
            Map<String, Double> low = numbers(sheet, base, down);
            double width = (up.isPresent() ? 1 : 0) + (down.isPresent() ? 1 : 0);
            Set<String> gone = new TreeSet<>();
            boolean moves = false;
            for (Map.Entry<String, Double> output : middle.entrySet()) {
                Double above = high.get(output.getKey());
                Double below = low.get(output.getKey());
                if (above != null && below != null) {
                    double difference = clean(above - below, output.getValue());
                    moves |= difference != 0 || clean(above - output.getValue(), output.getValue()) != 0;
                    add(parts, output.getKey(), influence, difference / width);
                } else {
                    gone.add(entryless(output.getKey()));
                }
            }
            gone.forEach(output -> cautions.add("Within the uncertainty of " + influence.name() + ", an entry of "
                    + output + " may be another: its ± is without that."));
            if (up.isPresent() && down.isPresent()) {
                bend.add(influence, high, low, wide(sheet, base, mover, influence));
            }
            boolean above =
                    up.map(r -> jumps(sheet, base, r, influence, cautions)).orElse(false);
            boolean below =
                    down.map(r -> jumps(sheet, base, r, influence, cautions)).orElse(false);
            if (!moves && !above && !below && gone.isEmpty() && influence.size() > 0) {
                cautions.add("The ± of " + influence.name() + " moves no result here.");
            }
        }
        if (!refusals.isEmpty()) {
            return Outcome.refused(refusals);
        }
        Map<String, Budget> budgets = new LinkedHashMap<>();
        parts.forEach((output, list) -> budgets.put(output, Budget.of(list)));
        Set<String> bent = bend.bent(mover, base, influences, budgets);
        bent.forEach(output -> cautions.add(HigherOrderTerms.caution(entryless(output))));
        return Outcome.ok(
                new Propagation(budgets, bent, cautions.stream().distinct().toList()));
    }

    /** The numbers of a moved result, or those of the base where it was refused. */
    private static <R extends Record> Map<String, Double> numbers(Worksheet<?, R> sheet, R base, Optional<R> moved) {
        return Numbers.of(sheet.outputs(), base, moved.orElse(base));
    }

    /** The numbers further out on both sides, by which the third order is told; empty where one is refused. */
    private static <C extends Record, R extends Record> List<Map<String, Double>> wide(
            Worksheet<C, R> sheet, R base, PerturbedCase<C, R> mover, Influence influence) {
        double far = HigherOrderTerms.far(influence);
        Optional<R> up = mover.along(influence, far);
        Optional<R> down = mover.along(influence, -far);
        return up.isEmpty() || down.isEmpty()
                ? List.of()
                : List.of(numbers(sheet, base, up), numbers(sheet, base, down));
    }

    /** A path without the places of entries, {@code gears.axial}. */
    static String entryless(String path) {
        return path.replaceAll("\\[\\d+]", "");
    }

    /** A difference that is nothing but rounding is none. */
    private static double clean(double difference, double at) {
        return Math.abs(difference) <= DUST * Math.abs(at) ? 0 : difference;
    }

    private static void add(
            Map<String, List<Contribution>> parts, String output, Influence influence, double perStandard) {
        double size = influence.size();
        if (size > 0 && Double.isFinite(perStandard)) {
            parts.computeIfAbsent(output, key -> new ArrayList<>())
                    .add(Contribution.of(
                            influence.name(),
                            size,
                            perStandard / size,
                            influence.unit().nu()));
        }
    }

    private static <R extends Record> boolean jumps(
            Worksheet<?, R> sheet, R base, R moved, Influence influence, List<String> cautions) {
        boolean jumps = false;
        for (SheetField field : sheet.outputs()) {
            if (field.shape() != Shape.CHOICE && field.shape() != Shape.YES_NO) {
                continue;
            }
            String now = Render.choice(Records.get(base, field.name()));
            String then = Render.choice(Records.get(moved, field.name()));
            if (!now.equals(then)) {
                cautions.add("Within the uncertainty of " + influence.name() + ", " + field.meaning() + " may be \""
                        + then + "\" instead of \"" + now + "\".");
                jumps = true;
            }
        }
        return jumps;
    }
}
