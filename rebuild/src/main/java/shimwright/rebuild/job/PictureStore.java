package shimwright.rebuild.job;

import java.util.Optional;
import shimwright.mechanics.outcome.Outcome;

/** Pictures by the hash of their content. */
public interface PictureStore {
    /** A kept picture. */
    record Picture(String hash, String mediaType, long size, int width, int height) {}

    /**
     * Writes and syncs a picture before it returns.
     *
     * @param name the file's name as given, for the sentence of a refusal
     * @param content PNG or JPEG, up to 12 MB and 50 megapixels; anything else is refused with what it is
     */
    Outcome<Picture> keep(String name, byte[] content);

    /** What {@link #keep} would say; keeps nothing. */
    Outcome<Picture> check(String name, byte[] content);

    /** The picture's content, if it is there and still matches its hash. */
    Optional<byte[]> find(String hash);
}
