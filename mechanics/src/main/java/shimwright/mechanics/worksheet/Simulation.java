package shimwright.mechanics.worksheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReference;
import java.util.concurrent.atomic.LongAdder;
import shimwright.mechanics.measure.Budget;
import shimwright.mechanics.measure.Distribution;
import shimwright.mechanics.measure.DrawSummary;
import shimwright.mechanics.measure.FirstOrderCheck;
import shimwright.mechanics.measure.MonteCarlo;
import shimwright.mechanics.measure.Sampling;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;

/**
 * Monte Carlo propagation through any worksheet (JCGM 101:2008), and the comparison of the first order with it (clause
 * 8).
 *
 * @param sampling as asked for
 * @param draws that gave a result
 * @param refused draws that the worksheet refused, at most one in a thousand
 * @param settled whether the adaptive rule was met; true when it was not asked for
 * @param outputs by output path
 * @param checks of the first order, by output path
 * @param choices share of the draws by output path and word
 * @param cautions sentences to read with it
 */
public record Simulation(
        Sampling sampling,
        int draws,
        int refused,
        boolean settled,
        Map<String, DrawSummary> outputs,
        Map<String, FirstOrderCheck> checks,
        Map<String, Map<String, Double>> choices,
        List<String> cautions) {
    private static final double MOST_REFUSED = 1e-3;
    private static final int MOST_NUMBERS = 20_000_000;

    public Simulation {
        outputs = Map.copyOf(outputs);
        checks = Map.copyOf(checks);
        choices = Map.copyOf(choices);
        cautions = List.copyOf(cautions);
    }

    /**
     * Draws.
     *
     * @param sheet the worksheet
     * @param bound the case and the uncertainties of its inputs
     * @param base its result without uncertainty
     * @param firstOrder its first-order budgets
     * @param sampling how to draw
     * @return refused where nothing is uncertain, where too many draws fall where the worksheet has no answer, or where
     *     the draws would not fit the memory
     */
    public static <C extends Record, R extends Record> Outcome<Simulation> of(
            Worksheet<C, R> sheet, BoundCase<C> bound, R base, Propagation firstOrder, Sampling sampling) {
        if (bound.uncertainties().isEmpty()) {
            return bound.taken().isEmpty()
                    ? Outcome.refused(Refusal.of(
                            "monte-carlo",
                            "no input carries an uncertainty",
                            "Type at least one as value ± uncertainty"))
                    : Outcome.refused(Refusal.of(
                            "monte-carlo",
                            "the sheet itself sums the uncertainty that was typed, nothing is left to draw",
                            "Ask without draws"));
        }
        Map<String, Double> middle = new LinkedHashMap<>(Numbers.of(sheet.outputs(), base));
        middle.keySet()
                .removeIf(path -> path.contains("[")
                        && firstOrder.budgets().getOrDefault(path, Budget.NONE).u() == 0);
        if ((long) middle.size() * sampling.draws() > MOST_NUMBERS) {
            return Outcome.refused(Refusal.of(
                    "monte-carlo",
                    sampling.draws() + " draws of " + middle.size() + " results are too many",
                    "Take at most " + MOST_NUMBERS / middle.size()));
        }
        return sampling.checked()
                .flatMap(sound -> Influence.of(bound.uncertainties()))
                .flatMap(influences -> new Drawing<>(
                                sheet, bound.value(), base, influences, List.copyOf(middle.keySet()))
                        .run(middle, firstOrder.budgets(), sampling));
    }

    /** One run of draws, and what it counts on the way; sums do not depend on the order of the threads. */
    private static final class Drawing<C extends Record, R extends Record> {
        private final PerturbedCase<C, R> mover;
        private final R base;
        private final List<Influence> influences;
        private final List<String> outputs;
        private final List<SheetField> fields;
        private final List<SheetField> words;
        private final Map<String, Map<String, LongAdder>> counts = new ConcurrentHashMap<>();
        private final AtomicReference<String> why = new AtomicReference<>("");

        Drawing(Worksheet<C, R> sheet, C value, R base, List<Influence> influences, List<String> outputs) {
            this.base = base;
            this.mover = new PerturbedCase<>(sheet, value, influences);
            this.influences = influences;
            this.outputs = outputs;
            this.fields = sheet.outputs();
            this.words = sheet.outputs().stream()
                    .filter(field -> field.shape() == Shape.CHOICE || field.shape() == Shape.YES_NO)
                    .toList();
        }

        Outcome<Simulation> run(Map<String, Double> middle, Map<String, Budget> budgets, Sampling sampling) {
            List<Distribution> inputs =
                    influences.stream().map(Influence::distribution).toList();
            MonteCarlo.Run run = MonteCarlo.run(inputs, outputs.size(), this::at, sampling);
            int all = run.draws() + run.refused();
            if (run.refused() > MOST_REFUSED * all) {
                return Outcome.refused(List.of(Refusal.of(
                        "monte-carlo",
                        run.refused() + " of " + all + " draws have no answer, such as " + why.get(),
                        "Give a smaller uncertainty, or a shape with ends (rectangular, triangular, u-shaped)")));
            }
            Map<String, DrawSummary> sampled = new LinkedHashMap<>();
            Map<String, FirstOrderCheck> checks = new LinkedHashMap<>();
            for (int i = 0; i < outputs.size(); i++) {
                String output = outputs.get(i);
                DrawSummary one = run.results().get(i);
                if (one != null) {
                    Budget budget = budgets.getOrDefault(output, Budget.NONE);
                    sampled.put(output, one);
                    checks.put(
                            output,
                            FirstOrderCheck.of(middle.getOrDefault(output, 0.0), budget, one, sampling.coverage(), 2)
                                    .allowing(run.draws()));
                }
            }
            return Outcome.ok(new Simulation(
                    sampling,
                    run.draws(),
                    run.refused(),
                    run.settled(),
                    sampled,
                    checks,
                    shares(all - run.refused()),
                    cautions(run, sampled, checks)));
        }

        private boolean at(double[] deviations, double[] results) {
            Map<String, Double> by = new LinkedHashMap<>();
            for (int i = 0; i < deviations.length; i++) {
                double deviation = deviations[i];
                influences.get(i).moves().forEach((path, u) -> by.merge(path, deviation * u, Double::sum));
            }
            Outcome<R> outcome = mover.by(by);
            if (!outcome.isOk()) {
                why.compareAndSet("", outcome.refusals().get(0).sentence());
                return false;
            }
            R result = outcome.orElseThrow();
            Map<String, Double> numbers = Numbers.of(fields, base, result);
            for (int i = 0; i < results.length; i++) {
                results[i] = numbers.getOrDefault(outputs.get(i), Double.NaN);
            }
            for (SheetField field : words) {
                counts.computeIfAbsent(field.name(), name -> new ConcurrentHashMap<>())
                        .computeIfAbsent(Render.choice(Records.get(result, field.name())), word -> new LongAdder())
                        .increment();
            }
            return true;
        }

        private Map<String, Map<String, Double>> shares(int draws) {
            Map<String, Map<String, Double>> shares = new TreeMap<>();
            counts.forEach((field, words) -> {
                Map<String, Double> share = new TreeMap<>();
                words.forEach((word, count) -> share.put(word, count.sum() / (double) draws));
                shares.put(field, share);
            });
            return shares;
        }

        private List<String> cautions(
                MonteCarlo.Run run, Map<String, DrawSummary> sampled, Map<String, FirstOrderCheck> checks) {
            List<String> cautions = new ArrayList<>();
            if (run.refused() > 0) {
                cautions.add(run.refused() + " draws had no answer and are left out.");
            }
            if (!run.settled()) {
                cautions.add("The draws ended before the results stood still: ask for more.");
            }
            boolean wild =
                    influences.stream().anyMatch(influence -> influence.unit().nu() <= 2);
            if (wild) {
                cautions.add(
                        "From three readings or fewer an uncertainty has no standard deviation: go by the interval, not by"
                                + " the number behind ±.");
            }
            outputs.stream()
                    .filter(output -> !sampled.containsKey(output))
                    .map(Propagation::entryless)
                    .distinct()
                    .forEach(output -> cautions.add(output + " has no number in some draws; no interval is given."));
            checks.forEach((output, check) -> {
                if (!check.holds()) {
                    cautions.add("For " + Propagation.entryless(output)
                            + " the simple rule does not hold (JCGM 101, clause 8): go by the draws.");
                }
            });
            return cautions.stream().distinct().toList();
        }
    }
}
