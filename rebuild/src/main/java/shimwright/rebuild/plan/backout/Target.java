package shimwright.rebuild.plan.backout;

/** What one wants to get back to. */
public sealed interface Target {
    /** The id that was asked for. */
    String id();

    /** How far an item must come out. */
    enum Want {
        /** Seen, read and touched where it is, through an opening that is still there, or else taken out. */
        REACH,
        /** In the hand, with whatever it is mounted on. */
        OUT,
        /** Alone in the hand, off whatever it was mounted on, so that another can take its place. */
        RENEW
    }

    /** An item of the unit. */
    record OfItem(String id, Want want) implements Target {}

    /** The moment before a step. */
    record OfStep(String id) implements Target {}

    /** A clearance set anew: its pack out and its reading to be taken again. */
    record OfClearance(String id) implements Target {}
}
