package shimwright.mechanics.decision;

import java.util.ArrayList;
import java.util.List;
import shimwright.mechanics.conformity.Conformity;
import shimwright.mechanics.conformity.GlobalRisk;
import shimwright.mechanics.conformity.Limits;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code decision-risk}: what a rule does over many parts, and what it does for the part on the limit. */
public final class DecisionRisk {
    private static final String GLOBAL = "JCGM 106:2012 9.5, A.4";
    private static final String SPECIFIC = "JCGM 106:2012 9.3";
    private static final double LEAST_SHARE = 1e-3;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "decision-risk",
            "Risk of a decision",
            "How often a gauge lets a bad part pass and turns a good one away, and what a guard band does to both.",
            List.of("JCGM 106:2012 8.3, 9.3, 9.5, A.4"),
            Case.class,
            Result.class,
            DecisionRisk::work);

    private DecisionRisk() {}

    /**
     * Parts as they come, the gauge, and where they are accepted.
     *
     * @param mean of the parts, m
     * @param deviation standard deviation of the parts, m
     * @param u standard uncertainty of one measurement, m
     * @param lower lower limit of the size, m
     * @param upper upper limit of the size, m
     * @param guard what each limit is moved inwards for acceptance, m; negative moves it outwards
     */
    public record Case(
            @Input(
                    kind = Kind.LENGTH,
                    meaning = "mean of the parts as they come",
                    min = -10,
                    max = 10,
                    example = "0.065 mm")
            double mean,

            @Input(kind = Kind.LENGTH, meaning = "their standard deviation", min = 1e-9, max = 1, example = "0.010 mm")
            double deviation,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "standard uncertainty of one measurement",
                    min = 1e-9,
                    max = 1,
                    example = "0.004 mm")
            double u,

            @Input(kind = Kind.LENGTH, meaning = "lower limit of the size", min = -10, max = 10, example = "0.050 mm")
            double lower,

            @Input(kind = Kind.LENGTH, meaning = "upper limit of the size", min = -10, max = 10, example = "0.080 mm")
            double upper,

            @Input(kind = Kind.LENGTH, meaning = "guard band inside each limit", orElse = "0 mm", min = -1, max = 1)
            double guard) {}

    /** Shares of all parts; the guard in m. */
    public record Result(
            @Output(meaning = "share of all parts outside the limits and accepted", decimals = 5)
            double consumer,

            @Output(meaning = "share of all parts within the limits and turned away", decimals = 5)
            double producer,

            @Output(meaning = "share of all parts outside the limits", decimals = 5)
            double outside,

            @Output(meaning = "chance that a part measured just acceptable is outside", decimals = 5)
            double worst,

            @Output(kind = Kind.LENGTH, meaning = "guard band that leaves 5 % for such a part", decimals = 4)
            double guardForProof) {}

    /**
     * Global risks of a normal process under a normal measurement; specific risk of a reading on the edge of acceptance.
     *
     * @param c lengths in m
     * @return shares from 0 to 1; refused: limits the wrong way round, a guard band that leaves nothing to accept, an
     *     uncertainty below a thousandth of the spread of the parts or a thousand times above it. Source: JCGM 106:2012
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> faults = new ArrayList<>();
        Limits.fault(c.lower(), c.upper()).ifPresent(faults::add);
        if (faults.isEmpty() && c.lower() + c.guard() >= c.upper() - c.guard()) {
            faults.add(Refusal.of("guard", "it leaves nothing between the limits to accept", "Take a smaller one"));
        }
        double ratio = c.u() / c.deviation();
        if (ratio < LEAST_SHARE || ratio > 1 / LEAST_SHARE) {
            faults.add(Refusal.of(
                    "u",
                    "it is over a thousand times off the standard deviation of the parts",
                    "Look at the units of both"));
        }
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        Working w = new Working();
        Limits limits = new Limits(c.lower(), c.upper());
        GlobalRisk risk = new GlobalRisk(c.mean(), c.deviation(), c.u(), limits, c.guard());
        double consumer =
                w.line("consumer's risk", "∫ outside of density × P(accepted)", risk.consumer(), Kind.NUMBER, GLOBAL);
        double producer = w.line(
                "producer's risk", "∫ inside of density × (1 − P(accepted))", risk.producer(), Kind.NUMBER, GLOBAL);
        double outside = w.line(
                "outside",
                "1 − P(within)",
                1 - Conformity.probability(c.mean(), c.deviation(), Double.POSITIVE_INFINITY, limits),
                Kind.NUMBER,
                "normal distribution");
        double worst = w.line(
                "worst accepted",
                "1 − P(within) of a reading at limit + guard",
                1 - Conformity.probability(c.lower() + c.guard(), c.u(), Double.POSITIVE_INFINITY, limits),
                Kind.NUMBER,
                SPECIFIC);
        double guard = w.line(
                "guard for 95 %",
                "1.645 u",
                Conformity.guardBand(0.95, c.u(), Double.POSITIVE_INFINITY),
                Kind.LENGTH,
                "JCGM 106:2012 8.3.2");
        w.caution("A share of many parts: it says nothing of the one in hand. For that ask conformity.");
        return Outcome.ok(w.worked(new Result(consumer, producer, outside, worst, guard)));
    }
}
