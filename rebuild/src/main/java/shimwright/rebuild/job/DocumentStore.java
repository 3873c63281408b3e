package shimwright.rebuild.job;

import java.util.Optional;
import shimwright.mechanics.outcome.Outcome;

/** Files that entries stand on, such as a job's unit file, by the hash of their content. */
public interface DocumentStore {
    /**
     * Writes and syncs a document before it returns; one that is there already is left as it is.
     *
     * @param name the file's name as given, for the sentence of a refusal
     * @param content 1 byte to 4 MB
     * @return SHA-256 of the content, lower-case hex
     */
    Outcome<String> keep(String name, byte[] content);

    /** The document's content, if it is there and still matches its hash. */
    Optional<byte[]> find(String hash);
}
