package shimwright.mechanics.axial.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import shimwright.mechanics.measure.Budget;
import shimwright.mechanics.measure.Contribution;
import shimwright.mechanics.measure.Outliers;
import shimwright.mechanics.measure.Statistics;
import shimwright.mechanics.measure.Uncertainties;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.InSentence;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** From rounds of readings to a value with its uncertainty, or to the advice to read on. */
public final class Readings {
    static final String GUM = "JCGM 100:2008";

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
                    "readings",
                    "Readings",
                    "The settled value of a series of rounds and its uncertainty, or the advice to read on.",
                    List.of(
                            "JCGM 100:2008 (GUM) 4.2, 4.3, 5.1, G.4",
                            "Mann-Kendall test, exact with ties",
                            "settling rule: common practice, no source"),
                    Case.class,
                    Result.class,
                    Readings::work)
            .drawn(ReadingPictures::readings);

    private Readings() {}

    /**
     * Rounds of readings of one thing, in the order taken, reseated between rounds.
     *
     * @param rounds each with one value per indicator, 1 or 2, the same number in every round, m
     * @param gauge the indicator's data
     * @param settleWithin largest range of rounds that count as agreeing, m
     * @param minimum rounds that must agree at the end, 3 or more
     */
    public record Case(
            @Input(
                    kind = Kind.LENGTH,
                    meaning = "rounds in the order taken, the two indicators of a round joined by /",
                    min = -10,
                    max = 10,
                    most = 200,
                    example = "0.24/0.32 0.25/0.31 0.24/0.31 mm")
            List<List<Double>> rounds,

            @Input(meaning = "the indicator") GaugeData gauge,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "rounds that differ by no more than this agree",
                    min = 1e-7,
                    max = 0.01,
                    orElse = "0.02 mm")
            double settleWithin,

            @Input(meaning = "rounds that must agree at the end", min = 3, max = 20, orElse = "3")
            int minimum) {
        public Case {
            rounds = rounds.stream().map(List::copyOf).toList();
        }
    }

    /**
     * What rounds of readings say.
     *
     * @param value mean of the rounds used when settled; the last round when climbing or falling, the median when scattered
     * @param u its standard uncertainty, m
     * @param nu effective degrees of freedom
     * @param seating whether the series has come to rest; anything but SETTLED proves nothing
     * @param firstRoundUsed counted from 1
     * @param roundsUsed how many from there on
     * @param moreRoundsWanted at least so many more before it can settle; 0 when settled
     * @param outliers rounds that stand off the others, counted from 1
     * @param budget the uncertainty by influence
     * @param advice one sentence: what to do
     */
    public record Result(
            @Output(kind = Kind.LENGTH, meaning = "value", u = "u", nu = "nu", budget = "budget")
            double value,

            @Output(kind = Kind.LENGTH, meaning = "standard uncertainty", decimals = 4)
            double u,

            @Output(meaning = "degrees of freedom", decimals = 1, infinite = "no limit")
            double nu,

            @Output(meaning = "seating") Seating seating,
            @Output(meaning = "first round used") int firstRoundUsed,
            @Output(meaning = "rounds used") int roundsUsed,
            @Output(meaning = "more rounds wanted") int moreRoundsWanted,
            @Output(meaning = "rounds that stand off") List<Integer> outliers,

            @Output(kind = Kind.LENGTH, meaning = "uncertainty by influence")
            Budget budget,

            @Output(meaning = "advice") String advice) {}

    /**
     * The settled value of a series of rounds.
     *
     * <p>A round counts as the mean of its indicators. Uncertainty: repeat (pooled s, else s of the rounds used, n−1) over √n;
     * reading a step twice q/√6; error limit and retrace a/√3; with two indicators each gauge's part over √2; and, when
     * not settled, the range of the rounds looked at as a half-width. Refused: rounds with other than 1 or 2 values, or
     * unlike numbers of them.
     *
     * @param c readings in m
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = faults(c.rounds());
        if (!refusals.isEmpty()) {
            return Outcome.refused(refusals);
        }
        Working w = new Working();
        List<Double> means = c.rounds().stream().map(Statistics::mean).toList();
        int indicators = c.rounds().get(0).size();
        Settling settling = Settling.of(means, c.settleWithin(), c.minimum());
        List<Double> used = means.subList(settling.first(), means.size());
        double value = value(settling.seating(), means, used, w);
        Budget budget = budget(c, settling.seating(), used, indicators, w);
        List<Integer> outliers = outliersOf(means, settling, c.settleWithin());
        return Outcome.ok(w.worked(new Result(
                value,
                budget.u(),
                budget.nu(),
                settling.seating(),
                settling.first() + 1,
                used.size(),
                settling.more(),
                outliers,
                budget,
                advice(settling, used.size(), means, outliers))));
    }

    static List<Refusal> faults(List<List<Double>> rounds) {
        List<Refusal> refusals = new ArrayList<>();
        if (rounds.isEmpty()) {
            refusals.add(Refusal.of("rounds", "no reading given", "Give at least three rounds"));
            return refusals;
        }
        int first = rounds.get(0).size();
        for (int i = 0; i < rounds.size(); i++) {
            int size = rounds.get(i).size();
            if (size < 1 || size > 2) {
                refusals.add(new Refusal(
                        "rounds[" + i + "]",
                        "round " + (i + 1),
                        size + " values given",
                        "A round has one value, or one per indicator of two"));
            } else if (size != first) {
                refusals.add(new Refusal(
                        "rounds[" + i + "]",
                        "round " + (i + 1),
                        size + (size == 1 ? " value, " : " values, ") + first + " in round 1",
                        "Read the same indicators in every round"));
            }
        }
        return refusals;
    }

    private static double value(Seating seating, List<Double> means, List<Double> used, Working w) {
        return switch (seating) {
            case SETTLED ->
                w.line("value", "mean of the rounds used", Statistics.mean(used), Kind.LENGTH, GUM + " 4.2.1");
            case CLIMBING, FALLING ->
                w.line(
                        "value so far",
                        "last round",
                        means.get(means.size() - 1),
                        Kind.LENGTH,
                        "common practice, no source");
            case SCATTERED -> w.line("value so far", "median of all rounds", Statistics.median(means), Kind.LENGTH);
            case TOO_FEW -> w.line("value so far", "mean of all rounds", Statistics.mean(means), Kind.LENGTH);
        };
    }

    private static Budget budget(Case c, Seating seating, List<Double> used, int indicators, Working w) {
        double each = 1 / Math.sqrt(indicators);
        GaugeData gauge = c.gauge();
        List<Contribution> parts = new ArrayList<>();
        if (gauge.repeatability() > 0) {
            double mean = Uncertainties.ofMean(gauge.repeatability(), used.size());
            parts.add(Contribution.of("repeat, from the gauge study", mean, each, Double.POSITIVE_INFINITY));
        } else if (used.size() > 1) {
            double mean = Uncertainties.ofMean(Statistics.deviation(used), used.size());
            parts.add(Contribution.of("repeat, from these rounds", mean, used.size() - 1));
        }
        parts.add(Contribution.of(
                "step, read twice", Uncertainties.stepTwice(gauge.step()), each, Double.POSITIVE_INFINITY));
        parts.add(Contribution.of(
                "error limit", Uncertainties.rectangular(gauge.errorLimit()), each, Double.POSITIVE_INFINITY));
        parts.add(
                Contribution.of("retrace", Uncertainties.rectangular(gauge.retrace()), each, Double.POSITIVE_INFINITY));
        if (seating != Seating.SETTLED) {
            double unsettled = Math.max(Statistics.range(used), c.settleWithin());
            parts.add(Contribution.of("not settled", Uncertainties.rectangular(unsettled), Double.POSITIVE_INFINITY));
        }
        Budget budget = Budget.of(parts);
        w.line("u", "root of the sum of squares of the parts", budget.u(), Kind.LENGTH, GUM + " 5.1.2");
        return budget;
    }

    /** Rounds before the settled ones that read less are the climb itself, not an outlier. */
    private static List<Integer> outliersOf(List<Double> means, Settling settling, double within) {
        List<Integer> outliers = new ArrayList<>();
        for (int index : Outliers.among(means, within)) {
            boolean climb = settling.seating() == Seating.SETTLED
                    && index < settling.first()
                    && means.get(index) < Statistics.median(means);
            boolean moving = settling.seating() == Seating.CLIMBING || settling.seating() == Seating.FALLING;
            if (!climb && !moving) {
                outliers.add(index + 1);
            }
        }
        return outliers;
    }

    private static String advice(Settling settling, int used, List<Double> means, List<Integer> outliers) {
        String more = settling.more() == 1 ? "at least one more round" : "at least " + settling.more() + " more rounds";
        String off = outliers.stream()
                .map(round -> " Round " + round + " stands " + away(means, round - 1)
                        + " off the others: look at it again" + " before it counts.")
                .collect(Collectors.joining());
        return switch (settling.seating()) {
            case SETTLED ->
                used < means.size()
                        ? "Settled: the last " + used + " rounds count." + off
                        : "Settled: all " + used + " rounds count." + off;
            case CLIMBING -> "Still climbing: not seated. Turn, tap and read " + more + "." + off;
            case FALLING -> "Falling: look for a slipping indicator or a lifting part, then read " + more + "." + off;
            case SCATTERED ->
                "The rounds do not agree: look for dirt, a loose clamp or a soft push, then read " + more + "." + off;
            case TOO_FEW -> "Too few to prove anything: read " + more + "." + off;
        };
    }

    private static String away(List<Double> means, int index) {
        List<Double> others = new ArrayList<>(means);
        double own = others.remove(index);
        return InSentence.length(Math.abs(own - Statistics.median(others)));
    }
}
