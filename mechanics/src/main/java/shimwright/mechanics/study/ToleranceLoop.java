package shimwright.mechanics.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.conformity.Conformity;
import shimwright.mechanics.conformity.Limits;
import shimwright.mechanics.measure.Distribution;
import shimwright.mechanics.measure.MonteCarlo;
import shimwright.mechanics.measure.RectangularSum;
import shimwright.mechanics.measure.Sampled;
import shimwright.mechanics.measure.Sampling;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.study.ToleranceLoopCase.Link;
import shimwright.mechanics.study.ToleranceLoopCase.Spread;
import shimwright.mechanics.study.ToleranceLoopResult.LinkShare;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code tolerance-loop}. */
public final class ToleranceLoop {
    private static final String CHASE = "K. W. Chase, tolerance allocation methods, ADCATS (from memory)";
    private static final double THREE_SIGMA = 0.9973;

    private ToleranceLoop() {}

    /**
     * Worst case Σ|c|T; root sum of squares Σ|c·shift| + √Σ(cT)²; draws of every link by its shape. Unequal deviations are
     * moved to their middle first.
     *
     * @param c sizes in m; a normal link has a standard deviation of T/3, a rectangular one T/√3
     * @return refused: a link that does not move the gap, deviations or limits the wrong way round, no tolerance at all, a
     *     wish that no free link can meet
     */
    public static Outcome<Worked<ToleranceLoopResult>> work(ToleranceLoopCase c) {
        List<Refusal> faults = faults(c);
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        Working w = new Working();
        double nominal = 0;
        double middle = 0;
        for (Link link : c.links()) {
            nominal += link.sensitivity() * link.size();
            middle += link.sensitivity() * link.middle();
        }
        w.line("nominal gap", "Σ c·size", nominal, Kind.LENGTH);
        w.line("middle gap", "Σ c·middle of the limits", middle, Kind.LENGTH);
        double shifts = c.links().stream()
                .mapToDouble(link -> Math.abs(link.sensitivity()) * link.shift())
                .sum();
        double worst = w.line("worst case", "Σ |c|·T", sum(c, link -> true), Kind.LENGTH, CHASE);
        double root = Math.sqrt(squares(c, link -> true));
        double squares = w.line("root sum of squares", "Σ |c|·shift + √Σ (c·T)²", shifts + root, Kind.LENGTH, CHASE);
        double deviation = w.line("standard deviation", "√Σ (c·σ)²", deviation(c), Kind.LENGTH, "JCGM 100:2008 5.1.2");
        double[] drawn = draws(c, middle, shifts);
        Limits limits = new Limits(c.least(), c.most());
        boolean limited = c.least() != null || c.most() != null;
        Double normal = limited ? outsideNormal(middle, deviation, shifts, limits) : null;
        Double outside = limited ? drawn[2] : null;
        List<LinkShare> links = c.links().stream()
                .map(link -> new LinkShare(link.name(), part(link), Math.pow(part(link) / root, 2)))
                .toList();
        Double wanted = c.wanted();
        return Outcome.ok(w.worked(new ToleranceLoopResult(
                nominal,
                middle,
                worst,
                squares,
                deviation,
                drawn[0],
                drawn[1],
                normal,
                outside,
                limited && shifts == 0 ? exact(c, middle, limits) : null,
                wanted == null ? null : factor(c, wanted, false),
                wanted == null ? null : factor(c, wanted, true),
                c.draws(),
                c.seed(),
                links,
                advice(links, outside, middle, worst, limits))));
    }

    private static List<Refusal> faults(ToleranceLoopCase c) {
        List<Refusal> faults = new ArrayList<>();
        for (int i = 0; i < c.links().size(); i++) {
            Link link = c.links().get(i);
            String place = "links entry " + (i + 1);
            if (link.sensitivity() == 0) {
                faults.add(new Refusal(place, link.name() + " does not move the gap", "Give 1 or -1, or leave it out"));
            }
            if (link.low() > link.tolerance()) {
                faults.add(new Refusal(
                        place,
                        link.lower() == null ? "the tolerance is negative" : "the lower deviation is above the upper",
                        "Give the upper one first, the lower one with its sign"));
            }
        }
        if (faults.isEmpty() && sum(c, link -> true) == 0) {
            faults.add(new Refusal("links", "no link has a tolerance", "Give at least one"));
        }
        Double least = c.least();
        Double most = c.most();
        if (least != null && most != null && least >= most) {
            faults.add(new Refusal("least", "is not below most", "Swap them"));
        }
        Double wanted = c.wanted();
        if (wanted != null && faults.isEmpty()) {
            if (sum(c, link -> !link.kept()) == 0) {
                faults.add(new Refusal("wanted", "no link is free to change", "Leave kept away for at least one"));
            } else if (sum(c, Link::kept) >= wanted && squares(c, Link::kept) >= wanted * wanted) {
                faults.add(new Refusal(
                        "wanted", "the links that must stay use it up already", "Ask for more, or free a link"));
            }
        }
        return faults;
    }

