package shimwright.rebuild.job;

/**
 * An entry as it stands in the log.
 *
 * @param number 1, 2, 3 … over the whole log
 * @param streamNumber 1, 2, 3 … within its stream
 * @param draft the entry
 * @param chain SHA-256 over the previous entry's hash and this entry's text
 * @param streamChain the same along its stream alone
 */
public record LogEntry(long number, long streamNumber, Draft draft, ChainHash chain, ChainHash streamChain) {
    /**
     * An entry with its hashes as they are written, 64 hexadecimal digits each.
     *
     * @throws IllegalArgumentException for anything else
     */
    public LogEntry(long number, long streamNumber, Draft draft, String hash, String streamHash) {
        this(number, streamNumber, draft, ChainHash.of(hash), ChainHash.of(streamHash));
    }

    /** The hash along the whole log, lower-case hex. */
    public String hash() {
        return chain.hex();
    }

    /** The hash along its stream, lower-case hex. */
    public String streamHash() {
        return streamChain.hex();
    }

    /** What the entry says. */
    public Entry body() {
        return draft.body();
    }

    /** How far the log goes with it. */
    public Head head() {
        return new Head(number, hash());
    }

    /** How far its stream goes with it. */
    public Head streamHead() {
        return new Head(streamNumber, streamHash());
    }
}
