package shimwright.planted.mechanics.fit;

import shimwright.planted.mechanics.axial.Axial;

/** Planted for others to reach. */
public final class Fit {
    private Fit() {}

    /** A number. */
    public static int number() {
        return Axial.number() - 1;
    }
}
