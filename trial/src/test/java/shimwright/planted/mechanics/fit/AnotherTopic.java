package shimwright.planted.mechanics.fit;

import shimwright.planted.mechanics.axial.Axial;

/** Planted for others to reach. */
public final class AnotherTopic {
    private AnotherTopic() {}

    /** A number. */
    public static int number() {
        return Axial.number() - 1;
    }
}
