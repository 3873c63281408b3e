package shimwright.rebuild.job;

import java.time.Instant;

/**
 * An entry before it is kept.
 *
 * @param stream the job's id, or {@link JobLog#SHOP}
 * @param id made by the client, so that a post repeated is the same entry
 * @param at when it happened, by the server's clock
 * @param by who
 * @param body what
 */
public record Draft(String stream, String id, Instant at, String by, Entry body) {}
