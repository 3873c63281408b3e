package shimwright.mechanics.thread;

import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.thread.Tightening.Bolt;
import shimwright.mechanics.thread.Tightening.Case;
import shimwright.mechanics.thread.Tightening.Case.Basis;
import shimwright.mechanics.working.Working;

/** The preload asked for: itself, a share of the proof load, or what a torque gives. */
final class PreloadWanted {
    private static final double OILED = 0.90;
    private static final double PLATED = 0.80;
    private static final double ALUMINIUM = 0.70;

    private PreloadWanted() {}

    /** Preload in N; the target has been checked to be exactly one. */
    static double of(Case c, Bolt bolt, Friction friction, Working w) {
        if (c.wanted().preload() != null) {
            return c.wanted().preload();
        }
        Double proofLoad = bolt.proofLoad();
        if (c.wanted().proofShare() != null && proofLoad != null) {
            return w.line("preload", "share × proof load", c.wanted().proofShare() * proofLoad, Kind.FORCE);
        }
        Double stated = c.wanted().torque();
        if (stated == null) {
            throw new IllegalStateException("no target");
        }
        double torque = c.wanted().basis() == Basis.THIS_JOINT
                ? stated
                : w.line(
                        "torque for this joint",
                        "stated × share",
                        stated * dryShare(c),
                        Kind.TORQUE,
                        Tightening.DRY_RULE);
        return w.line("preload", "torque / (T/F)", torque / friction.total(), Kind.FORCE);
    }

    /** What is left of a torque stated for dry steel. */
    private static double dryShare(Case c) {
        double surface = switch (c.friction().condition()) {
            case LUBRICATED -> OILED;
            case ZINC_PLATED, CADMIUM_PLATED -> PLATED;
            case BLACK, UNKNOWN, ANTI_SEIZE -> 1;
        };
        return Math.min(surface, c.wanted().intoAluminium() ? ALUMINIUM : 1);
    }
}
