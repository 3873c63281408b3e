package shimwright.mechanics.worksheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.measure.Budget;
import shimwright.mechanics.measure.Contribution;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.working.Worked;

/**
 * First-order propagation through any worksheet, by numbers: the sensitivity to an input is (f(x+u) − f(x−u))/2u (JCGM
 * 100:2008 5.1.3, note 2), one-sided where one end is refused; independent inputs add by squares (5.1.2).
 *
 * @param budgets one per scalar output whose inputs carry doubt, by path
 * @param cautions sentences on outputs that jump within the doubt of an input
 */
public record Propagation(Map<String, Budget> budgets, List<String> cautions) {
    public Propagation {
        budgets = Map.copyOf(budgets);
        cautions = List.copyOf(cautions);
    }

    /**
     * Propagates the doubts of a case.
     *
     * @param sheet the worksheet
     * @param bound the case and the standard uncertainties of its inputs
     * @param base its result without doubt
     * @return budgets by output path; refused where neither x+u nor x−u can be computed
     */
    public static <C extends Record, R extends Record> Outcome<Propagation> of(
            Worksheet<C, R> sheet, Bound<C> bound, R base) {
        Map<String, List<Contribution>> parts = new LinkedHashMap<>();
        List<String> cautions = new ArrayList<>();
        List<Refusal> refusals = new ArrayList<>();
        Map<String, Double> middle = Render.numbers(sheet.outputs(), base, "");
        bound.doubts().entrySet().stream().sorted(Map.Entry.comparingByKey()).forEach(doubt -> {
            String path = doubt.getKey();
            double u = doubt.getValue();
            Optional<R> up = shifted(sheet, bound.value(), path, u);
            Optional<R> down = shifted(sheet, bound.value(), path, -u);
            if (up.isEmpty() && down.isEmpty()) {
                refusals.add(new Refusal(
                        path,
                        "the uncertainty behind ± reaches beyond what can be computed",
                        "Give a smaller uncertainty, or the value alone"));
                return;
            }
            Map<String, Double> high =
                    up.map(r -> Render.numbers(sheet.outputs(), r, "")).orElse(middle);
            Map<String, Double> low =
                    down.map(r -> Render.numbers(sheet.outputs(), r, "")).orElse(middle);
            double width = (up.isPresent() ? u : 0) + (down.isPresent() ? u : 0);
            middle.forEach((output, value) -> slope(high.get(output), low.get(output), width)
                    .ifPresent(c -> parts.computeIfAbsent(output, key -> new ArrayList<>())
                            .add(Contribution.of(path, u, c, Double.POSITIVE_INFINITY))));
            up.ifPresent(r -> jumps(sheet, base, r, path, cautions));
            down.ifPresent(r -> jumps(sheet, base, r, path, cautions));
        });
        if (!refusals.isEmpty()) {
            return Outcome.refused(refusals);
        }
        Map<String, Budget> budgets = new LinkedHashMap<>();
        parts.forEach((output, list) -> budgets.put(output, Budget.of(list)));
        return Outcome.ok(new Propagation(budgets, cautions.stream().distinct().toList()));
    }

    private static OptionalDouble slope(@Nullable Double high, @Nullable Double low, double width) {
        if (high == null || low == null || width == 0) {
            return OptionalDouble.empty();
        }
        double slope = (high - low) / width;
        return Double.isFinite(slope) ? OptionalDouble.of(slope) : OptionalDouble.empty();
    }

    private static <C extends Record, R extends Record> Optional<R> shifted(
            Worksheet<C, R> sheet, C value, String path, double by) {
        double moved = Records.number(value, path) + by;
        if (!Fields.at(sheet.inputs(), path).range().holds(moved)) {
            return Optional.empty();
        }
        Outcome<Worked<R>> outcome = sheet.compute().apply(Records.with(value, path, moved, sheet.caseType()));
        return outcome.isOk() ? Optional.of(outcome.orElseThrow().result()) : Optional.empty();
    }

    private static <R extends Record> void jumps(
            Worksheet<?, R> sheet, R base, R moved, String path, List<String> cautions) {
        for (Field field : sheet.outputs()) {
            if (field.shape() != Shape.CHOICE && field.shape() != Shape.YES_NO) {
                continue;
            }
            String now = Render.choice(Records.get(base, field.name()));
            String then = Render.choice(Records.get(moved, field.name()));
            if (!now.equals(then)) {
                cautions.add("Within the doubt of " + path + ", " + field.meaning() + " may be \"" + then
                        + "\" instead of \"" + now + "\".");
            }
        }
    }
}
