package shimwright.bench.web.pair;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A device that was let in.
 *
 * @param id a short name of the program's own
 * @param name what people call it
 * @param person whose it is; empty where several use it
 * @param role what it may do
 * @param keyHash SHA-256 of its key, lower-case hex; the key itself is kept by the device alone
 * @param since when it was let in
 * @param until when it must be paired again
 * @param revoked when it was let out; null while it is in
 * @param revokedBy who let it out; empty while it is in
 */
public record Device(
        String id,
        String name,
        String person,
        Role role,
        String keyHash,
        Instant since,
        Instant until,
        @Nullable Instant revoked,
        String revokedBy) {

    /** True while it is let in. */
    public boolean in(Instant now) {
        return revoked == null && now.isBefore(until);
    }

    Device out(Instant at, String by) {
        return new Device(id, name, person, role, keyHash, since, until, at, by);
    }
}
