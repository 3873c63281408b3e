package shimwright.rebuild.job;

/**
 * An entry as it stands in the log.
 *
 * @param number 1, 2, 3 … over the whole log
 * @param streamNumber 1, 2, 3 … within its stream
 * @param draft the entry
 * @param hash SHA-256 over the previous entry's hash and this entry's text, lower-case hex
 * @param streamHash the same along its stream alone
 */
public record LogEntry(long number, long streamNumber, Draft draft, String hash, String streamHash) {
    /** What the entry says. */
    public Entry body() {
        return draft.body();
    }

    /** How far the log goes with it. */
    public Head head() {
        return new Head(number, hash);
    }

    /** How far its stream goes with it. */
    public Head streamHead() {
        return new Head(streamNumber, streamHash);
    }
}
