package shimwright.mechanics.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.conformity.Limits;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.study.ToleranceLoop.Case.Link;
import shimwright.mechanics.study.ToleranceLoop.Case.Spread;
import shimwright.mechanics.study.ToleranceLoop.Result.LinkShare;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code tolerance-loop}. */
public final class ToleranceLoop {
    private static final String CHASE = "K. W. Chase, tolerance allocation methods, ADCATS (from memory)";

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
                    "tolerance-loop",
                    "Tolerance loop",
                    "What a loop of toleranced lengths can come to: at worst, by squares, and drawn with the real shapes.",
                    List.of(CHASE, "JCGM 101:2008 6.4, 7.7", "sum of rectangular sizes: Irwin-Hall"),
                    Case.class,
                    Result.class,
                    ToleranceLoop::work)
            .drawn(StudyPictures::loop)
            .drawnWhenAsked();

    private ToleranceLoop() {}

    /**
     * A loop of toleranced lengths.
     *
     * @param links the loop, in order
     * @param wanted tolerance ± of the gap that the free links should be scaled to, m
     * @param least smallest gap allowed, m
     * @param most largest gap allowed, m
     * @param draws how many loops are drawn; 99.73 % of fewer than 10,000 would hang on a dozen of them
     * @param seed of the draws
     */
    public record Case(
            @Input(
                    meaning = "the loop: name: size: tolerance: how much the gap grows per length",
                    most = 60,
                    example =
                            "case: 250.40 mm: 0.05 mm: 1; shaft: 214.98 mm: 0.03 mm: -1; "
                                    + "bearing: 17.70 mm: 0.06 mm: -1: rectangular; bearing: 17.70 mm: 0.06 mm: -1: rectangular")
            List<Link> links,

            @Input(kind = Kind.LENGTH, meaning = "tolerance ± wanted for the gap", min = 1e-9, max = 1) @Nullable
            Double wanted,

            @Input(kind = Kind.LENGTH, meaning = "smallest gap allowed", min = -10, max = 10) @Nullable
            Double least,

            @Input(kind = Kind.LENGTH, meaning = "largest gap allowed", min = -10, max = 10) @Nullable
            Double most,

            @Input(meaning = "loops to draw", orElse = "50000", min = 10_000, max = 1_000_000)
            int draws,

            @Input(meaning = "seed of the draws", orElse = "1", min = 0, max = 1e9)
            int seed) {
        public Case {
            links = List.copyOf(links);
        }

        /** How sizes lie between their limits. */
        public enum Spread {
            /** Normal, the limits three standard deviations out. */
            NORMAL,
            RECTANGULAR,
            TRIANGULAR,
            U_SHAPED
        }

        /**
         * One link.
         *
         * @param size nominal, m
         * @param tolerance upper deviation; the lower one is as large unless given, m
         * @param sensitivity change of the gap per change of the size, signed, not 0
         * @param shape how sizes lie between the limits
         * @param lower lower deviation, signed, m
         * @param shift how far the mean of a batch may sit off the middle, m
         * @param kept whether its tolerance must stay as it is
         */
        public record Link(
                @Input(meaning = "what it is", example = "case")
                String name,

                @Input(kind = Kind.LENGTH, meaning = "size", min = -10, max = 10, example = "250.4 mm")
                double size,

                @Input(
                        kind = Kind.LENGTH,
                        meaning = "tolerance ±, or upper deviation",
                        min = -1,
                        max = 1,
                        example = "0.05 mm")
                double tolerance,

                @Input(
                        meaning = "growth of the gap per length, 1 opens, -1 closes",
                        orElse = "1",
                        min = -1000,
                        max = 1000)
                double sensitivity,

                @Input(meaning = "how sizes lie between the limits", orElse = "normal")
                Spread shape,

                @Input(kind = Kind.LENGTH, meaning = "lower deviation, if not as large", min = -1, max = 1) @Nullable
                Double lower,

                @Input(kind = Kind.LENGTH, meaning = "possible shift of the mean", orElse = "0 mm", min = 0, max = 1)
                double shift,

                @Input(meaning = "tolerance must stay", orElse = "no")
                boolean kept) {

            double low() {
                return lower == null ? -tolerance : lower;
            }

            double middle() {
                return size + (tolerance + low()) / 2;
            }

            /** Half the tolerance zone. */
            double half() {
                return (tolerance - low()) / 2;
            }
        }
    }

    /**
     * What a loop comes to; lengths in m.
     *
     * @param nominal gap of the nominal sizes
     * @param middle gap with every size in the middle of its limits
     * @param worst half-width with every size at its worst
     * @param squares half-width by root sum of squares, shifts of means added straight
     * @param deviation standard deviation by the shapes given
     * @param drawnLow lower end of 99.73 % of the loops drawn
     * @param drawnHigh upper end
     * @param outsideNormal share outside the limits, gap taken as normal
     * @param outsideDrawn share outside the limits of the loops drawn
     * @param outsideExact share outside, exact, where every link is rectangular
     * @param scaleWorst factor for the free tolerances by the worst case
     * @param scaleSquares factor for the free tolerances by root sum of squares
     * @param draws loops drawn
     * @param seed of the draws; with it the same loops are drawn again
     * @param links each one's part
     * @param advice one sentence
     */
    public record Result(
            @Output(kind = Kind.LENGTH, meaning = "gap, nominal", decimals = 4)
            double nominal,

            @Output(kind = Kind.LENGTH, meaning = "gap, middle of the limits", decimals = 4)
            double middle,

            @Output(kind = Kind.LENGTH, meaning = "worst case, ±", decimals = 4)
            double worst,

            @Output(kind = Kind.LENGTH, meaning = "root sum of squares, ±", decimals = 4)
            double squares,

            @Output(kind = Kind.LENGTH, meaning = "standard deviation", decimals = 4)
            double deviation,

            @Output(kind = Kind.LENGTH, meaning = "99.73 % of the loops drawn lie above", decimals = 3)
            double drawnLow,

            @Output(kind = Kind.LENGTH, meaning = "and below", decimals = 3)
            double drawnHigh,

            @Output(meaning = "outside the limits, taken as normal", unit = "%", decimals = 3) @Nullable
            Double outsideNormal,

            @Output(meaning = "outside the limits, drawn", unit = "%", decimals = 2) @Nullable
            Double outsideDrawn,

            @Output(meaning = "outside the limits, exact", unit = "%", decimals = 3) @Nullable
            Double outsideExact,

            @Output(meaning = "factor for the free tolerances, worst case", decimals = 5) @Nullable
            Double scaleWorst,

            @Output(meaning = "factor for the free tolerances, root sum of squares", decimals = 5) @Nullable
            Double scaleSquares,

            @Output(meaning = "loops drawn") int draws,
            @Output(meaning = "seed of the draws") int seed,

            @Output(meaning = "links") List<LinkShare> links,
            @Output(meaning = "advice") String advice) {
        public Result {
            links = List.copyOf(links);
        }

        /** One link's part of the gap. */
        public record LinkShare(
                @Output(meaning = "link") String name,

                @Output(kind = Kind.LENGTH, meaning = "moves the gap by ±", decimals = 4)
                double part,

                @Output(meaning = "share of the sum of squares", unit = "%", decimals = 1)
                double share) {}
    }

    /**
     * Worst case Σ|c|T; root sum of squares Σ|c·shift| + √Σ(cT)²; draws of every link by its shape. Unequal deviations are
     * moved to their middle first.
     *
     * @param c sizes in m; a normal link has a standard deviation of T/3, a rectangular one T/√3
     * @return refused: a link that does not move the gap, deviations or limits the wrong way round, no tolerance at all, a
     *     wish that no free link can meet
     */
    public static Outcome<Worked<Result>> work(Case c) {
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
        double deviation =
                w.line("standard deviation", "√Σ (c·σ)²", LoopDraws.deviation(c), Kind.LENGTH, "JCGM 100:2008 5.1.2");
        double[] drawn = LoopDraws.draws(c, middle, shifts);
        Limits limits = new Limits(c.least(), c.most());
        boolean limited = c.least() != null || c.most() != null;
        Double normal = limited ? LoopDraws.outsideNormal(middle, deviation, shifts, limits) : null;
        Double outside = limited ? drawn[2] : null;
        List<LinkShare> links = c.links().stream()
                .map(link -> new LinkShare(link.name(), part(link), Math.pow(part(link) / root, 2)))
                .toList();
        Double wanted = c.wanted();
        return Outcome.ok(w.worked(new Result(
                nominal,
                middle,
                worst,
                squares,
                deviation,
                drawn[0],
                drawn[1],
                normal,
                outside,
                limited && shifts == 0 ? LoopDraws.exact(c, middle, limits) : null,
                wanted == null ? null : factor(c, wanted, false),
                wanted == null ? null : factor(c, wanted, true),
                c.draws(),
                c.seed(),
                links,
                advice(links, outside, middle, worst, limits))));
    }

    private static List<Refusal> faults(Case c) {
        List<Refusal> faults = new ArrayList<>();
        for (int i = 0; i < c.links().size(); i++) {
            Link link = c.links().get(i);
            String place = "links[" + i + "]";
            if (link.sensitivity() == 0) {
                faults.add(Refusal.of(place, link.name() + " does not move the gap", "Give 1 or -1, or leave it out"));
            }
            if (link.low() > link.tolerance()) {
                faults.add(Refusal.of(
                        place,
                        link.lower() == null ? "the tolerance is negative" : "the lower deviation is above the upper",
                        "Give the upper one first, the lower one with its sign"));
            }
        }
        if (faults.isEmpty() && sum(c, link -> true) == 0) {
            faults.add(Refusal.of("links", "no link has a tolerance", "Give at least one"));
        }
        Double least = c.least();
        Double most = c.most();
        if (least != null && most != null && least >= most) {
            faults.add(Refusal.of("least", "is not below most", "Swap them"));
        }
        Double wanted = c.wanted();
        if (wanted != null && faults.isEmpty()) {
            if (sum(c, link -> !link.kept()) == 0) {
                faults.add(Refusal.of("wanted", "no link is free to change", "Leave kept away for at least one"));
            } else if (sum(c, Link::kept) >= wanted && squares(c, Link::kept) >= wanted * wanted) {
                faults.add(Refusal.of(
                        "wanted", "the links that must stay use it up already", "Ask for more, or free a link"));
            }
        }
        return faults;
    }

    static double part(Link link) {
        return Math.abs(link.sensitivity()) * link.half();
    }

    private static double sum(Case c, Predicate<Link> which) {
        return c.links().stream().filter(which).mapToDouble(ToleranceLoop::part).sum();
    }

    private static double squares(Case c, Predicate<Link> which) {
        return c.links().stream()
                .filter(which)
                .mapToDouble(link -> part(link) * part(link))
                .sum();
    }

    /** What the free tolerances are to be multiplied with; null where the kept ones use up the wish. */
    private static @Nullable Double factor(Case c, double wanted, boolean bySquares) {
        double room = bySquares ? wanted * wanted - squares(c, Link::kept) : wanted - sum(c, Link::kept);
        double free = bySquares ? squares(c, link -> !link.kept()) : sum(c, link -> !link.kept());
        if (room <= 0) {
            return null;
        }
        return bySquares ? Math.sqrt(room / free) : room / free;
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
}
