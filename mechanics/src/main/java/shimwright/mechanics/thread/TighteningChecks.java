package shimwright.mechanics.thread;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.thread.Tightening.Case.Basis;
import shimwright.mechanics.thread.Tightening.Case.Method;
import shimwright.mechanics.thread.Tightening.Case.Surface;
import shimwright.mechanics.working.Working;

/** What of a {@link Tightening.Case} does not go together, and what to heed where it does. */
final class TighteningChecks {
    private TighteningChecks() {}

    static void of(Tightening.Case c, boolean proofUnknown, List<Refusal> refusals) {
        long targets = Stream.of(
                        c.wanted().torque(), c.wanted().preload(), c.wanted().proofShare())
                .filter(Objects::nonNull)
                .count();
        if (targets != 1) {
            refusals.add(Refusal.of(
                    "torque",
                    targets == 0 ? "no torque, preload or share of proof load is given" : "more than one aim is given",
                    "Give exactly one of torque, preload, proofShare"));
        }
        if (c.wanted().proofShare() != null && proofUnknown) {
            refusals.add(Refusal.of(
                    "proofShare",
                    "a share of the proof load needs the proof load",
                    "Give strengthClass or proofStress"));
        }
        if (c.judged().scatter() != null && c.judged().tighteningFactor() != null) {
            refusals.add(Refusal.of("scatter", "scatter and tightening factor are both given", "Give one of them"));
        }
        if (c.joint().serviceLoad() > 0 && c.joint().loadShare() == null) {
            refusals.add(Refusal.of(
                    "loadShare", "a working load is given without the bolt's share", "Type loadShare, such as 0.3"));
        }
        if ((c.joint().sleeveLength() == null) != (c.joint().sleeveArea() == null)) {
            refusals.add(Refusal.of("sleeveArea", "the spacer is half given", "Give sleeveLength and sleeveArea"));
        }
        basis(c, refusals);
    }

    private static void basis(Tightening.Case c, List<Refusal> refusals) {
        if (c.wanted().basis() != Basis.DRY_STEEL_TABLE) {
            return;
        }
        if (c.wanted().torque() == null) {
            refusals.add(Refusal.of("basis", "a table value is a torque", "Give torque, or leave basis out"));
        }
        if (c.friction().condition() == Surface.UNKNOWN) {
            refusals.add(Refusal.of(
                    "condition",
                    "a torque for dry steel is not used on a surface nobody named",
                    "Type condition=black, zinc plated, lubricated or cadmium plated"));
        }
        if (c.friction().condition() == Surface.ANTI_SEIZE) {
            refusals.add(Refusal.of(
                    "condition",
                    "no rule turns a dry torque into one for anti-seize",
                    "Take the torque of the compound's maker, or give preload"));
        }
    }

    /** What to heed at this tightening, whatever comes out. */
    static void cautions(Tightening.Case c, @Nullable Double shareHigh, Working w) {
        w.caution("Tighten cold, in steps, with clean threads and seats; oil under the head counts as much as oil in "
                + "the thread.");
        if (shareHigh == null) {
            w.caution("Without the mark on the head nothing here proves that the bolt bears this preload.");
        } else if (shareHigh > 1) {
            w.caution("At the upper end of the scatter the bolt is loaded beyond its proof load: less torque, a better "
                    + "method, or a stronger bolt.");
        }
        if (c.lock().threadlocker()) {
            w.caution("Liquid threadlocker changes the friction and sources disagree which way: take the torque its "
                    + "maker gives, and never re-check the torque once it has set.");
        }
        if (c.lock().prevailing() > 0) {
            w.caution("Measure the torque of the locking thread while it runs, before the head seats.");
        }
        if (c.judged().method() == Method.YIELD_CONTROL || c.judged().method() == Method.TURN_OF_NUT) {
            w.caution("A bolt that was tightened into yield is used once.");
        }
    }
}
