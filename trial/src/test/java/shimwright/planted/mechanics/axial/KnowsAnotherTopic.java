package shimwright.planted.mechanics.axial;

import shimwright.planted.mechanics.fit.AnotherTopic;

/** Planted to break a rule of the house. */
final class KnowsAnotherTopic {
    private KnowsAnotherTopic() {}

    static int number() {
        return AnotherTopic.number();
    }
}
