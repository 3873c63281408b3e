package shimwright.mechanics.published;

import java.nio.file.Path;

/** The values published by others that are kept in the tree, under {@code published}; they are always there. */
public final class PublishedFiles {
    private static final Path FOLDER = Path.of(System.getProperty("shimwright.root", ".."), "published");

    private PublishedFiles() {}

    /** A file by its path under the folder. */
    public static Path file(String path) {
        return FOLDER.resolve(path);
    }
}
