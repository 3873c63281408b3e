package shimwright.mechanics.thread;

import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.measure.Statistics;
import shimwright.mechanics.measure.Student;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Group;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** Worksheet {@code nut-factor}. */
public final class NutFactors {
    private static final double BOTH_SIDES = 0.95;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "nut-factor",
            "Nut factor",
            "Nut factor, friction and scatter of your own bolts from preloads measured at one torque.",
            List.of("Shigley 9th ed., Eq. 8-27 and Table 8-14", "ISO 16047, total coefficient of friction"),
            Case.class,
            Result.class,
            NutFactors::work);

    private NutFactors() {}

    /** A few bolts of one kind, tightened to one torque over a load cell. */
    public record Case(
            @Group ThreadSize size,

            @Input(kind = Kind.TORQUE, meaning = "torque of every trial", min = 1e-3, max = 1e5, example = "70 N·m")
            double torque,

            @Input(
                    kind = Kind.FORCE,
                    meaning = "preloads measured",
                    unit = "kN",
                    fewest = 2,
                    min = 1,
                    max = 1e7,
                    example = "33.8 34.7 32.9 37.4 kN")
            List<Double> preloads,

            @Input(kind = Kind.LENGTH, meaning = "mean diameter of the seat under the head", min = 0.001, max = 0.3)
            @Nullable
            Double headMean) {}

    /** What the trials say about friction. */
    public record Result(
            @Output(kind = Kind.FORCE, meaning = "mean preload")
            double mean,

            @Output(kind = Kind.FORCE, meaning = "standard deviation of one bolt")
            double deviation,

            @Output(meaning = "scatter to each side for 95 in 100 bolts", unit = "%", decimals = 1)
            double scatter,

            @Output(meaning = "nut factor K", decimals = 3) double nutFactor,

            @Output(meaning = "largest over smallest preload", decimals = 2)
            double tighteningFactor,

            @Output(meaning = "coefficient of friction, thread and head alike", decimals = 3) @Nullable
            Double friction) {}

    /**
     * From trials: K = T/(F̄ d), μ = (T/F̄ − P/2π)/(d2/(2 cos 30°) + DKm/2), scatter t s/F̄ at 95 %.
     *
     * @param c diameter, pitch, seat in m, torque in N·m, preloads in N, at least 2
     * @return forces in N; refused: a bad thread, a torque so small that friction would be negative
     */
    public static Outcome<Worked<Result>> work(Case c) {
        Outcome<ThreadForm> form = c.size().form();
        if (!form.isOk()) {
            return Outcome.refused(form.refusals());
        }
        Working w = new Working();
        double mean = w.line("mean preload", "sum / count", Statistics.mean(c.preloads()), Kind.FORCE);
        double s = w.line(
                "s", "√(Σ(F − mean)²/(n − 1))", Statistics.deviation(c.preloads()), Kind.FORCE, "JCGM 100:2008, 4.2.2");
        double t = Student.coverageFactor(BOTH_SIDES, c.preloads().size() - 1.0);
        double scatter = w.line("scatter", "t × s / mean", t * s / mean, Kind.NUMBER, "Student, 95 %");
        double k =
                w.line("K", "torque / (mean × d)", c.torque() / (mean * c.size().diameter()), Kind.NUMBER, "T = K F d");
        double lever = c.torque() / mean;
        double least = form.orElseThrow().pitch() / (2 * Math.PI);
        if (lever <= least) {
            return Outcome.refused(Refusal.of(
                    "preloads",
                    "the preload is higher than a bolt without friction would reach",
                    "Look at the units of torque and preload, and at the load cell"));
        }
        double factor = Collections.max(c.preloads()) / Collections.min(c.preloads());
        w.caution("Trials count for the same bolts, finish, oil and seat; a bolt tightened before has other friction.");
        w.caution("Shield the rig: a bolt that breaks over a load cell flies.");
        return Outcome.ok(
                w.worked(new Result(mean, s, scatter, k, factor, friction(c, form.orElseThrow(), lever - least, w))));
    }

    private static @Nullable Double friction(Case c, ThreadForm form, double lost, Working w) {
        Double seat = c.headMean();
        if (seat == null) {
            return null;
        }
        double perFriction = form.pitchDiameter() / Math.sqrt(3) + seat / 2;
        return w.line("μ", "(T/F − P/2π)/(0.577 d2 + DKm/2)", lost / perFriction, Kind.NUMBER, "ISO 16047");
    }
}
