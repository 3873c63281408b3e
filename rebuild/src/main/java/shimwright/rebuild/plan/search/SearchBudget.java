package shimwright.rebuild.plan.search;

/**
 * How much looking is allowed.
 *
 * @param widest widest beam, 1 or more
 * @param states most states made; the first, narrowest beam is sent whatever it takes
 * @param bytes most bytes that the states at hand may take
 */
public record SearchBudget(int widest, long states, long bytes) {
    private static final long MEBIBYTE = 1 << 20;

    /** With the memory of a proof. */
    public SearchBudget(int widest, long states) {
        this(widest, states, 64 * MEBIBYTE);
    }

    /** For a page: an answer at once. */
    public static SearchBudget page() {
        return new SearchBudget(64, 20_000, 8 * MEBIBYTE);
    }

    /** For a proof in the background. */
    public static SearchBudget proof() {
        return new SearchBudget(1 << 20, 4_000_000, 64 * MEBIBYTE);
    }
}
