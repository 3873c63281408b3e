package shimwright.mechanics.study;

import java.util.ArrayList;
import java.util.List;
import shimwright.mechanics.measure.RangeConstants;
import shimwright.mechanics.measure.Statistics;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Working;

/** Average and range. */
record AverageAndRange(GaugeStudy.Case c, Working w) {
    static final double CATEGORIES = 1.41;
    private static final int MANY = 15;

    GaugeStudy.Result result() {
        CrossedStudy study = CrossedStudy.of(c.rounds());
        double meanRange = w.line("mean range of repeats", "mean", study.meanRange(), Kind.LENGTH);
        int ranges = study.o() * study.p();
        double d2 = ranges > MANY ? RangeConstants.d2(study.r()) : RangeConstants.d2Star(study.r(), ranges);
        double ev = w.line("EV", "mean range × K1", meanRange * factor(d2), Kind.LENGTH, GaugeStudy.MSA);
        double av = reproducibility(study, ev);
        double grr = w.line("GRR", "√(EV² + AV²)", Math.hypot(ev, av), Kind.LENGTH, GaugeStudy.MSA);
        List<Double> means = new ArrayList<>();
        for (int part = 0; part < study.p(); part++) {
            means.add(study.partMean(part));
        }
        double pv = w.line(
                "PV",
                "range of part means × K3",
                Statistics.range(means) * factor(RangeConstants.d2Star(study.p(), 1)),
                Kind.LENGTH,
                GaugeStudy.MSA);
        double tv = w.line("TV", "√(GRR² + PV²)", Math.hypot(grr, pv), Kind.LENGTH, GaugeStudy.MSA);
        Double tolerance = c.tolerance();
        Double toleranceShare = tolerance == null ? null : c.deviations() * grr / tolerance;
        double share = tv == 0 ? 0 : grr / tv;
        double limit = w.line(
                "limit of ranges", "D4 × mean range", RangeConstants.upperRange(study.r()) * meanRange, Kind.LENGTH);
        return new GaugeStudy.Result(
                ev,
                study.o() > 1 ? av : null,
                null,
                grr,
                pv,
                tv,
                share,
                grr == 0 ? Double.POSITIVE_INFINITY : CATEGORIES * pv / grr,
                toleranceShare,
                null,
                null,
                null,
                limit,
                over(study, limit),
                false,
                List.of(),
                toleranceShare == null
                        ? GaugeStudy.advice(share, "all that was seen")
                        : GaugeStudy.advice(toleranceShare, "the tolerance"));
    }

    /** K = 1/d₂*, to the four decimals that the manual prints, so that a study worked out by hand agrees. */
    private static double factor(double d2) {
        return Math.rint(1e4 / d2) / 1e4;
    }

    private double reproducibility(CrossedStudy study, double ev) {
        if (study.o() == 1) {
            w.caution("One person: what another hand or another day would add is not in this.");
            return 0;
        }
        List<Double> means = new ArrayList<>();
        for (int person = 0; person < study.o(); person++) {
            means.add(study.personMean(person));
        }
        double wide = Statistics.range(means) * factor(RangeConstants.d2Star(study.o(), 1));
        double square = wide * wide - ev * ev / (study.p() * study.r());
        if (square < 0) {
            w.caution("Between persons there is no more than the repeats explain: taken as 0.");
        }
        return w.line(
                "AV",
                "√((range of persons' means × K2)² − EV²/(parts × repeats))",
                Math.sqrt(Math.max(0, square)),
                Kind.LENGTH,
                GaugeStudy.MSA);
    }

    static List<String> over(CrossedStudy study, double limit) {
        List<String> over = new ArrayList<>();
        for (int i = 0; i < study.o(); i++) {
            for (int j = 0; j < study.p(); j++) {
                if (study.range(i, j) > limit * (1 + 1e-9)) {
                    over.add(study.persons().get(i) + ", part " + (j + 1));
                }
            }
        }
        return over;
    }
}
