package shimwright.rebuild.plan.backout;

import shimwright.rebuild.unit.model.Step;

/**
 * What undoing takes where the unit file does not say it, as a share of the time that doing took, and what a thing destroyed weighs beside minutes when ways are
 * compared.
 *
 * @param free share for a step that comes apart freely, 0 to 10
 * @param slow share for a slow one, 0 to 10
 * @param heat share where heat is needed again, 0 to 10
 * @param destroys share where something is destroyed, 0 to 10
 * @param loss minutes that one step that destroys something counts for on top; 0 to 10 000
 */
public record Tariff(double free, double slow, double heat, double destroys, double loss) {
    /** Half the time for what comes apart freely, the whole for the rest, 30 min a loss. Own guess, no source. */
    public static final Tariff USUAL = new Tariff(0.5, 1, 1, 1, 30);

    public Tariff {
        for (double share : new double[] {free, slow, heat, destroys}) {
            if (!(share >= 0 && share <= 10)) {
                throw new IllegalArgumentException("share " + share);
            }
        }
        if (!(loss >= 0 && loss <= 10_000)) {
            throw new IllegalArgumentException("loss " + loss);
        }
    }

    double share(Step.Undo undo) {
        return switch (undo) {
            case FREE -> free;
            case SLOW -> slow;
            case HEAT -> heat;
            case DESTROYS -> destroys;
        };
    }
}
