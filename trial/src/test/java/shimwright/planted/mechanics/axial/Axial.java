package shimwright.planted.mechanics.axial;

/** Planted for others to reach. */
public final class Axial {
    private Axial() {}

    /** A number. */
    public static int number() {
        return 1;
    }
}
