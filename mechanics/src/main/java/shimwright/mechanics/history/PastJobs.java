package shimwright.mechanics.history;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.measure.Statistics;
import shimwright.mechanics.measure.Student;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code past-jobs}: what the jobs of one model say, with few of them shrunk to what all models say. */
public final class PastJobs {
    private static final String SOURCE = "normal-normal update: any text on Bayesian data analysis";

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "past-jobs",
            "Past jobs",
            "What to expect of the next job of a model, few jobs leaning on those of all models.",
            List.of(SOURCE, "variance between models: analysis of variance, unequal numbers"),
            Case.class,
            Result.class,
            PastJobs::work);

    private PastJobs() {}

    /** Jobs of one model, metres. */
    public record Group(
            @Input(meaning = "model, or gauge", example = "five-speed")
            String name,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "a value a job",
                    min = -10,
                    max = 10,
                    most = 300,
                    example = "0.004 0.006 mm")
            List<Double> values) {
        public Group {
            values = List.copyOf(values);
        }
    }

    /** Lengths in metres. */
    public record Case(
            @Input(
                    meaning = "jobs by model: name: values",
                    most = 100,
                    example = "five-speed: 0.004 0.010 0.006 mm; six-speed: -0.004 0.002 -0.001 0.000 mm; "
                            + "transaxle: 0.012 0.007 mm")
            List<Group> groups,

            @Input(kind = Kind.LENGTH, meaning = "mean of all models; else from the jobs", min = -10, max = 10)
            @Nullable
            Double common,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "standard deviation between models; else from the jobs",
                    min = 0,
                    max = 10)
            @Nullable
            Double between,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "standard deviation from job to job within a model; else from the jobs",
                    min = 1e-9,
                    max = 10)
            @Nullable
            Double scatter,

            @Input(meaning = "confidence of the prediction", orElse = "0.95", min = 0.5, max = 0.999)
            double confidence) {
        public Case {
            groups = List.copyOf(groups);
        }
    }

    /** One model's next job, metres. */
    public record Next(
            @Output(meaning = "model") String name,
            @Output(meaning = "jobs") int jobs,

            @Output(kind = Kind.LENGTH, meaning = "its own mean", decimals = 4)
            double own,

            @Output(kind = Kind.LENGTH, meaning = "mean, shrunk to all models", u = "uncertainty", decimals = 4)
            double mean,

            @Output(kind = Kind.LENGTH, meaning = "standard uncertainty of that mean", decimals = 5)
            double uncertainty,

            @Output(kind = Kind.LENGTH, meaning = "standard deviation of the next job", decimals = 5)
            double next,

            @Output(kind = Kind.LENGTH, meaning = "next job, at least", decimals = 4)
            double low,

            @Output(kind = Kind.LENGTH, meaning = "next job, at most", decimals = 4)
            double high) {}

    /** Lengths in metres. */
    public record Result(
            @Output(kind = Kind.LENGTH, meaning = "mean of all models", decimals = 4)
            double common,

            @Output(kind = Kind.LENGTH, meaning = "standard deviation between models", decimals = 5)
            double between,

            @Output(kind = Kind.LENGTH, meaning = "standard deviation from job to job", decimals = 5)
            double scatter,

            @Output(meaning = "models") List<Next> models) {
        public Result {
            models = List.copyOf(models);
        }
    }

    /**
     * Precision of a model's mean 1/τ² + n/σ²; mean weighted likewise; next job √(1/precision + σ²).
     *
     * @param c values in m; τ² by analysis of variance, negative taken as 0; σ pooled
     * @return refused: no model with two jobs and no scatter given, one model and neither common mean nor deviation between
     *     models, jobs that are all the same without a scatter given
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> faults = faults(c);
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        Working w = new Working();
        int n = c.groups().stream().mapToInt(group -> group.values().size()).sum();
        int freedom = n - c.groups().size();
        Double givenScatter = c.scatter();
        double scatter = w.line(
                "scatter σ",
                "pooled standard deviation within models, or given",
                givenScatter != null ? givenScatter : Math.sqrt(within(c.groups()) / freedom),
                Kind.LENGTH,
                "JCGM 100:2008 H.3.6");
        Double givenBetween = c.between();
        double between = givenBetween != null ? givenBetween : between(c.groups(), scatter, w);
        w.line("between models τ", "√((mean square between − σ²)/n0), or given", between, Kind.LENGTH, SOURCE);
        Double givenCommon = c.common();
        double common = w.line(
                "common mean",
                "means weighted by 1/(τ² + σ²/n), or given",
                givenCommon != null ? givenCommon : common(c.groups(), between, scatter),
                Kind.LENGTH,
                SOURCE);
        double t = Student.coverageFactor(
                c.confidence(), givenScatter != null || freedom < 1 ? Double.POSITIVE_INFINITY : freedom);
        List<Next> models = new ArrayList<>();
        for (Group group : c.groups()) {
            models.add(next(group, common, between, scatter, t));
            Next last = models.get(models.size() - 1);
            w.line(group.name() + ", next job", "√(uncertainty of the mean² + σ²)", last.next(), Kind.LENGTH, SOURCE);
        }
        w.caution("Leave out jobs whose gauge, method or hands were not written down.");
        return Outcome.ok(w.worked(new Result(common, between, scatter, models)));
    }

    private static List<Refusal> faults(Case c) {
        List<Refusal> faults = new ArrayList<>();
        boolean pairs = c.groups().stream().anyMatch(group -> group.values().size() > 1);
        if (c.scatter() == null && !pairs) {
            faults.add(Refusal.of(
                    "scatter", "cannot be told from one job a model", "Give scatter, or a model with two jobs"));
        } else if (c.scatter() == null && within(c.groups()) == 0) {
            faults.add(Refusal.of("scatter", "the jobs of each model are all the same", "Give scatter"));
        }
        if (c.groups().size() < 2 && c.common() == null) {
            faults.add(Refusal.of("common", "cannot be told from one model", "Give common, or jobs of other models"));
        }
        if (c.groups().size() < 2 && c.between() == null) {
            faults.add(Refusal.of("between", "cannot be told from one model", "Give between, or jobs of other models"));
        }
        return faults;
    }

    private static double within(List<Group> groups) {
        double sum = 0;
        for (Group group : groups) {
            int n = group.values().size();
            sum += n < 2 ? 0 : (n - 1) * Math.pow(Statistics.deviation(group.values()), 2);
        }
        return sum;
    }

    private static double between(List<Group> groups, double scatter, Working w) {
        double n = 0;
        double squares = 0;
        double sum = 0;
        for (Group group : groups) {
            n += group.values().size();
            squares += Math.pow(group.values().size(), 2);
            sum += group.values().size() * Statistics.mean(group.values());
        }
        double mean = sum / n;
        double around = 0;
        for (Group group : groups) {
            around += group.values().size() * Math.pow(Statistics.mean(group.values()) - mean, 2);
        }
        int freedom = groups.size() - 1;
        double variance = (around / freedom - scatter * scatter) / ((n - squares / n) / freedom);
        if (variance < 0) {
            w.caution("Models differ no more than jobs of one model do: taken as one.");
        }
        return Math.sqrt(Math.max(0, variance));
    }

    private static double common(List<Group> groups, double between, double scatter) {
        double sum = 0;
        double weights = 0;
        for (Group group : groups) {
            double weight =
                    1 / (between * between + scatter * scatter / group.values().size());
            weights += weight;
            sum += weight * Statistics.mean(group.values());
        }
        return sum / weights;
    }

    private static Next next(Group group, double common, double between, double scatter, double t) {
        int n = group.values().size();
        double own = Statistics.mean(group.values());
        double keep = between * between / (between * between + scatter * scatter / n);
        double mean = common + keep * (own - common);
        double uncertainty = Math.sqrt(keep / n) * scatter;
        double next = Math.hypot(uncertainty, scatter);
        return new Next(group.name(), n, own, mean, uncertainty, next, mean - t * next, mean + t * next);
    }
}
