package shimwright.planted.bench.print;

/** Planted for others to reach. */
public final class Print {
    private Print() {}

    /** A number. */
    public static int number() {
        return 4;
    }
}
