package shimwright.mechanics.axial;

import java.util.List;
import shimwright.mechanics.measure.Outliers;
import shimwright.mechanics.measure.Statistics;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;

/** Backlash against a measured shift of the crown wheel. */
public final class BacklashShift {
    private static final double BELIEVED = 0.05;

    private BacklashShift() {}

    /**
     * slope = (mean before − mean after)/shift; further shift = (mean after − wanted)/slope. A place off the others
     * (see {@link Outliers#odd}), a slope more than 5 % off theory, or one that is not positive, withholds the further
     * shift (common practice, no source): read again first.
     */
    public static Outcome<Worked<BacklashShiftResult>> work(BacklashShiftCase c) {
        Working w = new Working();
        double before = w.line("mean before", "mean of the places", Statistics.mean(c.before()), Kind.LENGTH);
        double after = w.line("mean after", "mean of the places", Statistics.mean(c.after()), Kind.LENGTH);
        double slope = w.line("slope", "(mean before − mean after) / shift", (before - after) / c.shift(), Kind.NUMBER);
        Double theory = c.theory();
        Double off =
                theory == null ? null : w.line("off theory", "slope / theory − 1", slope / theory - 1, Kind.NUMBER);
        List<Integer> oddBefore = odd(c.before(), c.agreeWithin(), "before", w);
        List<Integer> oddAfter = odd(c.after(), c.agreeWithin(), "after", w);
        boolean believed = oddBefore.isEmpty() && oddAfter.isEmpty() && slope > 0;
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
        return Outcome.ok(w.worked(new BacklashShiftResult(
                before, after, slope, off, Statistics.range(c.after()), oddBefore, oddAfter, further)));
    }

    private static List<Integer> odd(List<Double> places, double within, String when, Working w) {
        List<Integer> odd =
                Outliers.odd(places, within).stream().map(index -> index + 1).toList();
        odd.forEach(place -> w.caution("Place " + place + " " + when + " stands off the others: read it again."));
        return odd;
    }
}
