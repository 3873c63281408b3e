package shimwright.bench.store.sign;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.Signing.Occasion;

/**
 * What a shop's owner keeps apart from all data folders: the key that signs, and the heads that went out. It belongs in no
 * backup of a data folder.
 */
public final class OwnerFolder {
    private final Path root;
    private final Clock clock;
    private final RememberedHeads heads;

    public OwnerFolder(Path root, Clock clock) {
        this.root = root;
        this.clock = clock;
        this.heads = new RememberedHeads(root.resolve("heads"));
    }

    /** The folder of the user who runs the program: as the property {@code shimwright.owner} says, else by custom of the system. */
    public static OwnerFolder ofUser(Clock clock) {
        String given = System.getProperty("shimwright.owner", "");
        if (!given.isEmpty()) {
            return new OwnerFolder(Path.of(given), clock);
        }
        String custom = Optional.ofNullable(System.getenv("XDG_CONFIG_HOME"))
                .filter(path -> !path.isBlank())
                .orElse(Path.of(System.getProperty("user.home", "."), ".config").toString());
        return new OwnerFolder(Path.of(custom, "shimwright"), clock);
    }

    /** The folder. */
    public Path root() {
        return root;
    }

    /** The key, made where there is none. */
    public SigningKey key() throws IOException {
        return SigningKey.of(root.resolve("key"));
    }

    /** Whether there is a key. */
    public boolean hasKey() {
        return java.nio.file.Files.exists(root.resolve("key"));
    }

    /** The heads that were remembered. */
    public RememberedHeads heads() {
        return heads;
    }

    /** Signs what an owner saw. */
    public SignedHead sign(SignedHead.What what, String shop, String stream, Head head, Optional<String> document) {
        try {
            return SignedHead.by(key(), what, shop, stream, head, document);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** Keeps a head apart from the shop: printed, backed up, handed back or paired. */
    public void remember(Occasion occasion, String shop, String stream, Head head, String folder) throws IOException {
        heads.add(new RememberedHeads.Remembered(occasion, shop, stream, head, clock.instant(), folder));
    }
}
