package shimwright.mechanics.published;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.chart.Individuals;
import shimwright.mechanics.measure.Distribution;
import shimwright.mechanics.measure.DrawSummary;
import shimwright.mechanics.measure.Interval;
import shimwright.mechanics.measure.MonteCarlo;
import shimwright.mechanics.measure.RangeConstants;
import shimwright.mechanics.measure.RectangularSum;
import shimwright.mechanics.measure.Sampling;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.study.GaugeStudy;
import shimwright.mechanics.study.ToleranceLoop;
import shimwright.mechanics.worksheet.Answer;
import shimwright.mechanics.worksheet.Worksheet;

/** Rows of metrology.csv on drawing, gauge studies, loops, charts and lives; sheets are asked in mm for plain numbers. */
final class StatisticsBindings {
    /** JCGM 101:2008 9.2 to 9.5; 2 million draws keep chance well inside half a printed digit. */
    private static final int DRAWS = 2_000_000;

    private StatisticsBindings() {}

    static void addTo(Bindings checks) {
        monteCarlo(checks);
        gauges(checks);
        loops(checks);
        charts(checks);
        lives(checks);
    }

    private static void monteCarlo(Bindings checks) {
        checks.bind(
                        "MC-03",
                        r -> new RectangularSum(Math.sqrt(3), Math.sqrt(3), Math.sqrt(3), Math.sqrt(3)).halfWidth(0.95))
                .bind("MC-04", r -> {
                    double a = Math.sqrt(3);
                    DrawSummary sum = sum(List.of(a, a, a, 10 * a), Sampling.of(DRAWS, 1));
                    return sum.symmetric().length() / 2;
                })
                .bind("MC-08", r -> gaugeBlock(r).u())
                .bind("MC-09", r -> gaugeBlock(r).shortest().low())
                .bind("MC-10", r -> gaugeBlock(r).shortest().high())
                .bind("MC-13", r -> {
                    Distribution x = new Distribution.Normal(0.005);
                    return 1e6
                            * first(MonteCarlo.run(
                                            List.of(x, x),
                                            1,
                                            (d, y) -> {
                                                y[0] = d[0] * d[0] + d[1] * d[1];
                                                return true;
                                            },
                                            Sampling.of(DRAWS, 1)))
                                    .mean();
                })
                .bind(
                        "MC-18",
                        r -> Interval.shortest(
                                        r.numbers("y").stream()
                                                .mapToDouble(y -> y)
                                                .sorted()
                                                .toArray(),
                                        r.number("p"))
                                .length())
                .bind("MC-19", r -> 1 - new RectangularSum(0.5, 0.5, 0.5).cumulative(r.number("limit") - 1.5));
    }

    private static DrawSummary first(MonteCarlo.Run run) {
        return requireNonNull(run.results().get(0));
    }

    private static DrawSummary sum(List<Double> halfWidths, Sampling sampling) {
        List<Distribution> inputs = halfWidths.stream()
                .<Distribution>map(Distribution.Rectangular::new)
                .toList();
        return first(MonteCarlo.run(
                inputs,
                1,
                (x, y) -> {
                    y[0] = Arrays.stream(x).sum();
                    return true;
                },
                sampling));
    }

    /** JCGM 101:2008 9.5, deviation from the nominal length in nm: δL = L − Lnom. */
    private static DrawSummary gaugeBlock(PublishedRow r) {
        List<Distribution> inputs = List.of(
                new Distribution.ScaledT(25, 18),
                new Distribution.ScaledT(6, 24),
                new Distribution.ScaledT(4, 5),
                new Distribution.ScaledT(7, 8),
                new Distribution.Rectangular(2e-6),
                new Distribution.Normal(0.2),
                new Distribution.Cyclic(0.5),
                new Distribution.RoughRectangular(1e-6, 0.1e-6),
                new Distribution.RoughRectangular(0.050, 0.025));
        double nominal = r.number("L_nom");
        MonteCarlo.Model model = (x, y) -> {
            double standard = 50_000_623 + x[0];
            double difference = 215 + x[1] + x[2] + x[3];
            double theta = -0.1 + x[5] + x[6];
            double expansion = 11.5e-6 + x[4];
            y[0] = (standard * (1 + expansion * (theta - x[8])) + difference) / (1 + (expansion + x[7]) * theta)
                    - nominal;
            return true;
        };
        return first(MonteCarlo.run(inputs, 1, model, Sampling.of(DRAWS, 1).covering(0.99)));
    }

