package shimwright.mechanics.study;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.conformity.Conformity;
import shimwright.mechanics.conformity.Limits;
import shimwright.mechanics.measure.Distribution;
import shimwright.mechanics.measure.DrawSummary;
import shimwright.mechanics.measure.MonteCarlo;
import shimwright.mechanics.measure.RectangularSum;
import shimwright.mechanics.measure.Sampling;
import shimwright.mechanics.study.ToleranceLoop.Case;
import shimwright.mechanics.study.ToleranceLoop.Case.Link;
import shimwright.mechanics.study.ToleranceLoop.Case.Spread;

/** How the gap of a loop is spread: its standard deviation, its draws, and the exact share outside where there is one. */
final class LoopDraws {
    private static final double THREE_SIGMA = 0.9973;

    private LoopDraws() {}

    static Distribution distribution(Link link) {
        double half = link.half();
        return switch (link.shape()) {
            case NORMAL -> new Distribution.Normal(half / 3);
            case RECTANGULAR -> new Distribution.Rectangular(half);
            case TRIANGULAR -> new Distribution.Triangular(half);
            case U_SHAPED -> new Distribution.Cyclic(half);
        };
    }

    static double deviation(Case c) {
        return c.links().stream()
                .mapToDouble(link -> link.sensitivity() * distribution(link).deviation())
                .reduce(0, Math::hypot);
    }

    /** Ends of 99.73 %, means shifted outwards, and the share outside the limits, the worse way. */
    static double[] draws(Case c, double middle, double shifts) {
        List<Distribution> inputs =
                c.links().stream().map(LoopDraws::distribution).toList();
        double[] slopes = c.links().stream().mapToDouble(Link::sensitivity).toArray();
        Limits limits = new Limits(c.least(), c.most());
        MonteCarlo.Run run = MonteCarlo.run(
                inputs,
                3,
                (x, y) -> {
                    double gap = middle;
                    for (int i = 0; i < x.length; i++) {
                        gap += slopes[i] * x[i];
                    }
                    y[0] = gap;
                    y[1] = limits.hold(gap - shifts) ? 0 : 1;
                    y[2] = limits.hold(gap + shifts) ? 0 : 1;
                    return true;
                },
                Sampling.of(c.draws(), c.seed()).covering(THREE_SIGMA));
        DrawSummary gap = Objects.requireNonNull(run.results().get(0));
        double low = Objects.requireNonNull(run.results().get(1)).mean();
        double high = Objects.requireNonNull(run.results().get(2)).mean();
        return new double[] {gap.symmetric().low() - shifts, gap.symmetric().high() + shifts, Math.max(low, high)};
    }

    static double outsideNormal(double middle, double deviation, double shifts, Limits limits) {
        double up = Conformity.probability(middle + shifts, deviation, Double.POSITIVE_INFINITY, limits);
        double down = Conformity.probability(middle - shifts, deviation, Double.POSITIVE_INFINITY, limits);
        return 1 - Math.min(up, down);
    }

    static @Nullable Double exact(Case c, double middle, Limits limits) {
        double[] halves = c.links().stream()
                .mapToDouble(ToleranceLoop::part)
                .filter(half -> half > 0)
                .toArray();
        double wide = c.links().stream().mapToDouble(ToleranceLoop::part).max().orElse(0);
        boolean alike = c.links().stream()
                .filter(link -> ToleranceLoop.part(link) > 0)
                .allMatch(link -> link.shape() == Spread.RECTANGULAR && ToleranceLoop.part(link) > wide / 100);
        if (!alike || halves.length > RectangularSum.MOST) {
            return null;
        }
        RectangularSum sum = new RectangularSum(halves);
        return sum.cumulative(limits.low() - middle) + sum.cumulative(middle - limits.high());
    }
}
