package shimwright.mechanics.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.measure.RunLength;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code ewma-chart}: a weighted mean that sees small lasting shifts. */
public final class Ewma {
    private static final String SOURCE = "NIST/SEMATECH e-Handbook 6.3.2.4";
    private static final String LENGTHS = "Crowder, Technometrics 29, 1987, integral equation";

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
                    "ewma-chart",
                    "Weighted mean chart",
                    "Whether the mean of one value a job has moved a little, for good.",
                    List.of(SOURCE, LENGTHS),
                    Case.class,
                    Result.class,
                    Ewma::work)
            .drawn(ChartPictures::ewma)
            .drawnWhenAsked();

    private Ewma() {}

    /** Values in metres, one a job. */
    public record Case(
            @Input(
                    kind = Kind.LENGTH,
                    meaning = "values in the order of the jobs",
                    min = -10,
                    max = 10,
                    fewest = 2,
                    example = "0.004 -0.006 0.002 0.011 -0.003 0.008 0.007 0.009 0.012 0.010 mm")
            List<Double> values,

            @Input(meaning = "weight of the newest value", orElse = "0.2", min = 0.01, max = 1)
            double weight,

            @Input(meaning = "limits, in standard deviations", orElse = "3", min = 0.5, max = 5)
            double width,

            @Input(kind = Kind.LENGTH, meaning = "target; else the mean", min = -10, max = 10) @Nullable
            Double target,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "standard deviation of one value; else from moving ranges",
                    min = 1e-9,
                    max = 10)
            @Nullable
            Double deviation,

            @Input(meaning = "shift to be seen, in standard deviations", orElse = "1", min = 0.05, max = 10)
            double shift) {
        public Case {
            values = List.copyOf(values);
        }
    }

    /** One point of the chart, metres. */
    public record Point(
            @Output(kind = Kind.LENGTH, meaning = "weighted mean", decimals = 4)
            double mean,

            @Output(kind = Kind.LENGTH, meaning = "lower limit here", decimals = 4)
            double lower,

            @Output(kind = Kind.LENGTH, meaning = "upper limit here", decimals = 4)
            double upper) {}

    /** Lengths in metres; places counted from 1, 0 for none. */
    public record Result(
            @Output(kind = Kind.LENGTH, meaning = "target", decimals = 4)
            double target,

            @Output(kind = Kind.LENGTH, meaning = "standard deviation of one value", decimals = 4)
            double deviation,

            @Output(kind = Kind.LENGTH, meaning = "weighted mean now", decimals = 4)
            double mean,

            @Output(kind = Kind.LENGTH, meaning = "upper limit once steady", decimals = 4)
            double upper,

            @Output(kind = Kind.LENGTH, meaning = "lower limit once steady", decimals = 4)
            double lower,

            @Output(meaning = "first job outside, 0 for none")
            int signal,

            @Output(meaning = "jobs between false alarms", decimals = 1, infinite = "over ten million")
            double falseAlarm,

            @Output(meaning = "jobs until the shift shows", decimals = 1, infinite = "over ten million")
            double untilSeen,

            @Output(meaning = "points") List<Point> points,
            @Output(meaning = "advice") String advice) {
        public Result {
            points = List.copyOf(points);
        }
    }

    /**
     * zᵢ = λxᵢ + (1−λ)zᵢ₋₁ from the target; limits ± Lσ√(λ/(2−λ)·(1−(1−λ)²ⁱ)).
     *
     * @param c values in m
     * @return refused: values that are all the same without a standard deviation
     */
    public static Outcome<Worked<Result>> work(Case c) {
        Optional<Refusal> still = c.deviation() == null ? Series.standsStill(c.values()) : Optional.empty();
        if (still.isPresent()) {
            return Outcome.refused(List.of(still.get()));
        }
        Working w = new Working();
        double target = Series.target(c.values(), c.target(), w);
        double deviation = Series.deviation(c.values(), c.deviation(), w);
        double steady = w.line(
                "limits once steady, ±",
                "width × deviation × √(weight/(2 − weight))",
                c.width() * deviation * Math.sqrt(c.weight() / (2 - c.weight())),
                Kind.LENGTH,
                SOURCE);
        List<Point> points = new ArrayList<>();
        double mean = target;
        int signal = 0;
        for (int i = 0; i < c.values().size(); i++) {
            mean = c.weight() * c.values().get(i) + (1 - c.weight()) * mean;
            double half = steady * Math.sqrt(1 - Math.pow(1 - c.weight(), 2 * (i + 1)));
            points.add(new Point(mean, target - half, target + half));
            signal = signal == 0 && Math.abs(mean - target) > half ? i + 1 : signal;
        }
        w.line("weighted mean now", "weight × value + (1 − weight) × mean before", mean, Kind.LENGTH, SOURCE);
        double falseAlarm = RunLength.ewma(c.weight(), c.width(), 0);
        double untilSeen = RunLength.ewma(c.weight(), c.width(), c.shift());
        Series.cautions(w, LENGTHS, c.target() == null || c.deviation() == null);
        return Outcome.ok(w.worked(new Result(
                target,
                deviation,
                mean,
                target + steady,
                target - steady,
                signal,
                falseAlarm,
                untilSeen,
                points,
                signal == 0
                        ? Series.STILL
                        : "The mean has moved by job " + signal + ": look at what changed before it.")));
    }
}
