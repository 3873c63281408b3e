package shimwright.planted.rebuild.plan;

/** Stands for the planner. */
public final class Planner {
    private Planner() {}

    public static int lay() {
        return 0;
    }
}
