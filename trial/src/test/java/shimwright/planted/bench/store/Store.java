package shimwright.planted.bench.store;

/** Planted for others to reach. */
public final class Store {
    private Store() {}

    /** A number. */
    public static int number() {
        return 3;
    }
}
