package shimwright.planted.rebuild.job;

/** Planted for others to reach. */
public final class JobLog {
    private JobLog() {}

    /** A number. */
    public static int number() {
        return 7;
    }
}