    private static double part(Link link) {
        return Math.abs(link.sensitivity()) * link.half();
    }

    private static double sum(ToleranceLoopCase c, Predicate<Link> which) {
        return c.links().stream().filter(which).mapToDouble(ToleranceLoop::part).sum();
    }

    private static double squares(ToleranceLoopCase c, Predicate<Link> which) {
        return c.links().stream()
                .filter(which)
                .mapToDouble(link -> part(link) * part(link))
                .sum();
    }

    /** What the free tolerances are to be multiplied with; null where the kept ones use up the wish. */
    private static @Nullable Double factor(ToleranceLoopCase c, double wanted, boolean bySquares) {
        double room = bySquares ? wanted * wanted - squares(c, Link::kept) : wanted - sum(c, Link::kept);
        double free = bySquares ? squares(c, link -> !link.kept()) : sum(c, link -> !link.kept());
        if (room <= 0) {
            return null;
        }
        return bySquares ? Math.sqrt(room / free) : room / free;
    }

    private static Distribution distribution(Link link) {
        double half = link.half();
        return switch (link.shape()) {
            case NORMAL -> new Distribution.Normal(half / 3);
            case RECTANGULAR -> new Distribution.Rectangular(half);
            case TRIANGULAR -> new Distribution.Triangular(half);
            case U_SHAPED -> new Distribution.Cyclic(half);
        };
    }

    private static double deviation(ToleranceLoopCase c) {
        return c.links().stream()
                .mapToDouble(link -> link.sensitivity() * distribution(link).deviation())
                .reduce(0, Math::hypot);
    }

    /** Ends of 99.73 %, means shifted outwards, and the share outside the limits, the worse way. */
    private static double[] draws(ToleranceLoopCase c, double middle, double shifts) {
        List<Distribution> inputs =
                c.links().stream().map(ToleranceLoop::distribution).toList();
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
        Sampled gap = Objects.requireNonNull(run.results().get(0));
        double low = Objects.requireNonNull(run.results().get(1)).mean();
        double high = Objects.requireNonNull(run.results().get(2)).mean();
        return new double[] {gap.symmetric().low() - shifts, gap.symmetric().high() + shifts, Math.max(low, high)};
    }

    private static double outsideNormal(double middle, double deviation, double shifts, Limits limits) {
        double up = Conformity.probability(middle + shifts, deviation, Double.POSITIVE_INFINITY, limits);
        double down = Conformity.probability(middle - shifts, deviation, Double.POSITIVE_INFINITY, limits);
        return 1 - Math.min(up, down);
    }

    private static @Nullable Double exact(ToleranceLoopCase c, double middle, Limits limits) {
        double[] halves = c.links().stream()
                .mapToDouble(ToleranceLoop::part)
                .filter(half -> half > 0)
                .toArray();
        double wide = c.links().stream().mapToDouble(ToleranceLoop::part).max().orElse(0);
        boolean alike = c.links().stream()
                .filter(link -> part(link) > 0)
                .allMatch(link -> link.shape() == Spread.RECTANGULAR && part(link) > wide / 100);
        if (!alike || halves.length > RectangularSum.MOST) {
            return null;
        }
        RectangularSum sum = new RectangularSum(halves);
        return sum.cumulative(limits.low() - middle) + sum.cumulative(middle - limits.high());
    }

    private static String advice(
            List<LinkShare> links, @Nullable Double outside, double middle, double worst, Limits limits) {
        LinkShare most =
                links.stream().max(Comparator.comparingDouble(LinkShare::share)).orElseThrow();
        String first = "\"" + most.name() + "\" brings most of the spread: measure or hold it first.";
        if (outside == null) {
            return first;
        }
        if (limits.hold(middle - worst) && limits.hold(middle + worst)) {
            return "Every loop within its tolerances lies within the limits. " + first;
        }
        return "About " + Math.round(outside * 1000) / 10.0 + " % of the loops lie outside the limits. " + first;
    }

    /** The worksheet. */
    public static final Worksheet<ToleranceLoopCase, ToleranceLoopResult> SHEET = new Worksheet<>(
                    "tolerance-loop",
                    "Tolerance loop",
                    "What a loop of toleranced lengths can come to: at worst, by squares, and drawn with the real shapes.",
                    List.of(CHASE, "JCGM 101:2008 6.4, 7.7", "sum of rectangular sizes: Irwin-Hall"),
                    ToleranceLoopCase.class,
                    ToleranceLoopResult.class,
                    ToleranceLoop::work)
            .drawn(StudyPictures::loop)
            .drawnWhenAsked();
}
