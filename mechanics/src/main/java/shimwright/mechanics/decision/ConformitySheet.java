package shimwright.mechanics.decision;

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
import shimwright.mechanics.quantity.InSentence;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** Conformity as a worksheet. */
public final class ConformitySheet {
    private static final String SOURCE = "JCGM 106:2012";

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
                    "conformity",
                    "Within limits?",
                    "How sure a measured value lies within its limits, and whether that is proof.",
                    List.of("JCGM 106:2012 7.3, 7.4, 7.6", "decision rule as in ISO 14253-1:2017, 95 % (from memory)"),
                    Case.class,
                    Result.class,
                    ConformitySheet::work)
            .drawn(DecisionPictures::conformity);

    private ConformitySheet() {}

    /**
     * A measured length against its limits.
     *
     * @param value m
     * @param u standard uncertainty, m
     * @param nu degrees of freedom of u; null when taken as certain
     * @param lower lower limit of the value, m; null when open
     * @param upper upper limit of the value, m; null when open
     * @param ruleProbability conformance probability that proves
     */
    public record Case(
            @Input(
                    kind = Kind.LENGTH,
                    meaning = "measured value",
                    min = -10,
                    max = 10,
                    example = "0.084 mm",
                    u = "u",
                    nu = "nu")
            double value,

            @Input(kind = Kind.LENGTH, meaning = "its standard uncertainty", min = 0, max = 1, example = "0.012 mm")
            double u,

            @Input(meaning = "degrees of freedom of that", min = 1, max = 1e6) @Nullable
            Double nu,

            @Input(kind = Kind.LENGTH, meaning = "lower limit of the value", min = -10, max = 10, example = "0.050 mm")
            @Nullable
            Double lower,

            @Input(kind = Kind.LENGTH, meaning = "upper limit of the value", min = -10, max = 10, example = "0.100 mm")
            @Nullable
            Double upper,

            @Input(meaning = "probability that counts as proof", min = 0.501, max = 0.9999, orElse = "0.95")
            double ruleProbability) {}

    /**
     * What a measured value proves.
     *
     * @param probability that the true value lies within the limits
     * @param verdict under the rule; a value outside a limit is OUT however near
     * @param capability Cm = T/4u; infinite with an open limit
     * @param best the most that any value could prove with this uncertainty
     * @param largestUncertainty standard uncertainty with which this value would be proven with the same degrees of freedom, m; null when it stands outside
     * @param advice one sentence
     */
    public record Result(
            @Output(meaning = "probability of lying within") double probability,
            @Output(meaning = "verdict") Verdict verdict,

            @Output(meaning = "measurement capability Cm", decimals = 2, infinite = "no limit")
            double capability,

            @Output(meaning = "best probability any value could reach")
            double best,

            @Output(kind = Kind.LENGTH, meaning = "largest uncertainty that would still prove it", decimals = 4)
            @Nullable
            Double largestUncertainty,

            @Output(meaning = "advice") String advice) {}

    /** See {@link Conformity}; refused without any limit, or with limits the wrong way round or equal. */
    public static Outcome<Worked<Result>> work(Case c) {
        Optional<Refusal> fault = Limits.fault(c.lower(), c.upper());
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
        OptionalDouble uncertainty = Conformity.largestUncertainty(c.value(), nu, limits, rule);
        Double largest = uncertainty.isPresent() ? uncertainty.getAsDouble() : null;
        String advice = switch (verdict) {
            case IN -> "Proven in.";
            case OUT ->
                limits.hold(c.value()) ? "Proven out." : "Out: the value stands outside the limit, however near.";
            case NOT_PROVEN ->
                best < rule.probability()
                        ? "Not proven, and no value could be with this uncertainty: measure finer."
                        : "Not proven: " + InSentence.percent(probability) + " sure"
                                + (largest == null
                                        ? "."
                                        : "; it takes " + InSentence.uncertainty(largest) + " or less.");
        };
        return Outcome.ok(w.worked(
                new Result(probability, verdict, Conformity.capability(c.u(), limits), best, largest, advice)));
    }
}
