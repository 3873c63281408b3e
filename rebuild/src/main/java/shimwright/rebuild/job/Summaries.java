package shimwright.rebuild.job;

import java.util.List;

/**
 * What was worked out from streams, kept so that a stream need not be read again to know its line: how it is listed, and which
 * pieces of the drawer are in it. All of it may be lost at any time and is then worked out anew; what is not as it was written
 * counts as lost.
 */
public interface Summaries {
    /**
     * A summary of a stream.
     *
     * @param head how far the stream went when it was made; one that went on since needs another
     * @param text anything
     */
    record Summary(String stream, Head head, String text) {}

    /** The head of the log up to which every stream has its summary; look at {@link JobLog#since} for the rest. */
    Head upTo();

    /** All of them, in the order in which the streams were first summed up. */
    List<Summary> all();

    /**
     * Keeps summaries in the place of those of the same streams.
     *
     * @param upTo the head of the log for which all summaries now hold
     */
    void keep(Head upTo, List<Summary> changed);
}
