package shimwright.mechanics.study;

import java.util.List;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import shimwright.mechanics.measure.RangeConstants;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.study.CrossedStudy.Squares;
import shimwright.mechanics.study.CrossedStudy.Term;
import shimwright.mechanics.working.Working;

/** Analysis of variance, all effects random. */
record VarianceComponents(GaugeStudy.Case c, Working w) {
    GaugeStudy.Result result() {
        CrossedStudy study = CrossedStudy.of(c.rounds());
        int p = study.p();
        int r = study.r();
        Squares squares = study.squares();
        boolean several = study.o() > 1;
        boolean pooled = several && squares.interaction().chance(squares.repeats()) > c.pooling();
        Term repeats = pooled ? squares.interaction().with(squares.repeats()) : squares.repeats();
        Term below = several && !pooled ? squares.interaction() : repeats;
        double ev2 = repeats.mean();
        double ev = w.line("repeatability", "√ mean square of repeats", Math.sqrt(ev2), Kind.LENGTH, GaugeStudy.MSA);
        double cross = several && !pooled ? component("persons with parts", squares.interaction(), repeats, r) : 0;
        double av = several ? component("persons", squares.persons(), below, p * r) : 0;
        double pv = component("parts", squares.parts(), below, study.o() * r);
        double grr = w.line(
                "gauge",
                "√(repeatability² + persons² + interaction²)",
                Math.hypot(ev, Math.hypot(av, cross)),
                Kind.LENGTH);
        double tv = w.line("all", "√(gauge² + parts²)", Math.hypot(grr, pv), Kind.LENGTH);
        if (!several) {
            w.caution("One person: what another hand or another day would add is not in this.");
        }
        double nu = freedom(squares, repeats, below, cross, av, p, r, grr);
        Double tolerance = c.tolerance();
        Double toleranceShare = tolerance == null ? null : c.deviations() * grr / tolerance;
        double share = tv == 0 ? 0 : grr / tv;
        double limit = RangeConstants.upperRange(r) * study.meanRange();
        return new GaugeStudy.Result(
                ev,
                several ? av : null,
                several && !pooled ? cross : null,
                grr,
                pv,
                tv,
                share,
                grr == 0 ? Double.POSITIVE_INFINITY : AverageAndRange.CATEGORIES * pv / grr,
                toleranceShare,
                grr == 0 ? 0.0 : grr * Math.sqrt(nu / quantile(nu, (1 + c.confidence()) / 2)),
                grr == 0 ? 0.0 : grr * Math.sqrt(nu / quantile(nu, (1 - c.confidence()) / 2)),
                nu,
                limit,
                AverageAndRange.over(study, limit),
                pooled,
                table(squares, repeats, below, several, pooled),
                toleranceShare == null
                        ? GaugeStudy.advice(share, "all that was seen")
                        : GaugeStudy.advice(toleranceShare, "the tolerance"));
    }

    private static List<GaugeStudy.Result.Row> table(
            Squares squares, Term repeats, Term below, boolean several, boolean pooled) {
        if (!several) {
            return List.of(squares.parts().against(repeats), repeats.plain());
        }
        GaugeStudy.Result.Row parts = squares.parts().against(below);
        GaugeStudy.Result.Row persons = squares.persons().against(below);
        GaugeStudy.Result.Row cross = squares.interaction().against(squares.repeats());
        return pooled
                ? List.of(
                        parts,
                        persons,
                        cross,
                        squares.repeats().plain(),
                        new Term("repeats, interaction pooled", repeats.freedom(), repeats.sum()).plain())
                : List.of(parts, persons, cross, squares.repeats().plain());
    }

    /** Standard deviation of an effect: √((MS − MS below)/count), 0 where negative. */
    private double component(String name, Term term, Term below, int count) {
        double variance = (term.mean() - below.mean()) / count;
        if (variance < 0) {
            w.caution("The variance of " + name + " came out negative: taken as 0.");
        }
        return w.line(
                name,
                "√((mean square − mean square of what lies below it) / " + count + ")",
                Math.sqrt(Math.max(0, variance)),
                Kind.LENGTH,
                GaugeStudy.MSA);
    }

    /** Satterthwaite: GRR² as a sum of c·MS has (GRR²)²/Σ((c·MS)²/ν) degrees of freedom. */
    private static double freedom(
            Squares squares, Term repeats, Term below, double cross, double av, int p, int r, double grr) {
        boolean hasCross = cross > 0;
        double ofPersons = av > 0 ? 1.0 / (p * r) : 0;
        double ofCross = hasCross ? 1.0 / r : 0;
        boolean crossBelow = !below.equals(repeats);
        double onCross = ofCross - (crossBelow ? ofPersons : 0);
        double onRepeats = 1 - ofCross - (crossBelow ? 0 : ofPersons);
        double sum = part(ofPersons, squares.persons())
                + (crossBelow ? part(onCross, squares.interaction()) : 0)
                + part(onRepeats, repeats);
        return sum == 0 ? repeats.freedom() : Math.pow(grr, 4) / sum;
    }

    private static double part(double c, Term term) {
        return term.freedom() == 0 ? 0 : Math.pow(c * term.mean(), 2) / term.freedom();
    }

    private static double quantile(double nu, double p) {
        return new ChiSquaredDistribution(nu).inverseCumulativeProbability(p);
    }
}
