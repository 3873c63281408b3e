package shimwright.rebuild.plan.model;

/**
 * What an order costs, by part. All times in seconds.
 *
 * @param work the tasks themselves
 * @param turning turning the case over
 * @param walking from place to place
 * @param tools laying out tools
 * @param waiting time in which nothing can be done; it costs what the problem says
 * @param delay what the waiting counts for
 * @param risk expected loss by late finds
 * @param turns how often the case is turned, from an orientation that is known
 * @param walks how often the place is changed, from one that is known
 * @param toolChanges how often a tool that takes time is laid out
 */
public record Cost(
        double work,
        double turning,
        double walking,
        double tools,
        double waiting,
        double delay,
        double risk,
        int turns,
        int walks,
        int toolChanges) {
    /** What the planner makes least: everything together, waiting at its price. */
    public double total() {
        return work + turning + walking + tools + delay + risk;
    }

    /** Time from the first to the last. */
    public double elapsed() {
        return work + turning + walking + tools + waiting;
    }

    /** What a person does at the bench, waiting left out. */
    public double bench() {
        return work + turning + walking + tools;
    }
}
