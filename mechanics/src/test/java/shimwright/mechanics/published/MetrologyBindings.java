package shimwright.mechanics.published;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import shimwright.mechanics.axial.reading.EndPlay;
import shimwright.mechanics.conformity.Conformity;
import shimwright.mechanics.conformity.Limits;
import shimwright.mechanics.measure.Budget;
import shimwright.mechanics.measure.Combination;
import shimwright.mechanics.measure.Contribution;
import shimwright.mechanics.measure.Outliers;
import shimwright.mechanics.measure.Statistics;
import shimwright.mechanics.measure.Student;
import shimwright.mechanics.measure.Trend;
import shimwright.mechanics.measure.Uncertainties;
import shimwright.mechanics.measure.VonNeumann;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.worksheet.Answer;

/** Rows of metrology.csv that concern measuring and deciding. */
final class MetrologyBindings {
    private static final double INF = Double.POSITIVE_INFINITY;

    private MetrologyBindings() {}

    static void addTo(Bindings checks) {
        typeAAndB(checks);
        endGauge(checks);
        correlated(checks);
        conformity(checks);
        statistics(checks);
        axial(checks);
    }

    private static void typeAAndB(Bindings checks) {
        checks.bind("GUM-B01", r -> Uncertainties.rectangular(r.number("a")))
                .bind(
                        "GUM-B03",
                        r -> Budget.of(List.of(
                                        Contribution.of("A", r.number("uA"), INF),
                                        Contribution.of("B", r.number("uB"), INF)))
                                .u())
                .bind("GUM-B04", r -> Uncertainties.triangular(r.number("a")))
                .bind("GUM-B06", r -> Uncertainties.cyclic(r.number("amplitude")))
                .bind("GUM-B07", r -> 1e3 * Uncertainties.step(r.number("step")))
                .bind("GUM-B08", r -> Uncertainties.betweenBounds(r.number("b_minus"), r.number("b_plus")))
                .bind("GUM-A01", r -> Statistics.mean(r.numbers("t")))
                .bind(
                        "GUM-A03",
                        r -> Uncertainties.ofMean(
                                Statistics.deviation(r.numbers("t")),
                                r.numbers("t").size()))
                .bind("GUM-A04", r -> Uncertainties.ofMean(r.number("s_pooled"), (int) r.number("readings now")))
                .bind("GUM-A0[567]", r -> 100 * Statistics.relativeUncertaintyOfDeviation((int) r.number("n")))
                .bind("GUM-T10", r -> Student.quantile(r.number("p_one_sided"), r.number("nu")))
                .bind("GUM-T0.", r -> Student.coverageFactor(r.number("p"), r.number("nu")))
                .bind("MC-05", r -> Math.sqrt(sds(r).map(s -> s * s).sum()))
                .bind(
                        "MC-06",
                        r -> r.number("k")
                                * Budget.of(sds(r).mapToObj(s -> Contribution.of("X", s, INF))
                                                .toList())
                                        .u())
                .bind("MC-11", r -> interval(r, -1))
                .bind("MC-12", r -> interval(r, 1))
                .bind("MC-17", r -> Uncertainties.ofScaledT(r.number("scale"), r.number("nu")))
                .bind("BUD-01", r -> budget(r).u())
                .bind(
                        "BUD-02",
                        r -> budget(r.with("readings=5; s=4 um; step=10 um; MPE=5 um; retrace=3 um"))
                                .nu())
                .bind("BUD-03", r -> {
                    double one = Uncertainties.rectangular(r.number("a"));
                    return 1e3
                            * Budget.of(Collections.nCopies((int) r.number("shims"), Contribution.of("shim", one, INF)))
                                    .u();
                })
                .bind("BUD-06", r -> Uncertainties.stepTwice(r.number("step")));
    }

    private static DoubleStream sds(PublishedRow r) {
        return DoubleStream.of(r.number("sd1"), r.number("sd2"), r.number("sd3"), r.number("sd4"));
    }

    private static double interval(PublishedRow r, int side) {
        return r.number("y") + side * Student.coverageFactor(0.99, r.number("nu_eff")) * r.number("u");
    }

    private static Budget budget(PublishedRow r) {
        int n = (int) r.number("readings");
        return Budget.of(List.of(
                Contribution.of("repeat", Uncertainties.ofMean(r.number("s"), n), n - 1),
                Contribution.of("step", Uncertainties.stepTwice(r.number("step")), INF),
                Contribution.of("error limit", Uncertainties.rectangular(r.number("MPE")), INF),
                Contribution.of("retrace", Uncertainties.rectangular(r.number("retrace")), INF)));
    }

