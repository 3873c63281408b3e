package shimwright.bench.store.log;

import java.time.Instant;
import java.util.List;
import shimwright.rebuild.job.Draft;
import shimwright.rebuild.job.EntryCodec;
import shimwright.rebuild.job.Head;

/** An entry's texts as they are stored and hashed, whatever its place in the log. */
public record EntryText(String stream, String id, String at, String by, String device, String type, String body) {
    /**
     * The texts of a draft.
     *
     * @throws IllegalStateException for a draft that could not be read back: it must never get in
     */
    public static EntryText of(Draft draft) {
        EntryText written = new EntryText(
                draft.stream(),
                draft.id(),
                draft.at().toString(),
                draft.by(),
                draft.device(),
                EntryCodec.typeOf(draft.body()),
                EntryCodec.write(draft.body()));
        written.draft();
        return written;
    }

    Draft draft() {
        // the same in every entry of a job: held once
        return new Draft(
                stream.intern(), id, Instant.parse(at), by.intern(), device.intern(), EntryCodec.read(type, body));
    }

    /** The hash that follows {@code previous}. */
    String hash(Head previous) {
        return device.isEmpty()
                ? Chain.next(previous.hash(), 1, List.of(stream, id, at, by, type, body))
                : Chain.next(previous.hash(), 2, List.of(stream, id, at, by, type, body, device));
    }

    /** Whether a post of the same id says the same as this entry, by whomever and whenever. */
    boolean saysTheSame(EntryText other) {
        return id.equals(other.id)
                && stream.equals(other.stream)
                && type.equals(other.type)
                && draft().body().equals(other.draft().body());
    }
}
