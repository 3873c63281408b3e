package shimwright.mechanics.axial.stack;

import java.util.ArrayList;
import java.util.List;
import shimwright.mechanics.measure.Budget;
import shimwright.mechanics.measure.Combination;
import shimwright.mechanics.measure.Contribution;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** A gap predicted from measured parts, before anything is closed. */
public final class DepthStack {
    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "depth-stack",
            "Depth stack",
            "The gap that measured lengths leave before anything is closed.",
            List.of("JCGM 100:2008 (GUM) 5.1.2, 5.2.2"),
            Case.class,
            Result.class,
            DepthStack::work);

    private DepthStack() {}

    /**
     * A gap from measured lengths.
     *
     * @param terms the loop, in order
     * @param offsets common offsets of the gauges that measured it; a gauge left out has none
     */
    public record Case(
            @Input(
                    kind = Kind.LENGTH,
                    meaning = "the loop",
                    most = 60,
                    example =
                            "seat to face: 25.01: 1: 0.004: DM; cover: 234.39: 1: 0.004: DM; bearing: 17.083: -1: 0.002; "
                                    + "shaft: 224.91: -1: 0.004: DM; rear bearing: 16.331: -1: 0.002")
            List<StackLength> terms,

            @Input(meaning = "offsets common to all readings of a gauge", fewest = 0, most = 20, example = "DM: 0.003")
            List<GaugeOffset> offsets) {
        public Case {
            terms = List.copyOf(terms);
            offsets = List.copyOf(offsets);
        }
    }

    /**
     * The gap of a stack.
     *
     * @param gap sum of the signed lengths, m; negative where the parts overlap
     * @param u standard uncertainty, m
     * @param nu degrees of freedom
     * @param worst the gap may be off by this if every uncertainty (2u) pulled the same way, m
     * @param budget the uncertainty by term and gauge
     */
    public record Result(
            @Output(kind = Kind.LENGTH, meaning = "gap", u = "u", nu = "nu", budget = "budget")
            double gap,

            @Output(kind = Kind.LENGTH, meaning = "standard uncertainty", decimals = 4)
            double u,

            @Output(meaning = "degrees of freedom", decimals = 1, infinite = "no limit")
            double nu,

            @Output(kind = Kind.LENGTH, meaning = "worst case, all uncertainties the same way")
            double worst,

            @Output(kind = Kind.LENGTH, meaning = "uncertainty by term")
            Budget budget) {}

    /**
     * gap = Σ ±length; u² = Σ u² + Σ over gauges of (|Σ ±1| · u of its offset)² (JCGM 100:2008 5.2.2 with r = 1): an
     * offset cancels where a gauge measured as many opening as closing lengths. Refused: a sign that is not ±1, the same
     * gauge twice, an offset of a gauge that measured nothing here.
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = faults(c);
        if (!refusals.isEmpty()) {
            return Outcome.refused(refusals);
        }
        Working w = new Working();
        List<Contribution> parts = new ArrayList<>();
        double gap = 0;
        for (StackLength term : c.terms()) {
            String sign = term.sign() > 0 ? "gap + " : "gap − ";
            gap = w.line("gap", sign + term.name(), gap + term.sign() * term.value(), Kind.LENGTH);
            parts.add(Contribution.of(term.name(), term.u(), term.sign(), Double.POSITIVE_INFINITY));
        }
        for (GaugeOffset offset : c.offsets()) {
            double[] signs = c.terms().stream()
                    .filter(term -> term.gauge().equals(offset.gauge()))
                    .mapToDouble(StackLength::sign)
                    .toArray();
            double net = Combination.commonOffset(signs, 1);
            parts.add(Contribution.of("offset of " + offset.gauge(), offset.u(), net, Double.POSITIVE_INFINITY));
        }
        Budget budget = Budget.of(parts);
        w.line("u", "root of the sum of squares", budget.u(), Kind.LENGTH, "JCGM 100:2008 (GUM) 5.1.2, 5.2.2");
        double worst = 2 * parts.stream().mapToDouble(Contribution::part).sum();
        return Outcome.ok(w.worked(new Result(gap, budget.u(), budget.nu(), worst, budget)));
    }

    private static List<Refusal> faults(Case c) {
        List<Refusal> refusals = new ArrayList<>();
        for (int i = 0; i < c.terms().size(); i++) {
            if (Math.abs(c.terms().get(i).sign()) != 1) {
                refusals.add(Refusal.of("terms[" + i + "].sign", "is 0", "1 opens the gap, -1 closes it"));
            }
        }
        for (int i = 0; i < c.offsets().size(); i++) {
            String gauge = c.offsets().get(i).gauge();
            String place = "offsets[" + i + "]";
            if (c.terms().stream().noneMatch(term -> term.gauge().equals(gauge))) {
                refusals.add(Refusal.of(place, "no length was measured with \"" + gauge + "\"", "Check the name"));
            }
            if (c.offsets().subList(0, i).stream()
                    .anyMatch(other -> other.gauge().equals(gauge))) {
                refusals.add(Refusal.of(place, "\"" + gauge + "\" stands there twice", "Give its offset once"));
            }
        }
        return refusals;
    }
}
