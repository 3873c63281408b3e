package shimwright.mechanics.spring;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** Worksheet {@code spring-test}. */
public final class SpringTester {
    private static final double USUAL_LOSS = 0.10;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "spring-test",
            "Spring on the tester",
            "Rate, set and load at work of a used spring from readings on a spring tester.",
            List.of("Hooke's law, least squares", "10 % loss of load as a usual limit: common practice, no source"),
            Case.class,
            Result.class,
            SpringTester::work);

    private SpringTester() {}

    /** A used spring on a spring tester. */
    public record Case(
            @Input(meaning = "length and load at each reading", most = 100, example = "20 mm: 41 N; 22 mm: 30 N")
            List<Reading> readings,

            @Input(kind = Kind.LENGTH, meaning = "free length measured", min = 1e-3, max = 1, example = "27.4 mm")
            @Nullable
            Double freeLength,

            @Input(kind = Kind.LENGTH, meaning = "free length when new", min = 1e-3, max = 1, example = "27.8 mm")
            @Nullable
            Double newFreeLength,

            @Input(kind = Kind.LENGTH, meaning = "length at work", min = 5e-4, max = 1, example = "20 mm") @Nullable
            Double workingLength,

            @Input(kind = Kind.FORCE, meaning = "load at work when new", min = 0.01, max = 1e5, example = "48 N")
            @Nullable
            Double newLoad,

            @Input(
                    kind = Kind.FORCE,
                    meaning = "smallest load at work allowed",
                    min = 0.01,
                    max = 1e5,
                    example = "39 N")
            @Nullable
            Double limitLoad) {

        /** One reading. */
        public record Reading(
                @Input(kind = Kind.LENGTH, meaning = "length", min = 5e-4, max = 1, example = "20 mm")
                double length,

                @Input(kind = Kind.FORCE, meaning = "load", min = 0, max = 1e5, example = "41 N")
                double load) {}
    }

    /** What the tester says; what was not given cannot be compared and is absent. */
    public record Result(
            @Output(kind = Kind.STIFFNESS, meaning = "rate", decimals = 3)
            double rate,

            @Output(kind = Kind.LENGTH, meaning = "free length by the loads", decimals = 2)
            double impliedFreeLength,

            @Output(kind = Kind.LENGTH, meaning = "set", decimals = 2) @Nullable
            Double set,

            @Output(kind = Kind.FORCE, meaning = "load at work", decimals = 1) @Nullable
            Double load,

            @Output(meaning = "load lost since new", unit = "%", decimals = 1) @Nullable
            Double loss,

            @Output(meaning = "load at work against its limit")
            Verdict verdict) {}

    /**
     * Straight line through the readings, by least squares; with one reading through the measured free length.
     *
     * @param c lengths in m, loads in N
     * @return rate in N/m; {@code NOT_PROVEN} where the length at work or its limit is not given; refused: one reading
     *     without a free length, readings at one length only, a load that does not rise as the spring is pressed, a
     *     length at work or a reading beyond the free length, a new load or limit without the length at work
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Case.Reading> points = new ArrayList<>(c.readings());
        Double free = c.freeLength();
        if (points.size() == 1 && free != null) {
            points.add(new Case.Reading(free, 0));
        }
        List<Refusal> refusals = checked(c, points);
        if (!refusals.isEmpty()) {
            return Outcome.refused(refusals);
        }
        double meanLength =
                points.stream().mapToDouble(p -> p.length()).average().orElse(0);
        double meanLoad = points.stream().mapToDouble(p -> p.load()).average().orElse(0);
        double cross = points.stream()
                .mapToDouble(p -> (meanLength - p.length()) * (p.load() - meanLoad))
                .sum();
        double square = points.stream()
                .mapToDouble(p -> (meanLength - p.length()) * (meanLength - p.length()))
                .sum();
        if (cross <= 0) {
            return Outcome.refused(Refusal.of(
                    "readings", "the load does not rise as the spring is pressed", "Look which reading is which"));
        }
        Working w = new Working();
        double rate = w.line("rate", "ΔF/ΔL", cross / square, Kind.STIFFNESS, "Hooke's law, least squares");
        double implied =
                w.line("free length by the loads", "mean L + mean F/rate", meanLength + meanLoad / rate, Kind.LENGTH);
        Double working = c.workingLength();
        if (working != null && working >= implied) {
            return Outcome.refused(Refusal.of(
                    "workingLength",
                    "at this length the spring is slack",
                    "Look at the readings and the length at work"));
        }
        return Outcome.ok(judged(c, rate, implied, w));
    }

    private static List<Refusal> checked(Case c, List<Case.Reading> points) {
        List<Refusal> refusals = new ArrayList<>();
        if (points.size() < 2) {
            refusals.add(Refusal.of(
                    "readings", "one reading gives no rate", "Read at two lengths, or give the free length"));
        } else if (points.stream().mapToDouble(p -> p.length()).distinct().count() < 2) {
            refusals.add(Refusal.of("readings", "all readings are at one length", "Read at two lengths"));
        }
        Double free = c.freeLength();
        if (free != null && c.readings().stream().anyMatch(p -> p.length() >= free && p.load() > 0)) {
            refusals.add(Refusal.of(
                    "readings", "a load is given at or beyond the free length", "Look at lengths and free length"));
        }
        if (c.workingLength() == null && (c.newLoad() != null || c.limitLoad() != null)) {
            refusals.add(
                    Refusal.of("workingLength", "a load at work needs the length at work", "Type workingLength=20 mm"));
        }
        Double newLoad = c.newLoad();
        Double limit = c.limitLoad();
        if (newLoad != null && limit != null && limit > newLoad) {
            refusals.add(Refusal.of("limitLoad", "the limit is above the load when new", "Look which is which"));
        }
        return refusals;
    }

    private static Worked<Result> judged(Case c, double rate, double implied, Working w) {
        Double working = c.workingLength();
        Double load = working == null
                ? null
                : w.line("load at work", "rate × (free − working)", rate * (implied - working), Kind.FORCE);
        Double free = c.freeLength();
        Double fresh = c.newFreeLength();
        Double set = free == null || fresh == null
                ? null
                : w.line("set", "free when new − free now", fresh - free, Kind.LENGTH);
        Double newLoad = c.newLoad();
        Double loss = newLoad == null || load == null
                ? null
                : w.line("loss", "1 − load/load when new", 1 - load / newLoad, Kind.NUMBER);
        Verdict verdict = verdict(load, c.limitLoad());
        if (loss != null && loss > USUAL_LOSS && verdict != Verdict.OUT) {
            w.caution("It has lost more than a tenth of its load: replace it with its fellows, not alone.");
        }
        if (verdict == Verdict.NOT_PROVEN) {
            w.caution("Free length alone proves nothing: judge by the load at the length at work.");
        }
        w.caution("A tester lets go of a spring in an instant: guard it, and keep fingers and eyes out of its way.");
        return w.worked(new Result(rate, implied, set, load, loss, verdict));
    }

    private static Verdict verdict(@Nullable Double load, @Nullable Double limit) {
        if (load == null || limit == null) {
            return Verdict.NOT_PROVEN;
        }
        return load >= limit ? Verdict.IN : Verdict.OUT;
    }
}
