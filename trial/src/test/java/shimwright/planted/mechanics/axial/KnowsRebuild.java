package shimwright.planted.mechanics.axial;

import shimwright.planted.rebuild.job.OfRebuild;

/** Planted to break a rule of the house. */
final class KnowsRebuild {
    private KnowsRebuild() {}

    static int number() {
        return OfRebuild.number();
    }
}
