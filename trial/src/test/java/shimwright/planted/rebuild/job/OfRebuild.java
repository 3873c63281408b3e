package shimwright.planted.rebuild.job;

/** Planted for others to reach. */
public final class OfRebuild {
    private OfRebuild() {}

    /** A number. */
    public static int number() {
        return 2;
    }
}
