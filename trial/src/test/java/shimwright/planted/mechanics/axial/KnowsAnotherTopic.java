package shimwright.planted.mechanics.axial;

import shimwright.planted.mechanics.fit.Fit;

/** Planted to break a rule of the house. */
final class KnowsAnotherTopic {
    private KnowsAnotherTopic() {}

    static int number() {
        return Fit.number();
    }
}
