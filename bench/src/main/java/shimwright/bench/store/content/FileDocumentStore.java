package shimwright.bench.store.content;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import shimwright.bench.store.disk.Disk;
import shimwright.bench.store.log.Fault;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.DocumentStore;

/** Documents as files of the data folder. */
public final class FileDocumentStore implements DocumentStore {
    private static final int MAX_BYTES = 4 << 20;

    private final HashedFiles files;

    private FileDocumentStore(HashedFiles files) {
        this.files = files;
    }

    /** Opens or makes the folder. */
    public static Outcome<FileDocumentStore> open(Path folder) {
        FileDocumentStore store = over(folder);
        try {
            store.files.begin();
            return Outcome.ok(store);
        } catch (IOException failed) {
            return Outcome.refused(List.of(Fault.notWritable(folder, Disk.why(failed))));
        }
    }

    /** The same for finding only: makes and removes nothing. */
    public static FileDocumentStore over(Path folder) {
        return new FileDocumentStore(new HashedFiles(folder, List.of("")));
    }

    @Override
    public Outcome<String> keep(String name, byte[] content) {
        Outcome<String> checked = checked(name, content);
        if (!(checked instanceof Outcome.Ok<String> ok)) {
            return checked;
        }
        String hash = ok.value();
        try {
            files.keep(hash, "", content);
            return Outcome.ok(hash);
        } catch (IOException failed) {
            return Outcome.refused(
                    List.of(Refusal.at(name, "not kept: " + Disk.why(failed), "Put that right and send it again")));
        }
    }

    /** The hash of a document that may be kept. */
    public static Outcome<String> checked(String name, byte[] content) {
        if (content.length == 0) {
            return Outcome.refused(Refusal.at(name, "the file is empty", "Choose another"));
        }
        if (content.length > MAX_BYTES) {
            return Outcome.refused(Refusal.at(
                    name,
                    String.format(Locale.ROOT, "the file has %.1f MB, more than 4 MB", content.length / 1048576.0),
                    "Make it shorter"));
        }
        return Outcome.ok(Disk.hash(content));
    }

    @Override
    public Optional<byte[]> find(String hash) {
        return files.find(hash);
    }
}
