package shimwright.planted.bench;

/** Planted for others to reach. */
public final class OfTheProgram {
    private OfTheProgram() {}

    /** A number. */
    public static int number() {
        return 5;
    }
}
