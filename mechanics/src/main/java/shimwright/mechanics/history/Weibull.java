package shimwright.mechanics.history;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.measure.Interval;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code weibull}: lives of parts, failed and unfailed. */
public final class Weibull {
    private static final String NIST = "NIST/SEMATECH e-Handbook 8.4.1.3";
    private static final int FEW = 10;
    private static final double SCALE_SHARE = -Math.expm1(-1);

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
                    "weibull",
                    "Lives of parts",
                    "How long parts live, from those that failed and those that have not yet.",
                    List.of(NIST, "likelihood-ratio bounds: any reliability text"),
                    Case.class,
                    Result.class,
                    Weibull::work)
            .drawn(HistoryPictures::weibull)
            .drawnWhenAsked();

    private Weibull() {}

    /** Lives in one unit throughout. */
    public record Case(
            @Input(
                    meaning = "lives of those that failed, all in one unit: km, hours or months",
                    min = 1e-6,
                    max = 1e9,
                    fewest = 0,
                    most = 300,
                    example = "41000 58000 63000 87000 91000")
            List<Double> failures,

            @Input(
                    meaning = "lives so far of those that have not failed",
                    min = 1e-6,
                    max = 1e9,
                    fewest = 0,
                    most = 300,
                    example = "30000 70000 95000 110000")
            List<Double> unfailed,

            @Input(meaning = "share whose life is asked for", orElse = "10 %", min = 1e-4, max = 0.99, unit = "%")
            double share,

            @Input(meaning = "confidence of the bounds", orElse = "90 %", min = 0.5, max = 0.999, unit = "%")
            double confidence,

            @Input(meaning = "shape known from elsewhere, where failures are too few", min = 0.1, max = 20) @Nullable
            Double knownShape) {
        public Case {
            failures = List.copyOf(failures);
            unfailed = List.copyOf(unfailed);
        }
    }

    /** Lives in the unit of the inputs; absent where the data do not give it. */
    public record Result(
            @Output(meaning = "shape; below 1 early failures, above 1 wear", decimals = 3)
            double shape,

            @Output(meaning = "shape, at least", decimals = 3) @Nullable
            Double shapeLow,

            @Output(meaning = "shape, at most", decimals = 3, infinite = "no limit") @Nullable
            Double shapeHigh,

            @Output(meaning = "characteristic life, 63 % failed", decimals = 1) @Nullable
            Double scale,

            @Output(meaning = "characteristic life, at least", decimals = 1)
            double scaleLow,

            @Output(meaning = "characteristic life, at most", decimals = 1, infinite = "no limit") @Nullable
            Double scaleHigh,

            @Output(meaning = "life that the share asked for does not reach", decimals = 1) @Nullable
            Double life,

            @Output(meaning = "that life, at least", decimals = 1)
            double lifeLow,

            @Output(meaning = "that life, at most", decimals = 1, infinite = "no limit") @Nullable
            Double lifeHigh,

            @Output(meaning = "mean life", decimals = 1) @Nullable
            Double mean,

            @Output(meaning = "log-likelihood", decimals = 3) @Nullable
            Double logLikelihood,

            @Output(meaning = "Akaike criterion", decimals = 2) @Nullable
            Double akaike,

            @Output(meaning = "advice") String advice) {}

    /**
     * Maximum likelihood with right censoring: Σt^b ln t/Σt^b − 1/b − mean ln(failures) = 0, scale (Σt^b/r)^(1/b);
     * likelihood-ratio bounds; with a known shape an exact lower bound, which no failure needs.
     *
     * @param c lives above 0
     * @return refused: nothing given, fewer than two failures without a known shape, failures all alike, a shape beyond
     *     0.02 to 500
     */
    public static Outcome<Worked<Result>> work(Case c) {
        Double known = c.knownShape();
        List<Refusal> faults = faults(c, known);
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        WeibullFit fit = new WeibullFit(c.failures(), c.unfailed());
        Working w = new Working();
        if (c.failures().size() < FEW) {
            w.caution("Few failures: a fitted shape tends to come out too high, and the bounds are wide.");
        }
        w.caution("One cause of failure at a time; keep parts fitted wrongly or run dry out of it.");
        if (known != null) {
            return Outcome.ok(w.worked(withKnown(c, fit, known, w)));
        }
        OptionalDouble found = fit.shape();
        if (found.isEmpty()) {
            return Outcome.refused(Refusal.of(
                    "failures",
                    "the lives stand so close together, or so far apart, that no shape fits",
                    "Check the unit of each, or give knownShape"));
        }
        return Outcome.ok(w.worked(fitted(c, fit, found.getAsDouble(), w)));
    }

    private static List<Refusal> faults(Case c, @Nullable Double known) {
        List<Refusal> faults = new ArrayList<>();
        if (c.failures().isEmpty() && c.unfailed().isEmpty()) {
            faults.add(Refusal.of("failures", "no life given", "Give lives of failed and unfailed parts"));
        } else if (known == null && c.failures().isEmpty()) {
            faults.add(Refusal.of(
                    "failures", "nothing has failed", "Give knownShape, such as 1.5, for a lower bound of the life"));
        } else if (known == null && c.failures().size() < 2) {
            faults.add(Refusal.of("failures", "one failure", "Give two or more, or knownShape, such as 1.5"));
        } else if (known == null && WeibullFit.allAlike(c.failures(), c.unfailed())) {
            faults.add(Refusal.of(
                    "failures", "all failed at the same life and nothing outlived them", "Give the lives more finely"));
        }
        return faults;
    }

    private static Result fitted(Case c, WeibullFit fit, double shape, Working w) {
        w.line("shape b", "Σt^b ln t/Σt^b − 1/b − mean ln(failures) = 0", shape, Kind.NUMBER, NIST);
        double scale = w.line("characteristic life", "(Σt^b / failures)^(1/b)", fit.scale(shape), Kind.NUMBER, NIST);
        double life = w.line(
                "life of the share",
                "characteristic life × (−ln(1 − share))^(1/b)",
                WeibullFit.quantile(shape, scale, c.share()),
                Kind.NUMBER,
                NIST);
        double mean = w.line(
                "mean life", "characteristic life × Γ(1 + 1/b)", WeibullFit.mean(shape, scale), Kind.NUMBER, NIST);
        double log = w.line("log-likelihood", "", fit.logLikelihood(shape, scale), Kind.NUMBER, NIST);
        Interval shapes = fit.shapeBounds(shape, c.confidence());
        Interval scales = fit.quantileBounds(shape, SCALE_SHARE, c.confidence());
        Interval lives = fit.quantileBounds(shape, c.share(), c.confidence());
        return new Result(
                shape,
                shapes.low(),
                shapes.high(),
                scale,
                scales.low(),
                scales.high(),
                life,
                lives.low(),
                lives.high(),
                mean,
                log,
                4 - 2 * log,
                advice(shapes));
    }

    private static String advice(Interval shapes) {
        if (shapes.low() > 1) {
            return "They wear out: replacing in time pays.";
        }
        return shapes.high() < 1
                ? "They fail early: look at fitting and supply, replacing in time does not help."
                : "These lives do not say whether they wear out or fail early.";
    }

    private static Result withKnown(Case c, WeibullFit fit, double shape, Working w) {
        double least = w.line(
                "characteristic life, at least",
                "(2 Σt^b / χ²(confidence; 2 × failures + 2))^(1/b)",
                fit.leastScale(shape, c.confidence()),
                Kind.NUMBER,
                "exponential lives after t^b; for no failure (Σt^b / −ln(1 − confidence))^(1/b)");
        double lifeLow = WeibullFit.quantile(shape, least, c.share());
        Double scale = c.failures().isEmpty() ? null : fit.scale(shape);
        w.caution("The shape is taken as known: the bounds hold only as far as it does.");
        return new Result(
                shape,
                null,
                null,
                scale,
                least,
                null,
                scale == null ? null : WeibullFit.quantile(shape, scale, c.share()),
                lifeLow,
                null,
                scale == null ? null : WeibullFit.mean(shape, scale),
                scale == null ? null : fit.logLikelihood(shape, scale),
                null,
                "The life is at least this, with the confidence asked for and the shape taken as known.");
    }
}
