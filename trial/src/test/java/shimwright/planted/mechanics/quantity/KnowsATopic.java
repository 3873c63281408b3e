package shimwright.planted.mechanics.quantity;

import shimwright.planted.mechanics.axial.Axial;

/** Planted to break a rule of the house. */
final class KnowsATopic {
    private KnowsATopic() {}

    static int number() {
        return Axial.number();
    }
}
