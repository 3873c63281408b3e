package shimwright.mechanics.thread;

import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.measure.Statistics;
import shimwright.mechanics.measure.Student;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Worksheet;

/** Worksheet {@code nut-factor}. */
public final class NutFactors {
    private static final double BOTH_SIDES = 0.95;

    static final Worksheet<NutFactorCase, NutFactorResult> SHEET = new Worksheet<>(
            "nut-factor",
            "Nut factor",
            "Nut factor, friction and scatter of your own bolts from preloads measured at one torque.",
            List.of("Shigley 9th ed., Eq. 8-27 and Table 8-14", "ISO 16047, total coefficient of friction"),
            NutFactorCase.class,
            NutFactorResult.class,
            NutFactors::work);

    private NutFactors() {}

    /**
     * From trials: K = T/(F̄ d), μ = (T/F̄ − P/2π)/(d2/(2 cos 30°) + DKm/2), scatter t s/F̄ at 95 %.
     *
     * @param c diameter, pitch, seat in m, torque in N·m, preloads in N, at least 2
     * @return forces in N; refused: a bad thread, a torque so small that friction would be negative
     */
    public static Outcome<Worked<NutFactorResult>> work(NutFactorCase c) {
        Outcome<ThreadForm> form = ThreadForm.of(c.diameter(), c.pitch(), c.perInch());
        if (!form.isOk()) {
            return Outcome.refused(form.refusals());
        }
        Working w = new Working();
        double mean = w.line("mean preload", "sum / count", Statistics.mean(c.preloads()), Kind.FORCE);
        double s = w.line(
                "s", "√(Σ(F − mean)²/(n − 1))", Statistics.deviation(c.preloads()), Kind.FORCE, "JCGM 100:2008, 4.2.2");
        double t = Student.coverageFactor(BOTH_SIDES, c.preloads().size() - 1.0);
        double scatter = w.line("scatter", "t × s / mean", t * s / mean, Kind.NUMBER, "Student, 95 %");
        double k = w.line("K", "torque / (mean × d)", c.torque() / (mean * c.diameter()), Kind.NUMBER, "T = K F d");
        double lever = c.torque() / mean;
        double least = form.orElseThrow().pitch() / (2 * Math.PI);
        if (lever <= least) {
            return Outcome.refused(
                    "preloads",
                    "the preload is higher than a bolt without friction would reach",
                    "Look at the units of torque and preload, and at the load cell");
        }
        double factor = Collections.max(c.preloads()) / Collections.min(c.preloads());
        w.caution("Trials count for the same bolts, finish, oil and seat; a bolt tightened before has other friction.");
        w.caution("Shield the rig: a bolt that breaks over a load cell flies.");
        return Outcome.ok(w.worked(
                new NutFactorResult(mean, s, scatter, k, factor, friction(c, form.orElseThrow(), lever - least, w))));
    }

    private static @Nullable Double friction(NutFactorCase c, ThreadForm form, double lost, Working w) {
        Double seat = c.headMean();
        if (seat == null) {
            return null;
        }
        double perFriction = form.pitchDiameter() / Math.sqrt(3) + seat / 2;
        return w.line("μ", "(T/F − P/2π)/(0.577 d2 + DKm/2)", lost / perFriction, Kind.NUMBER, "ISO 16047");
    }
}