    /** JCGM 100:2008 H.1 in nm and K: l = Ls + d − Ls(δα·θ + αs·δθ). */
    private static double endGaugeLength(double[] x) {
        return x[0] + x[1] - x[0] * (x[2] * x[3] + x[4] * x[5]);
    }

    private static double endGauge(PublishedRow r, boolean second) {
        List<Double> all = r.all();
        double[] x = new double[6];
        double[] u = new double[6];
        for (int i = 0; i < 6; i++) {
            x[i] = all.get(2 * i);
            u[i] = all.get(2 * i + 1);
        }
        return second
                ? Combination.secondOrder(MetrologyBindings::endGaugeLength, x, u)
                : Combination.firstOrder(MetrologyBindings::endGaugeLength, x, u);
    }

    private static void endGauge(Bindings checks) {
        checks.bind(
                        "GUM-H102",
                        r -> Budget.degreesOfFreedom(
                                r.number("u_c"),
                                List.of(
                                        Contribution.of("1", r.number("u1"), r.number("nu1")),
                                        Contribution.of("2", r.number("u2"), r.number("nu2")),
                                        Contribution.of("3", r.number("u3"), r.number("nu3")))))
                .bind("GUM-H103", r -> Uncertainties.degreesOfFreedom(r.number("relative uncertainty")))
                .bind("GUM-H105", r -> {
                    double c = r.number("L") * r.number("theta");
                    return Contribution.of("expansion", r.number("u(delta alpha)"), c, INF)
                            .part();
                })
                .bind("GUM-H107", r -> endGauge(r.with(r.inputs().replace("1/K", "")), false))
                .bind("GUM-H108", r -> endGauge(r.with(r.inputs().replace("1/K", "")), true))
                .bind(
                        "GUM-H109",
                        r -> 1e-6
                                * endGaugeLength(
                                        new double[] {1e6 * r.number("L_s"), r.number("d"), 0, -0.1, 11.5e-6, 0}))
                .bind("GUM-H112", r -> Student.coverageFactor(r.number("p"), r.number("nu_eff")) * r.number("u_c"));
    }

    private static void correlated(Bindings checks) {
        checks.bind("GUM-H202", r -> impedance(r)[0])
                .bind("GUM-H203", r -> impedance(r)[1])
                .bind("GUM-H204", r -> impedance(r)[2])
                .bind("GUM-H207", r -> impedance(r)[3])
                .bind("GUM-H208", r -> Statistics.correlation(r.numbers("V"), r.numbers("I")));
    }

