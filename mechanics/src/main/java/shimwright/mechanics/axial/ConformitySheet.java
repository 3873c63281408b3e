package shimwright.mechanics.axial;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.conformity.Conformity;
import shimwright.mechanics.conformity.Limits;
import shimwright.mechanics.conformity.Rule;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;

/** Conformity as a worksheet. */
public final class ConformitySheet {
    private static final String SOURCE = "JCGM 106:2012";

    private ConformitySheet() {}

    /** See {@link Conformity}; refused without any limit, or with limits the wrong way round or equal. */
    public static Outcome<Worked<ConformityResult>> work(ConformityCase c) {
        Optional<Refusal> fault = faultOf(c.lower(), c.upper());
        if (fault.isPresent()) {
            return Outcome.refused(List.of(fault.get()));
        }
        Limits limits = new Limits(c.lower(), c.upper());
        Rule rule = new Rule(c.ruleProbability(), true);
        Double given = c.nu();
        double nu = given == null ? Double.POSITIVE_INFINITY : given;
        Working w = new Working();
        double probability = w.line(
                "probability",
                "F((upper − value)/u) − F((lower − value)/u)",
                Conformity.probability(c.value(), c.u(), nu, limits),
                Kind.NUMBER,
                SOURCE + " 7.4.1");
        double best = w.line(
                "best probability",
                "the same in the middle",
                Conformity.best(c.u(), nu, limits),
                Kind.NUMBER,
                SOURCE + " 7.6");
        Verdict verdict = Conformity.verdict(c.value(), c.u(), nu, limits, rule);
        OptionalDouble doubt = Conformity.largestDoubt(c.value(), limits, rule);
        Double largest = doubt.isPresent() ? doubt.getAsDouble() : null;
        String advice = switch (verdict) {
            case IN -> "Proven in.";
            case OUT ->
                limits.hold(c.value()) ? "Proven out." : "Out: the value stands outside the limit, however near.";
            case NOT_PROVEN ->
                best < rule.probability()
                        ? "Not proven, and no value could be with this doubt: measure finer."
                        : "Not proven: " + Words.percent(probability) + " sure"
                                + (largest == null ? "." : "; it takes " + Words.doubt(largest) + " or less.");
        };
        return Outcome.ok(w.worked(new ConformityResult(
                probability, verdict, Conformity.capability(c.u(), limits), best, largest, advice)));
    }

    static Optional<Refusal> faultOf(@Nullable Double lower, @Nullable Double upper) {
        if (lower == null && upper == null) {
            return Optional.of(new Refusal("lower, upper", "no limit given", "Give at least one"));
        }
        if (lower != null && upper != null && lower >= upper) {
            return Optional.of(new Refusal(
                    "lower, upper",
                    "the lower limit " + Words.length(lower) + " is not below the upper " + Words.length(upper),
                    "Check which is which"));
        }
        return Optional.empty();
    }
}
