package shimwright.mechanics.history;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import shimwright.mechanics.measure.Student;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code drawer-stock}: how many shims of which size serve the jobs until the next delivery. */
public final class DrawerStock {
    private static final int MOST_SIZES = 200;
    private static final double FAR = 5;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
                    "drawer-stock",
                    "What the drawer should hold",
                    "How many shims of which size serve the jobs until the next delivery.",
                    List.of("binomial demand, Bonferroni bound: any statistics text"),
                    Case.class,
                    Result.class,
                    DrawerStock::work)
            .drawn(HistoryPictures::drawer);

    private DrawerStock() {}

    /** Lengths in metres. */
    public record Case(
            @Input(kind = Kind.LENGTH, meaning = "mean thickness wanted", min = 1e-5, max = 0.1, example = "2.15 mm")
            double mean,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "its standard deviation from job to job",
                    min = 1e-7,
                    max = 0.01,
                    example = "0.06 mm")
            double deviation,

            @Input(kind = Kind.LENGTH, meaning = "a size of the series", min = 1e-5, max = 0.1, example = "2.00 mm")
            double size,

            @Input(kind = Kind.LENGTH, meaning = "step between sizes", min = 1e-6, max = 0.01, example = "0.05 mm")
            double step,

            @Input(meaning = "jobs until the next delivery", min = 1, max = 200, example = "6")
            int jobs,

            @Input(meaning = "shims of one size in a job", orElse = "1", min = 1, max = 10)
            int perJob,

            @Input(meaning = "how sure all jobs are served", orElse = "95 %", min = 0.5, max = 0.999, unit = "%")
            double sure) {}

    /** One size to hold, metres. */
    public record Size(
            @Output(kind = Kind.LENGTH, meaning = "thickness")
            double thickness,

            @Output(meaning = "chance that a job wants it", unit = "%", decimals = 1)
            double chance,

            @Output(meaning = "pieces") int pieces) {}

    /** What to hold. */
    public record Result(
            @Output(meaning = "sizes") List<Size> sizes,
            @Output(meaning = "pieces in all") int pieces,

            @Output(meaning = "chance that all jobs are served, at least", unit = "%", decimals = 1)
            double served) {
        public Result {
            sizes = List.copyOf(sizes);
        }
    }

    /**
     * A job wants the size nearest to its thickness, normal about the mean; pieces are added to the size most likely to run out until Σ P(demand of a size
     * &gt; pieces), which bounds the chance of running out (Bonferroni), is small enough.
     *
     * @param c lengths in m
     * @return refused: a step so fine that more than 200 sizes could be wanted, sizes of 0 or less among those wanted
     */
    public static Outcome<Worked<Result>> work(Case c) {
        double first = Math.rint((c.mean() - FAR * c.deviation() - c.size()) / c.step());
        double last = Math.rint((c.mean() + FAR * c.deviation() - c.size()) / c.step());
        List<Refusal> faults = new ArrayList<>();
        if (last - first + 1 > MOST_SIZES) {
            faults.add(Refusal.of(
                    "step",
                    "so fine that over " + MOST_SIZES + " sizes could be wanted",
                    "Give the step of the series"));
        }
        if (c.mean() - FAR * c.deviation() <= 0) {
            faults.add(
                    Refusal.of("deviation", "so wide that a shim could have to be thinner than nothing", "Check both"));
        }
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        List<Double> sizes = new ArrayList<>();
        List<Double> chances = new ArrayList<>();
        for (double i = first; i <= last; i++) {
            double size = c.size() + i * c.step();
            sizes.add(size);
            chances.add(below(c, size + c.step() / 2) - below(c, size - c.step() / 2));
        }
        int[] sets = new int[sizes.size()];
        double missing = filled(c, chances, sets);
        Working w = new Working();
        w.line("chance to run out, at most", "Σ P(demand > pieces)", missing, Kind.NUMBER, "binomial, Bonferroni");
        w.caution("Only as good as the past it comes from: a new model, bearing make or case wants its own numbers.");
        List<Size> held = new ArrayList<>();
        int pieces = 0;
        for (int i = 0; i < sets.length; i++) {
            if (sets[i] > 0) {
                held.add(new Size(sizes.get(i), chances.get(i), sets[i] * c.perJob()));
                pieces += sets[i] * c.perJob();
            }
        }
        return Outcome.ok(w.worked(new Result(held, pieces, Math.max(0, 1 - missing))));
    }

    private static double below(Case c, double thickness) {
        return Student.cumulative((thickness - c.mean()) / c.deviation(), Double.POSITIVE_INFINITY);
    }

    /** Fills the counts; gives the bound of the chance to run out that is left. */
    private static double filled(Case c, List<Double> chances, int[] sets) {
        List<BinomialDistribution> demand = chances.stream()
                .map(p -> new BinomialDistribution(c.jobs(), Math.max(0, Math.min(1, p))))
                .toList();
        double[] missing = new double[sets.length];
        double sum = 0;
        for (int i = 0; i < sets.length; i++) {
            missing[i] = 1 - demand.get(i).cumulativeProbability(0);
            sum += missing[i];
        }
        while (sum > 1 - c.sure()) {
            int best = 0;
            for (int i = 1; i < sets.length; i++) {
                best = missing[i] > missing[best] ? i : best;
            }
            if (missing[best] <= 0) {
                return 0; // what is left of the sum is rounding
            }
            sets[best]++;
            sum -= missing[best];
            missing[best] = 1 - demand.get(best).cumulativeProbability(sets[best]);
            sum += missing[best];
        }
        return Math.max(0, sum);
    }
}