    /** u(R), X, Z, r(X,Z) of JCGM 100:2008 H.2 from the simultaneous readings, in V, A, rad. */
    private static double[] impedance(PublishedRow r) {
        List<List<Double>> series = List.of(
                r.numbers("V"), r.numbers("I").stream().map(i -> i / 1000).toList(), r.numbers("phi"));
        double[] u = series.stream()
                .mapToDouble(s -> Uncertainties.ofMean(Statistics.deviation(s), s.size()))
                .toArray();
        double[][] rho = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                rho[i][j] = Statistics.correlation(series.get(i), series.get(j));
            }
        }
        double v = Statistics.mean(series.get(0));
        double current = Statistics.mean(series.get(1));
        double phi = Statistics.mean(series.get(2));
        double z = v / current;
        double[] cR = {Math.cos(phi) / current, -z * Math.cos(phi) / current, -z * Math.sin(phi)};
        double[] cX = {Math.sin(phi) / current, -z * Math.sin(phi) / current, z * Math.cos(phi)};
        double[] cZ = {1 / current, -z / current, 0};
        double uX = Combination.correlated(cX, u, rho);
        double uZ = Combination.correlated(cZ, u, rho);
        double[] sum = {cX[0] + cZ[0], cX[1] + cZ[1], cX[2] + cZ[2]};
        double both = Combination.correlated(sum, u, rho);
        return new double[] {
            Combination.correlated(cR, u, rho), z * Math.sin(phi), z, (both * both - uX * uX - uZ * uZ) / (2 * uX * uZ)
        };
    }

    private static void conformity(Bindings checks) {
        checks.bind(
                        "CA-01",
                        r -> Conformity.probability(
                                r.number("y"), r.number("u"), INF, new Limits(r.number("T_L"), r.number("T_U"))))
                .bind("CA-02", r -> Conformity.probability(r.number("Cm"), r.number("y~")))
                .bind(
                        "CA-04",
                        r -> Conformity.probability(
                                r.number("y"), r.number("u"), INF, new Limits(null, r.number("T_U"))))
                .bind(
                        "CA-05",
                        r -> Conformity.probability(
                                r.number("y"), r.number("u"), INF, new Limits(r.number("T_L"), null)))
                .bind("CA-0[689]", r -> Conformity.guardBand(r.number("p_c"), 1, INF))
                .bind("CA-11", r -> 100 / (1 - Conformity.guardBand(r.number("p"), r.number("u(v)/v"), INF)))
                .bind("CA-12", r -> Conformity.probability(-r.number("z"), 1, INF, new Limits(null, 0.0)))
                .bind("CA-13", r -> Conformity.guardBand(r.number("p"), 1 / r.number("k"), INF))
                .bind("CA-15", r -> Conformity.leastCapability(r.number("p")))
                .bind("CA-2[45]", r -> {
                    List<Double> all = r.all();
                    return Conformity.probability(
                            r.number("y"),
                            r.number("u"),
                            INF,
                            new Limits(all.get(all.size() - 2), all.get(all.size() - 1)));
                })
                .bind("CA-26", r -> Conformity.largestStep(r.number("u"), r.number("p"), new Limits(0.050, 0.100)));
    }

    private static void statistics(Bindings checks) {
        checks.bind("STR-0(4|7)", r -> Statistics.mean(r.numbers("y")))
                .bind("STR-0(2|5)", r -> Statistics.deviation(r.numbers("y")))
                .bind("STR-0(3|9)", r -> Statistics.lag1(r.numbers("y")))
                .bind("STR-1[024]", r -> Statistics.deviation(alternating(r)))
                .bind("STR-1[135]", r -> Statistics.lag1(alternating(r)))
                .bind("CON-c4-5", r -> Statistics.c4((int) r.number("n")))
                .bind("TRD-0[2346]", r -> Trend.atLeast((int) r.number("n"), (int) r.number("S")))
                .bind("TRD-(09|1[01234])", r -> Trend.critical((int) r.number("n"), 0.05))
                .bind("TRD-17", r -> Trend.z(r.numbers("y")))
                .bind("TRD-(18|19|2[12])", r -> VonNeumann.quantile((int) r.number("n"), 0.05))
                .bind("OUT-01", r -> Outliers.grubbs(r.numbers("x")))
                .bind("OUT-02", r -> Outliers.grubbsCritical((int) r.number("n"), r.number("alpha"), false))
                .bind("OUT-03", r -> 1e7 * Outliers.grubbsProbability(8, Outliers.grubbs(r.numbers("x"))))
                .bind("OUT-0[567]", r -> Outliers.grubbsCritical((int) r.number("n"), r.number("alpha"), true))
                .bind("OUT-(09|1[0236])", r -> Outliers.dixonCritical((int) r.number("n"), r.number("alpha")))
                .bind("OUT-17", r -> Outliers.mostGrubbs((int) r.number("n")))
                .bind("THX-(03|04|05|08|09)", r -> 1e6 * Units.PER_FAHRENHEIT.toSi(1e-6 * r.number("alpha")));
    }

    private static List<Double> alternating(PublishedRow r) {
        List<Double> numbers = r.all();
        List<Double> y = new ArrayList<>(List.of(numbers.get(0)));
        for (int i = 0; i < numbers.get(3); i++) {
            y.addAll(Arrays.asList(numbers.get(1), numbers.get(2)));
        }
        return y;
    }

    private static void axial(Bindings checks) {
        checks.bind("DIA-08", r -> {
                    double travel = r.number("true movement");
                    return 1e3 * (EndPlay.tiltedPlungerReading(travel, Units.DEGREE.toSi(r.number("tilt"))) - travel);
                })
                .bind("THX-13", r -> {
                    Map<String, String> typed = SheetAnswers.typed("legs=case: 200 mm: 21.8e-6 ± "
                            + 1.5e-6 / Math.sqrt(3) + " 1/K: 11.3e-6 1/K; caseRise=60 K; shaftRise=60 K");
                    Answer answer = SheetAnswers.ask("growth", typed).orElseThrow();
                    return 1e6
                            * answer.budgets()
                                    .getOrDefault("change", Budget.NONE)
                                    .u();
                });
    }
}
