package shimwright.mechanics.axial.bevel;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.measure.Outliers;
import shimwright.mechanics.measure.Statistics;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** Backlash against a measured shift of the crown wheel. */
public final class BacklashShift {
    private static final double BELIEVED = 0.05;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "backlash-shift",
            "Backlash shift",
            "How backlash answers to a measured shift of the crown wheel, and how far to go on.",
            List.of("difference quotient; 5 % rule: common practice, no source", "Grubbs 1969"),
            Case.class,
            Result.class,
            BacklashShift::work);

    private BacklashShift() {}

    /**
     * Backlash round the crown wheel before and after a known shift of it.
     *
     * @param before by place, m
     * @param after by place, m, after the shift
     * @param shift distance the crown moved towards the pinion, m, greater than 0
     * @param theory change of backlash per shift from the tooth geometry; null when not known
     * @param wanted mean backlash wanted, m; null when only the slope is wanted
     * @param agreeWithin largest spread round the crown that counts as agreeing, m
     */
    public record Case(
            @Input(
                    kind = Kind.LENGTH,
                    meaning = "backlash by place before",
                    min = 0,
                    max = 0.01,
                    fewest = 3,
                    most = 100,
                    example = "0.355 0.360 0.365 0.365 0.355 0.350 0.345 0.350 mm")
            List<Double> before,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "backlash by place after",
                    min = 0,
                    max = 0.01,
                    fewest = 3,
                    most = 100,
                    example = "0.270 0.275 0.280 0.275 0.270 0.260 0.255 0.260 mm")
            List<Double> after,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "shift of the crown wheel towards the pinion",
                    min = 1e-6,
                    max = 0.01,
                    example = "0.102 mm")
            double shift,

            @Input(meaning = "change of backlash per shift by geometry", min = 0.1, max = 5, example = "0.8647")
            @Nullable
            Double theory,

            @Input(kind = Kind.LENGTH, meaning = "mean backlash wanted", min = 0, max = 0.01, example = "0.15 mm")
            @Nullable
            Double wanted,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "places that differ by no more than this agree",
                    min = 1e-6,
                    max = 0.01,
                    orElse = "0.05 mm")
            double agreeWithin) {
        public Case {
            before = List.copyOf(before);
            after = List.copyOf(after);
        }
    }

    /**
     * How backlash answers to a shift of the crown wheel.
     *
     * @param meanBefore m
     * @param meanAfter m
     * @param slope loss of backlash per shift towards the pinion
     * @param offTheory slope over theory − 1; null without a theory
     * @param spreadAfter largest minus smallest after, m
     * @param outliersBefore places that stand off, counted from 1
     * @param outliersAfter places that stand off, counted from 1
     * @param further shift still to make towards the pinion (negative: away), m; null without a wanted backlash, or while a
     *     place stands off or the slope is not believed
     */
    public record Result(
            @Output(kind = Kind.LENGTH, meaning = "mean before", decimals = 4)
            double meanBefore,

            @Output(kind = Kind.LENGTH, meaning = "mean after", decimals = 4)
            double meanAfter,

            @Output(meaning = "backlash lost per shift") double slope,
            @Output(meaning = "slope off theory") @Nullable Double offTheory,

            @Output(kind = Kind.LENGTH, meaning = "spread after")
            double spreadAfter,

            @Output(meaning = "places that stand off, before")
            List<Integer> outliersBefore,

            @Output(meaning = "places that stand off, after")
            List<Integer> outliersAfter,

            @Output(kind = Kind.LENGTH, meaning = "further shift towards the pinion") @Nullable
            Double further) {}

    /**
     * slope = (mean before − mean after)/shift; further shift = (mean after − wanted)/slope. A place off the others
     * (see {@link Outliers#among}), a slope more than 5 % off theory, or one that is not positive, withholds the further
     * shift (common practice, no source): read again first.
     */
    public static Outcome<Worked<Result>> work(Case c) {
        Working w = new Working();
        double before = w.line("mean before", "mean of the places", Statistics.mean(c.before()), Kind.LENGTH);
        double after = w.line("mean after", "mean of the places", Statistics.mean(c.after()), Kind.LENGTH);
        double slope = w.line("slope", "(mean before − mean after) / shift", (before - after) / c.shift(), Kind.NUMBER);
        Double theory = c.theory();
        Double off =
                theory == null ? null : w.line("off theory", "slope / theory − 1", slope / theory - 1, Kind.NUMBER);
        List<Integer> outliersBefore = outliers(c.before(), c.agreeWithin(), "before", w);
        List<Integer> outliersAfter = outliers(c.after(), c.agreeWithin(), "after", w);
        boolean believed = outliersBefore.isEmpty() && outliersAfter.isEmpty() && slope > 0;
        if (!(slope > 0)) {
            w.caution("Backlash did not fall as the crown moved in: check the direction of the shift and the seating.");
        }
        if (off != null && Math.abs(off) > BELIEVED) {
            believed = false;
            w.caution("The slope is more than 5 % off theory: read both series again before choosing shims.");
        }
        Double wanted = c.wanted();
        Double further = wanted == null || !believed
                ? null
                : w.line("further shift", "(mean after − wanted) / slope", (after - wanted) / slope, Kind.LENGTH);
        return Outcome.ok(w.worked(new Result(
                before, after, slope, off, Statistics.range(c.after()), outliersBefore, outliersAfter, further)));
    }

    private static List<Integer> outliers(List<Double> places, double within, String when, Working w) {
        List<Integer> outliers =
                Outliers.among(places, within).stream().map(index -> index + 1).toList();
        outliers.forEach(place -> w.caution("Place " + place + " " + when + " stands off the others: read it again."));
        return outliers;
    }
}
