package shimwright.planted.rebuild.job;

/** Planted for others to reach. */
public final class Job {
    private Job() {}

    /** A number. */
    public static int number() {
        return 2;
    }
}
