package shimwright.mechanics.thread;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.thread.Tightening.Case.Basis;
import shimwright.mechanics.thread.Tightening.Case.Surface;

/** What of a {@link Tightening.Case} does not go together. */
final class TighteningChecks {
    private TighteningChecks() {}

    static void of(Tightening.Case c, boolean proofUnknown, List<Refusal> refusals) {
        long targets = Stream.of(c.torque(), c.preload(), c.proofShare())
                .filter(Objects::nonNull)
                .count();
        if (targets != 1) {
            refusals.add(Refusal.of(
                    "torque",
                    targets == 0 ? "no torque, preload or share of proof load is given" : "more than one aim is given",
                    "Give exactly one of torque, preload, proofShare"));
        }
        if (c.proofShare() != null && proofUnknown) {
            refusals.add(Refusal.of(
                    "proofShare",
                    "a share of the proof load needs the proof load",
                    "Give strengthClass or proofStress"));
        }
        if (c.scatter() != null && c.tighteningFactor() != null) {
            refusals.add(Refusal.of("scatter", "scatter and tightening factor are both given", "Give one of them"));
        }
        if (c.serviceLoad() > 0 && c.loadShare() == null) {
            refusals.add(Refusal.of(
                    "loadShare", "a working load is given without the bolt's share", "Type loadShare, such as 0.3"));
        }
        if ((c.sleeveLength() == null) != (c.sleeveArea() == null)) {
            refusals.add(Refusal.of("sleeveArea", "the spacer is half given", "Give sleeveLength and sleeveArea"));
        }
        basis(c, refusals);
    }

    private static void basis(Tightening.Case c, List<Refusal> refusals) {
        if (c.basis() != Basis.DRY_STEEL_TABLE) {
            return;
        }
        if (c.torque() == null) {
            refusals.add(Refusal.of("basis", "a table value is a torque", "Give torque, or leave basis out"));
        }
        if (c.condition() == Surface.UNKNOWN) {
            refusals.add(Refusal.of(
                    "condition",
                    "a torque for dry steel is not used on a surface nobody named",
                    "Type condition=black, zinc plated, lubricated or cadmium plated"));
        }
        if (c.condition() == Surface.ANTI_SEIZE) {
            refusals.add(Refusal.of(
                    "condition",
                    "no rule turns a dry torque into one for anti-seize",
                    "Take the torque of the compound's maker, or give preload"));
        }
    }
}
