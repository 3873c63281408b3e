package shimwright.mechanics.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.study.GaugeStudyCase.Form;
import shimwright.mechanics.study.GaugeStudyCase.Round;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code gauge-study}. */
public final class GaugeStudy {
    static final String MSA = "AIAG Measurement Systems Analysis, 4th ed., ch. III B";
    static final String NESTED = "NIST/SEMATECH e-Handbook 2.4.4.1";
    private static final double POOR = 0.3;

    private GaugeStudy() {}

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
    public static Outcome<Worked<GaugeStudyResult>> work(GaugeStudyCase c) {
        List<Refusal> faults = c.form() == Form.NESTED ? nestedFaults(c.rounds()) : crossedFaults(c.rounds());
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        long different = c.rounds().stream()
                .flatMap(round -> round.readings().stream())
                .distinct()
                .count();
        if (different == 1) {
            return Outcome.refused(
                    "rounds", "every reading is the same", "Use a gauge with a finer step, and parts that differ");
        }
        Working w = new Working();
        GaugeStudyResult result = switch (c.form()) {
            case ANOVA -> new Components(c, w).result();
            case AVERAGE_AND_RANGE -> new Ranges(c, w).result();
            case NESTED -> new Days(c, w).result();
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
            faults.add(new Refusal("rounds", "one part only", "Read at least two parts, better ten"));
        }
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (int i = 0; i < rounds.size(); i++) {
            Round round = rounds.get(i);
            counts.merge(round.name(), 1, Integer::sum);
            if (round.readings().size() != parts) {
                faults.add(new Refusal(
                        "rounds entry " + (i + 1),
                        round.readings().size() + " readings, " + parts + " in entry 1",
                        "Every round reads every part once"));
            }
        }
        Set<Integer> sizes = new LinkedHashSet<>(counts.values());
        if (sizes.size() > 1) {
            faults.add(new Refusal(
                    "rounds", "persons with unlike numbers of rounds: " + counts, "Give every person the same number"));
        } else if (sizes.contains(1)) {
            faults.add(new Refusal("rounds", "one round a person", "Read every part at least twice"));
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
                faults.add(new Refusal(
                        "rounds entry " + (i + 1),
                        round.readings().size() + " readings, " + repeats + " in entry 1",
                        "Take the same number every day"));
            }
        }
        if (repeats < 2) {
            faults.add(new Refusal("rounds", "one reading a day", "Read the check part at least twice a day"));
        }
        if (new LinkedHashSet<>(days.values()).size() > 1) {
            faults.add(new Refusal(
                    "rounds", "runs with unlike numbers of days: " + days, "Give every run the same number"));
        } else if (days.containsValue(1)) {
            faults.add(new Refusal("rounds", "one day a run", "Read on at least two days"));
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

    /** The worksheet. */
    public static final Worksheet<GaugeStudyCase, GaugeStudyResult> SHEET = new Worksheet<>(
                    "gauge-study",
                    "Gauge study",
                    "How much of what a gauge shows comes from the gauge and the hands, and how much from the parts.",
                    List.of(MSA, NESTED + ", for one person", "limits 10 % and 30 %: the same manual, ch. III"),
                    GaugeStudyCase.class,
                    GaugeStudyResult.class,
                    GaugeStudy::work)
            .drawn(StudyPictures::gauge);
}
