package shimwright.mechanics.axial;

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

/** A gap predicted from measured parts, before anything is closed. */
public final class DepthStack {
    private DepthStack() {}

    /**
     * gap = Σ ±length; u² = Σ u² + Σ over gauges of (|Σ ±1| · u of its offset)² (JCGM 100:2008 5.2.2 with r = 1): an
     * offset cancels where a gauge measured as many opening as closing lengths. Refused: a sign that is not ±1, the same
     * gauge twice, an offset of a gauge that measured nothing here.
     */
    public static Outcome<Worked<DepthStackResult>> work(DepthStackCase c) {
        List<Refusal> refusals = faults(c);
        if (!refusals.isEmpty()) {
            return Outcome.refused(refusals);
        }
        Working w = new Working();
        List<Contribution> parts = new ArrayList<>();
        double gap = 0;
        for (Term term : c.terms()) {
            String sign = term.sign() > 0 ? "gap + " : "gap − ";
            gap = w.line("gap", sign + term.name(), gap + term.sign() * term.value(), Kind.LENGTH);
            parts.add(Contribution.of(term.name(), term.u(), term.sign(), Double.POSITIVE_INFINITY));
        }
        for (GaugeOffset offset : c.offsets()) {
            double[] signs = c.terms().stream()
                    .filter(term -> term.gauge().equals(offset.gauge()))
                    .mapToDouble(Term::sign)
                    .toArray();
            double net = Combination.commonOffset(signs, 1);
            parts.add(Contribution.of("offset of " + offset.gauge(), offset.u(), net, Double.POSITIVE_INFINITY));
        }
        Budget budget = Budget.of(parts);
        w.line("u", "root of the sum of squares", budget.u(), Kind.LENGTH, Readings.GUM + " 5.1.2, 5.2.2");
        double worst = 2 * parts.stream().mapToDouble(Contribution::part).sum();
        return Outcome.ok(w.worked(new DepthStackResult(gap, budget.u(), budget.nu(), worst, budget)));
    }

    private static List<Refusal> faults(DepthStackCase c) {
        List<Refusal> refusals = new ArrayList<>();
        for (int i = 0; i < c.terms().size(); i++) {
            if (Math.abs(c.terms().get(i).sign()) != 1) {
                refusals.add(new Refusal("terms entry " + (i + 1) + ", sign", "is 0", "1 opens the gap, -1 closes it"));
            }
        }
        for (int i = 0; i < c.offsets().size(); i++) {
            String gauge = c.offsets().get(i).gauge();
            String place = "offsets entry " + (i + 1);
            if (c.terms().stream().noneMatch(term -> term.gauge().equals(gauge))) {
                refusals.add(new Refusal(place, "no length was measured with \"" + gauge + "\"", "Check the name"));
            }
            if (c.offsets().subList(0, i).stream()
                    .anyMatch(other -> other.gauge().equals(gauge))) {
                refusals.add(new Refusal(place, "\"" + gauge + "\" stands there twice", "Give its offset once"));
            }
        }
        return refusals;
    }
}
