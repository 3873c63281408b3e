package shimwright.planted.bench;

/** Planted for others to reach. */
public final class Main {
    private Main() {}

    /** A number. */
    public static int number() {
        return 5;
    }
}
