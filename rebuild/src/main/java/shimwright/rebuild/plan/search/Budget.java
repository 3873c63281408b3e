package shimwright.rebuild.plan.search;

/**
 * How much looking is allowed.
 *
 * @param widest widest beam, 1 or more
 * @param states most states made by the exact search; 0 for the beam alone
 */
public record Budget(int widest, long states) {
    /** For a page: an answer at once. */
    public static Budget page() {
        return new Budget(64, 20_000);
    }

    /** For a proof in the background. */
    public static Budget proof() {
        return new Budget(1024, 2_000_000);
    }
}
