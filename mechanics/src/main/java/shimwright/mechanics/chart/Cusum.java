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

/** The worksheet {@code cusum-chart}: sums of what exceeds the target, which name the job where a shift began. */
public final class Cusum {
    private static final String SOURCE = "NIST/SEMATECH e-Handbook 6.3.2.3";
    private static final String LENGTHS = "Page, Biometrika 41, 1954, integral equation";
    private static final double MOST_DEVIATIONS = 30;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
                    "cusum-chart",
                    "Cumulative sum chart",
                    "Whether and since which job the mean of one value a job has moved.",
                    List.of(SOURCE, LENGTHS),
                    Case.class,
                    Result.class,
                    Cusum::work)
            .drawn(ChartPictures::cusum)
            .drawnWhenAsked();

    private Cusum() {}

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

            @Input(kind = Kind.LENGTH, meaning = "target; else the mean", min = -10, max = 10) @Nullable
            Double target,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "standard deviation of one value; else from moving ranges",
                    min = 1e-9,
                    max = 10)
            @Nullable
            Double deviation,

            @Input(kind = Kind.LENGTH, meaning = "slack k; else half a deviation", min = 0, max = 10) @Nullable
            Double slack,

            @Input(kind = Kind.LENGTH, meaning = "limit h of the sums; else five deviations", min = 1e-9, max = 100)
            @Nullable
            Double limit,

            @Input(meaning = "shift to be seen, in standard deviations", orElse = "1", min = 0.05, max = 10)
            double shift) {
        public Case {
            values = List.copyOf(values);
        }
    }

    /** One point of the chart, metres. */
    public record Point(
            @Output(kind = Kind.LENGTH, meaning = "sum upwards", decimals = 4)
            double up,

            @Output(kind = Kind.LENGTH, meaning = "sum downwards", decimals = 4)
            double down) {}

    /** Lengths in metres; places counted from 1, 0 for none. */
    public record Result(
            @Output(kind = Kind.LENGTH, meaning = "target", decimals = 4)
            double target,

            @Output(kind = Kind.LENGTH, meaning = "slack", decimals = 4)
            double slack,

            @Output(kind = Kind.LENGTH, meaning = "limit of the sums", decimals = 4)
            double limit,

            @Output(meaning = "first job over the limit upwards, 0 for none")
            int signalUp,

            @Output(meaning = "first job over the limit downwards, 0 for none")
            int signalDown,

            @Output(meaning = "job where that shift probably began, 0 for none")
            int began,

            @Output(meaning = "jobs between false alarms", decimals = 1, infinite = "over ten million") @Nullable
            Double falseAlarm,

            @Output(meaning = "jobs until the shift shows", decimals = 1, infinite = "over ten million") @Nullable
            Double untilSeen,

            @Output(meaning = "points") List<Point> points,
            @Output(meaning = "advice") String advice) {
        public Result {
            points = List.copyOf(points);
        }
    }

    /**
     * Sᵢ = max(0, Sᵢ₋₁ ± (xᵢ − target) − k), a signal above h; a shift began after the last 0 before it.
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
        Double ownSlack = c.slack();
        Double ownLimit = c.limit();
        double slack =
                w.line("slack k", "given, or ½ deviation", ownSlack != null ? ownSlack : deviation / 2, Kind.LENGTH);
        double limit =
                w.line("limit h", "given, or 5 deviations", ownLimit != null ? ownLimit : 5 * deviation, Kind.LENGTH);
        List<Point> points = new ArrayList<>();
        double up = 0;
        double down = 0;
        for (double value : c.values()) {
            up = Math.max(0, up + value - target - slack);
            down = Math.max(0, down + target - value - slack);
            points.add(new Point(up, down));
        }
        w.line("sum upwards now", "max(0, sum before + value − target − k)", up, Kind.LENGTH, SOURCE);
        w.line("sum downwards now", "max(0, sum before + target − value − k)", down, Kind.LENGTH, SOURCE);
        int signalUp = first(points.stream().map(Point::up).toList(), limit);
        int signalDown = first(points.stream().map(Point::down).toList(), limit);
        boolean upFirst = signalUp > 0 && (signalDown == 0 || signalUp <= signalDown);
        int signal = upFirst ? signalUp : signalDown;
        int began = began(points.stream().map(upFirst ? Point::up : Point::down).toList(), signal);
        double h = limit / deviation;
        double k = slack / deviation;
        boolean judged = h <= MOST_DEVIATIONS;
        Series.cautions(w, LENGTHS, c.target() == null || c.deviation() == null);
        return Outcome.ok(w.worked(new Result(
                target,
                slack,
                limit,
                signalUp,
                signalDown,
                began,
                judged ? RunLength.cusum(k, h, 0) : null,
                judged ? RunLength.cusum(k, h, c.shift()) : null,
                points,
                signal == 0
                        ? Series.STILL
                        : "Shifted " + (upFirst ? "up" : "down") + ": it shows at job " + signal
                                + " and probably began with job " + began + ". What changed then?")));
    }

    private static int first(List<Double> sums, double limit) {
        for (int i = 0; i < sums.size(); i++) {
            if (sums.get(i) > limit) {
                return i + 1;
            }
        }
        return 0;
    }

    private static int began(List<Double> sums, int signal) {
        int began = signal;
        while (began > 1 && sums.get(began - 2) > 0) {
            began--;
        }
        return began;
    }
}
