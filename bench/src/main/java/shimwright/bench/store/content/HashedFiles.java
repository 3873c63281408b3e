package shimwright.bench.store.content;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import shimwright.bench.store.disk.Disk;

/**
 * Files named by the SHA-256 of their content, in two levels of folders. One without an entry that names it does no harm;
 * it is there when the entry is posted again.
 */
final class HashedFiles {
    private static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");

    private final Path folder;
    private final Path parts;
    private final List<String> endings;

    /**
     * The files of a folder, which need not be there yet.
     *
     * @param endings what may follow the hash in a file's name
     */
    HashedFiles(Path folder, List<String> endings) {
        this.folder = folder.toAbsolutePath();
        this.parts = this.folder.resolve("part");
        this.endings = endings;
    }

    /** Makes the folder and throws away what was being written when the program last died. */
    void begin() throws IOException {
        Disk.makeFolder(parts);
        try (Stream<Path> left = Files.list(parts)) {
            for (Path part : left.toList()) {
                Files.delete(part);
            }
        }
    }

    /** Writes and syncs a file, unless it is there already as it should be. */
    void keep(String hash, String ending, byte[] content) throws IOException {
        Path file = place(hash, ending);
        if (!Files.exists(file) || !hash.equals(Disk.hash(file))) {
            Disk.makeFolder(Disk.parent(file));
            Disk.write(file, parts.resolve(UUID.randomUUID().toString()), content);
        }
        // also for a file that was there: the one who put it there may have died before this
        for (Path names = Disk.parent(file); !names.equals(Disk.parent(folder)); names = Disk.parent(names)) {
            Disk.syncFolder(names);
        }
    }

    private Path place(String hash, String ending) {
        return folder.resolve(hash.substring(0, 2))
                .resolve(hash.substring(2, 4))
                .resolve(hash + ending);
    }

    /** Where a file lies; empty when there is none of this hash. */
    Optional<Path> file(String hash) {
        if (!HASH.matcher(hash).matches()) {
            return Optional.empty();
        }
        return endings.stream()
                .map(ending -> place(hash, ending))
                .filter(Files::isRegularFile)
                .findFirst();
    }

    /** The content, if it is there and still matches its hash. */
    Optional<byte[]> find(String hash) {
        Optional<Path> file = file(hash);
        if (file.isEmpty()) {
            return Optional.empty();
        }
        try {
            byte[] content = Files.readAllBytes(file.get());
            return hash.equals(Disk.hash(content)) ? Optional.of(content) : Optional.empty();
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }
}
