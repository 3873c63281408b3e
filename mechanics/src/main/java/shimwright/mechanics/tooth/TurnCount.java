package shimwright.mechanics.tooth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code turn-count}: an unknown pair found by counting turns. */
public final class TurnCount {
    private static final String SOURCE = "kinematics; a differential halves the turns of one flange held";
    private static final int SHOWN = 40;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "turn-count",
            "Tooth counts by turns",
            "The tooth counts that fit a count of input and output turns, with the rest of the ratio known.",
            List.of(SOURCE),
            Case.class,
            Result.class,
            TurnCount::work);

    private TurnCount() {}

    /** Where the output turns were counted. */
    public enum Counted {
        /** At the output shaft or the crown wheel itself. */
        SHAFT,
        /** At one drive flange with the other held: the carrier turns half as often. */
        ONE_FLANGE_OTHER_HELD,
        /** At both flanges turning together. */
        BOTH_FLANGES
    }

    /** Plain numbers. */
    public record Case(
            @Input(meaning = "turns of the input shaft", min = 1e-3, max = 1e4, example = "19.8")
            double inputTurns,

            @Input(meaning = "how far the input turns may be off", orElse = "0", min = 0, max = 10)
            double inputStep,

            @Input(meaning = "turns counted at the output", min = 1e-3, max = 1e4, example = "10")
            double outputTurns,

            @Input(meaning = "how far the output turns may be off", orElse = "0", min = 0, max = 10)
            double outputStep,

            @Input(meaning = "where the output was counted", example = "one flange other held")
            Counted counted,

            @Input(meaning = "ratio of everything but the pair looked for", orElse = "1", min = 0.05, max = 100)
            double knownRatio,

            @Input(meaning = "fewest teeth of a gear", orElse = "6", min = 4, max = 300)
            int fewest,

            @Input(meaning = "most teeth of a gear", orElse = "60", min = 4, max = 300)
            int most,

            @Input(meaning = "tooth sum of the pair, 0 if not known", orElse = "0", min = 0, max = 600)
            int toothSum) {}

    /** A pair of tooth counts. */
    public record Candidate(
            @Output(meaning = "driving teeth") int driving,
            @Output(meaning = "driven teeth") int driven,
            @Output(meaning = "ratio of the pair") double ratio,
            @Output(meaning = "ratio through everything") double overall,
            @Output(meaning = "off the counted ratio") double off) {}

    /** Plain numbers. */
    public record Result(
            @Output(meaning = "ratio through everything, as counted")
            double overall,

            @Output(meaning = "ratio of the pair looked for")
            double ratio,

            @Output(meaning = "lowest it can be by this count")
            double low,

            @Output(meaning = "highest it can be by this count")
            double high,

            @Output(meaning = "nearest pair") Candidate nearest,

            @Output(meaning = "all pairs within the count, fewest teeth first")
            List<Candidate> within,

            @Output(meaning = "how many pairs fit") int fitting) {}

    /**
     * Pairs of tooth counts that fit a count of turns.
     *
     * @param c the case; a tooth sum, from centre distance and module, narrows the search
     * @return refused where the uncertainty of a count is as large as the count, fewest is more than most, or the tooth sum
     *     cannot be made. Source: kinematics
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> faults = new ArrayList<>();
        if (c.inputStep() >= c.inputTurns() || c.outputStep() >= c.outputTurns()) {
            faults.add(Refusal.of("inputStep", "the uncertainty is as large as the count", "Count more turns"));
        }
        if (c.fewest() > c.most()) {
            faults.add(Refusal.of("fewest", "is more than most", "Turn them round"));
        }
        if (c.toothSum() > 0 && (c.toothSum() < 2 * c.fewest() || c.toothSum() > 2 * c.most())) {
            faults.add(Refusal.of(
                    "toothSum", c.toothSum() + " cannot be made of two such gears", "Look at fewest and most"));
        }
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        Working w = new Working();
        boolean half = c.counted() == Counted.ONE_FLANGE_OTHER_HELD;
        double share = half ? 0.5 : 1;
        double overall = w.line(
                "ratio counted",
                half ? "input turns / (flange turns / 2)" : "input turns / output turns",
                c.inputTurns() / (share * c.outputTurns()),
                Kind.NUMBER,
                SOURCE);
        double ratio =
                w.line("ratio of the pair", "ratio counted / known ratio", overall / c.knownRatio(), Kind.NUMBER);
        double low = (c.inputTurns() - c.inputStep()) / (share * (c.outputTurns() + c.outputStep())) / c.knownRatio();
        double high = (c.inputTurns() + c.inputStep()) / (share * (c.outputTurns() - c.outputStep())) / c.knownRatio();
        List<Candidate> all = candidates(c, ratio);
        if (all.isEmpty()) {
            return Outcome.refused(
                    Refusal.of("toothSum", "no pair can be made of such gears", "Look at fewest, most and toothSum"));
        }
        List<Candidate> within = all.stream()
                .filter(pair -> pair.ratio() >= low * (1 - 1e-9) && pair.ratio() <= high * (1 + 1e-9))
                .toList();
        Candidate nearest = all.stream()
                .min(Comparator.comparingDouble((Candidate pair) -> Math.abs(pair.off())))
                .orElseThrow();
        cautions(c, w, within.size(), half);
        List<Candidate> shown = within.subList(0, Math.min(SHOWN, within.size()));
        return Outcome.ok(w.worked(new Result(overall, ratio, low, high, nearest, shown, within.size())));
    }

    private static List<Candidate> candidates(Case c, double ratio) {
        List<Candidate> all = new ArrayList<>();
        for (int sum = 2 * c.fewest(); sum <= 2 * c.most(); sum++) {
            if (c.toothSum() > 0 && sum != c.toothSum()) {
                continue;
            }
            for (int driving = Math.max(c.fewest(), sum - c.most());
                    driving <= Math.min(c.most(), sum - c.fewest());
                    driving++) {
                double own = (double) (sum - driving) / driving;
                all.add(new Candidate(driving, sum - driving, own, own * c.knownRatio(), own - ratio));
            }
        }
        return all;
    }

    private static void cautions(Case c, Working w, int fitting, boolean half) {
        if (fitting == 0) {
            w.caution("No pair fits the count: count again, and look whether the known ratio and the held flange are"
                    + " right.");
        } else if (fitting > 1) {
            w.caution(fitting + " pairs fit: count more turns, or give the tooth sum.");
        }
        if (half) {
            w.caution("Hold the other flange still all the time. If both turned together, the ratio found is twice too"
                    + " large.");
        }
        if (c.inputStep() == 0) {
            w.caution("No uncertainty of the count given: it is taken as exact.");
        }
    }
}