    private static void gauges(Bindings checks) {
        String ranges = "average and range";
        checks.bind("GRR-04", r -> 1e3 * value(aiag(ranges).rangeLimit()))
                .bind("GRR-05", r -> 1e3 * aiag(ranges).repeatability())
                .bind("GRR-06", r -> 1e3 * value(aiag(ranges).reproducibility()))
                .bind("GRR-07", r -> 1e3 * aiag(ranges).gauge())
                .bind("GRR-08", r -> 1e3 * value(aiag(ranges).parts()))
                .bind("GRR-09", r -> 1e3 * value(aiag(ranges).total()))
                .bind("GRR-11", r -> value(aiag(ranges).categories()))
                .bind("GRR-12", r -> 1e6 * aiag("anova").table().get(0).squares())
                .bind("GRR-14", r -> 1e6 * aiag("anova").table().get(2).squares())
                .bind("GRR-18", r -> 1e6 * Math.pow(value(aiag("anova").reproducibility()), 2))
                .bind("GRR-21", r -> 1e3 * aiag("anova").gauge())
                .bind("GRR-22", r -> 100 * value(aiag("anova").gaugeShare()))
                .bind("GRR-23", r -> value(aiag("anova").categories()))
                .bind("GRR-25", r -> level(days(r, 1), 1))
                .bind("GRR-26", r -> level(days(r, 1) + ";" + days(r, 2), 1))
                .bind("GRR-27", r -> level(days(r, 1) + ";" + days(r, 2), 2))
                .bind("CON-d2-.*", r -> RangeConstants.d2((int) r.number("n")))
                .bind("CON-d2s-10", r -> RangeConstants.d2Star((int) r.number("m"), (int) r.number("g")))
                .bind("CON-D4-2", r -> RangeConstants.upperRange((int) r.number("n")))
                .bind("CON-E2-2", r -> 3 / RangeConstants.d2((int) r.number("n")));
    }

    private static double value(@Nullable Double value) {
        return requireNonNull(value);
    }

    private static <R extends Record> R ask(Worksheet<?, R> sheet, Map<String, String> given) {
        Answer answer = sheet.answer(given, UnitSystem.METRIC).orElseThrow();
        return sheet.resultType().cast(answer.result());
    }

    private static GaugeStudy.Result aiag(String form) {
        return ask(GaugeStudy.SHEET, Map.of("rounds", AiagData.ROUNDS, "form", form));
    }

    /** Six readings a day that have the printed mean and standard deviation. */
    private static String days(PublishedRow r, int run) {
        List<Double> means = r.numbers("run" + run + " day means");
        List<Double> deviations = r.numbers("run" + run + " s");
        List<String> days = new ArrayList<>();
        for (int i = 0; i < means.size(); i++) {
            double away = deviations.get(i) * Math.sqrt(5.0 / 6);
            String pair = (means.get(i) - away) + " " + (means.get(i) + away);
            days.add("run " + run + ": " + String.join(" ", Collections.nCopies(3, pair)));
        }
        return String.join("; ", days);
    }

    private static double level(String rounds, int row) {
        GaugeStudy.Result result = ask(GaugeStudy.SHEET, Map.of("rounds", rounds, "form", "nested"));
        return 1e3 * Math.sqrt(result.table().get(row).meanSquare());
    }

    private static void loops(Bindings checks) {
        checks.bind("STK-01", r -> inches(loop(r, "normal", Map.of()).nominal()))
                .bind("STK-03", r -> inches(loop(r, "normal", Map.of()).squares()))
                .bind(
                        "STK-05",
                        r -> value(
                                loop(r, "normal", Map.of("wanted", "0.015 in")).scaleSquares()))
                .bind(
                        "STK-06",
                        r -> value(loop(r, "normal", Map.of("least", "0.0099 in", "most", "0.0299 in"))
                                .outsideNormal()))
                .bind("STK-07", r -> inches(loop(r, "rectangular", Map.of()).deviation()));
    }

    private static double inches(double si) {
        return si / 0.0254;
    }

    /** The loop of STK-01, which STK-05 names; A, C and G must stay. */
    private static ToleranceLoop.Result loop(PublishedRow r, String shape, Map<String, String> more) {
        String stack = r.inputs().contains("A=")
                ? r.inputs()
                : "A=-0.0505+-0.0015 in; B=+8.000+-0.008 in; C=-0.5093+-0.0025 in; D=+0.400+-0.002 in;"
                        + " E=-7.711+-0.006 in; F=+0.400+-0.002 in; G=-0.5093+-0.0025 in";
        List<String> links = new ArrayList<>();
        Matcher matcher =
                Pattern.compile("([A-G])=([-+])([0-9.]+)\\+-([0-9.]+)").matcher(stack);
        while (matcher.find()) {
            String kept = "ACG".contains(matcher.group(1)) ? "yes" : "no";
            links.add(matcher.group(1) + ": " + matcher.group(3) + " in: " + matcher.group(4) + " in: "
                    + matcher.group(2) + "1: " + shape + ": : : " + kept);
        }
        Map<String, String> given = new HashMap<>(more);
        given.put("links", String.join("; ", links));
        return ask(ToleranceLoop.SHEET, given);
    }

    private static void charts(Bindings checks) {
        checks.bind("SPC-13", r -> {
            Individuals.Result chart = ask(Individuals.SHEET, Map.of("values", r.text("x")));
            return 1e3 * (chart.nextHigh() - chart.nextLow()) / 2;
        });
    }

    /** The example has ten more that had not failed at 500 h. */
    private static void lives(Bindings checks) {
        checks.bind("WEI-01", r -> nist(r, "shape"))
                .bind("WEI-02", r -> nist(r, "scale"))
                .bind("WEI-04", r -> nist(r, "akaike"))
                .bind("WEI-05", r -> nist(r, "mean"))
                .bind("WEI-07", r -> nist(r, "life"));
    }

    private static double nist(PublishedRow r, String result) {
        Map<String, String> given =
                Map.of("failures", r.text("failures").replace(" h", ""), "unfailed", "500 ".repeat(10));
        return SheetAnswers.number("weibull", given, result);
    }
}
