package shimwright.planted.bench.web;

/** Planted for others to reach. */
public final class Web {
    private Web() {}

    /** A number. */
    public static int number() {
        return 6;
    }
}
