package shimwright.rebuild.job;

import java.time.Instant;

/**
 * An entry before it is kept.
 *
 * @param stream the job's id, or {@link JobLog#SHOP}
 * @param id made by the client, so that a post repeated is the same entry
 * @param at when it happened, by the server's clock; of what had to wait on its screen, as long before that as it waited
 * @param by who
 * @param device the paired device it came from; empty at the program's own machine
 * @param body what
 */
public record Draft(String stream, String id, Instant at, String by, String device, Entry body) {
    /** An entry made at the program's own machine. */
    public Draft(String stream, String id, Instant at, String by, Entry body) {
        this(stream, id, at, by, "", body);
    }
}
