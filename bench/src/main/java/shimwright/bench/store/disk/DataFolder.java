package shimwright.bench.store.disk;

import java.nio.file.Path;

/**
 * Where things lie in a data folder, and in a backup of one.
 *
 * @param root the folder
 */
public record DataFolder(Path root) {
    /** The job log. */
    public Path database() {
        return root.resolve("shimwright.db");
    }

    /** How far the job log goes, kept apart from it. */
    public Path head() {
        return root.resolve("head");
    }

    /** Pictures by their hash. */
    public Path pictures() {
        return root.resolve("pictures");
    }

    /** Documents that entries stand on, by their hash. */
    public Path documents() {
        return root.resolve("documents");
    }

    /** Unit files of the shop. */
    public Path units() {
        return root.resolve("units");
    }

    /** Summaries of streams, worked out from the log; no backup needs them. */
    public Path summaries() {
        return root.resolve("summaries");
    }

    /** How far the log was walked and found sound. */
    public Path checked() {
        return root.resolve("checked");
    }

    /** The hashes of the folder's own files when the program stopped. */
    public Path sums() {
        return root.resolve("sums");
    }

    /** In a backup: the signature over its manifest. */
    public Path signature() {
        return root.resolve("signature");
    }

    /** Devices that were let in, and the certificate by which they know the shop; no backup takes it. */
    public Path network() {
        return root.resolve("network");
    }

    /** Held while a program writes here. */
    public Path lock() {
        return root.resolve("lock");
    }

    /** In a backup: every file with its size and hash. */
    public Path manifest() {
        return root.resolve("manifest");
    }
}
