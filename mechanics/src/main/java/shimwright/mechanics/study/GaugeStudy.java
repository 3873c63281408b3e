package shimwright.mechanics.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.study.GaugeStudy.Case.Form;
import shimwright.mechanics.study.GaugeStudy.Case.Round;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code gauge-study}. */
public final class GaugeStudy {
    static final String MSA = "AIAG Measurement Systems Analysis, 4th ed., ch. III B";

    static final String NESTED = "NIST/SEMATECH e-Handbook 2.4.4.1";

    private static final double POOR = 0.3;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
                    "gauge-study",
                    "Gauge study",
                    "How much of what a gauge shows comes from the gauge and the hands, and how much from the parts.",
                    List.of(MSA, NESTED + ", for one person", "limits 10 % and 30 %: the same manual, ch. III"),
                    Case.class,
                    Result.class,
                    GaugeStudy::work)
            .drawn(StudyPictures::gauge);

    private GaugeStudy() {}

    /**
     * Readings of a gauge study.
     *
     * @param rounds one per round of one person over all parts; nested: one per day, named by its run
     * @param form how it is worked out
     * @param tolerance width of the tolerance that the gauge must judge, m
     * @param pooling probability above which the interaction counts as chance
     * @param confidence of the interval of the gauge's standard deviation
     * @param deviations width of a spread, in standard deviations, held against the tolerance
     */
    public record Case(
            @Input(
                    meaning =
                            "rounds: person: reading of part 1, part 2 and so on; the next round of the same person follows"
                                    + " in its own entry; nested: run: readings of one day on the check part",
                    fewest = 2,
                    most = 200,
                    example = "A: 0.41 0.52 0.47 0.60 0.44 mm; A: 0.42 0.52 0.48 0.59 0.44 mm; "
                            + "B: 0.41 0.53 0.48 0.61 0.45 mm; B: 0.42 0.53 0.47 0.60 0.46 mm")
            List<Round> rounds,

            @Input(meaning = "how it is worked out", orElse = "anova")
            Form form,

            @Input(kind = Kind.LENGTH, meaning = "width of the tolerance to be judged", min = 1e-9, max = 1) @Nullable
            Double tolerance,

            @Input(meaning = "chance above which the interaction is pooled", orElse = "0.25", min = 0, max = 1)
            double pooling,

            @Input(meaning = "confidence of the interval", orElse = "0.9", min = 0.5, max = 0.999)
            double confidence,

            @Input(meaning = "standard deviations that make a spread", orElse = "6", min = 1, max = 10)
            double deviations) {
        public Case {
            rounds = List.copyOf(rounds);
        }

        /** How a study is worked out. */
        public enum Form {
            /** Analysis of variance; with one person, of parts and repeats alone. */
            ANOVA,
            /** From mean ranges. */
            AVERAGE_AND_RANGE,
            /** One person, one check part: repeats within days, days within runs. */
            NESTED
        }

        /** One person once over all parts, or one day on the check part; m. */
        public record Round(
                @Input(meaning = "person, or run", example = "A")
                String name,

                @Input(
                        kind = Kind.LENGTH,
                        meaning = "readings in the order of the parts",
                        min = -10,
                        max = 10,
                        most = 100,
                        example = "0.41 0.52 mm")
                List<Double> readings) {
            public Round {
                readings = List.copyOf(readings);
            }
        }
    }

    /**
     * What a gauge study says; standard deviations in m. Absent where the form does not give it.
     *
     * @param repeatability of one person on one part (EV); nested: within a day
     * @param reproducibility between persons (AV), interaction left out; nested: between days
     * @param interaction between persons and parts; nested: between runs
     * @param gauge all of these together (GRR); nested: of one day's mean
     * @param parts between parts (PV)
     * @param total gauge and parts (TV)
     * @param gaugeShare gauge over total
     * @param categories 1.41·PV/GRR, not truncated
     * @param toleranceShare spread of the gauge over the tolerance
     * @param gaugeLow lower end of the interval of the gauge's standard deviation
     * @param gaugeHigh upper end
     * @param freedom effective degrees of freedom of the gauge's standard deviation
     * @param rangeLimit upper limit of the ranges of repeats
     * @param over places whose range is above it
     * @param pooled whether the interaction was pooled with the repeats
     * @param table analysis of variance; nested: the levels
     * @param advice one sentence
     */
    public record Result(
            @Output(kind = Kind.LENGTH, meaning = "repeatability, one standard deviation", decimals = 5)
            double repeatability,

            @Output(kind = Kind.LENGTH, meaning = "between persons, or days", decimals = 5) @Nullable
            Double reproducibility,

            @Output(kind = Kind.LENGTH, meaning = "between persons on different parts, or between runs", decimals = 5)
            @Nullable
            Double interaction,

            @Output(kind = Kind.LENGTH, meaning = "gauge as a whole", decimals = 5)
            double gauge,

            @Output(kind = Kind.LENGTH, meaning = "between parts", decimals = 5) @Nullable
            Double parts,

            @Output(kind = Kind.LENGTH, meaning = "gauge and parts", decimals = 5) @Nullable
            Double total,

            @Output(meaning = "gauge, share of all", unit = "%", decimals = 2) @Nullable
            Double gaugeShare,

            @Output(meaning = "classes of parts it tells apart", decimals = 2, infinite = "no limit") @Nullable
            Double categories,

            @Output(meaning = "spread of the gauge, share of the tolerance", unit = "%", decimals = 1) @Nullable
            Double toleranceShare,

            @Output(kind = Kind.LENGTH, meaning = "gauge, at least", decimals = 5) @Nullable
            Double gaugeLow,

            @Output(kind = Kind.LENGTH, meaning = "gauge, at most", decimals = 5) @Nullable
            Double gaugeHigh,

            @Output(meaning = "degrees of freedom of the gauge", decimals = 1) @Nullable
            Double freedom,

            @Output(kind = Kind.LENGTH, meaning = "upper limit of the ranges", decimals = 4) @Nullable
            Double rangeLimit,

            @Output(meaning = "ranges above it") List<String> over,

            @Output(meaning = "interaction pooled with the repeats")
            boolean pooled,

            @Output(meaning = "table") List<Row> table,
            @Output(meaning = "advice") String advice) {
        public Result {
            over = List.copyOf(over);
            table = List.copyOf(table);
        }

        /** One line of the table; F and chance only where the line is tested. */
        public record Row(
                @Output(meaning = "what") String source,
                @Output(meaning = "degrees of freedom") int freedom,

                @Output(kind = Kind.AREA, meaning = "sum of squares", decimals = 6)
                double squares,

                @Output(kind = Kind.AREA, meaning = "mean square", decimals = 7)
                double meanSquare,

                @Output(meaning = "F", decimals = 3, infinite = "no limit") @Nullable
                Double f,

                @Output(meaning = "chance of such an F", decimals = 4) @Nullable
                Double chance) {}
    }

    /**
     * How much of what a gauge shows is the gauge and the hands.
     *
     * @param c readings in m. Average and range: EV = R̄·K₁, AV² = (X̄diff·K₂)² − EV²/(n·r), PV = Rp·K₃, K = 1/d₂*. Analysis of
     *     variance: components by mean squares, a negative one taken as 0 and said so; the interaction is pooled where its
     *     chance is above the one given; interval after Satterthwaite. Nested: standard deviations within days, of day
     *     means within runs, of run means; one day's mean carries the upper two in full
     * @return refused: rounds of unlike length, persons with unlike numbers of rounds, fewer than two rounds a person, two
     *     parts or, nested, two days a run; readings that are all the same
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> faults = c.form() == Form.NESTED ? nestedFaults(c.rounds()) : crossedFaults(c.rounds());
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        long different = c.rounds().stream()
                .flatMap(round -> round.readings().stream())
                .distinct()
                .count();
        if (different == 1) {
            return Outcome.refused(Refusal.of(
                    "rounds", "every reading is the same", "Use a gauge with a finer step, and parts that differ"));
        }
        Working w = new Working();
        Result result = switch (c.form()) {
            case ANOVA -> new VarianceComponents(c, w).result();
            case AVERAGE_AND_RANGE -> new AverageAndRange(c, w).result();
            case NESTED -> new NestedStudy(c, w).result();
        };
        if (c.form() != Form.NESTED) {
            w.caution(
                    "The share of all depends on the parts that were brought: bring parts that differ as the work does.");
        }
        return Outcome.ok(w.worked(result));
    }

    private static List<Refusal> crossedFaults(List<Round> rounds) {
        List<Refusal> faults = new ArrayList<>();
        int parts = rounds.get(0).readings().size();
        if (parts < 2) {
            faults.add(Refusal.of("rounds", "one part only", "Read at least two parts, better ten"));
        }
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (int i = 0; i < rounds.size(); i++) {
            Round round = rounds.get(i);
            counts.merge(round.name(), 1, Integer::sum);
            if (round.readings().size() != parts) {
                faults.add(Refusal.of(
                        "rounds[" + i + "]",
                        round.readings().size() + " readings, " + parts + " in entry 1",
                        "Every round reads every part once"));
            }
        }
        Set<Integer> sizes = new LinkedHashSet<>(counts.values());
        if (sizes.size() > 1) {
            faults.add(Refusal.of(
                    "rounds", "persons with unlike numbers of rounds: " + counts, "Give every person the same number"));
        } else if (sizes.contains(1)) {
            faults.add(Refusal.of("rounds", "one round a person", "Read every part at least twice"));
        }
        return faults;
    }

    private static List<Refusal> nestedFaults(List<Round> rounds) {
        List<Refusal> faults = new ArrayList<>();
        int repeats = rounds.get(0).readings().size();
        Map<String, Integer> days = new LinkedHashMap<>();
        for (int i = 0; i < rounds.size(); i++) {
            Round round = rounds.get(i);
            days.merge(round.name(), 1, Integer::sum);
            if (round.readings().size() != repeats) {
                faults.add(Refusal.of(
                        "rounds[" + i + "]",
                        round.readings().size() + " readings, " + repeats + " in entry 1",
                        "Take the same number every day"));
            }
        }
        if (repeats < 2) {
            faults.add(Refusal.of("rounds", "one reading a day", "Read the check part at least twice a day"));
        }
        if (new LinkedHashSet<>(days.values()).size() > 1) {
            faults.add(Refusal.of(
                    "rounds", "runs with unlike numbers of days: " + days, "Give every run the same number"));
        } else if (days.containsValue(1)) {
            faults.add(Refusal.of("rounds", "one day a run", "Read on at least two days"));
        }
        return faults;
    }

    /** What to do about a gauge that takes such a share. */
    static String advice(double share, String of) {
        String percent = Math.round(share * 100) + " % of " + of;
        if (share <= 0.1) {
            return "The gauge takes " + percent + ": good enough.";
        }
        return share <= POOR
                ? "The gauge takes " + percent + ": it may do where little hangs on it."
                : "The gauge takes " + percent + ": not good enough; look at the gauge, the fixture and the feel.";
    }
}
