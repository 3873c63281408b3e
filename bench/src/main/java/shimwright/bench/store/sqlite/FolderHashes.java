package shimwright.bench.store.sqlite;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import shimwright.bench.store.disk.DataFolder;
import shimwright.bench.store.disk.Disk;
import shimwright.bench.store.disk.Manifest;
import shimwright.bench.store.log.Fault;
import shimwright.bench.store.sign.OwnerFolder;
import shimwright.bench.store.sign.SignedHead;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Head;

/**
 * The hashes of a data folder's own files as the program left them, signed: written when it stops and thrown away when it
 * starts. They see a change even where no entry lies, as in the unused part of a page.
 */
public final class FolderHashes {
    private static final long MAX_BYTES = 256L << 20;

    private FolderHashes() {}

    /** What was found: nothing to compare with, or all that differs. */
    public record Found(boolean compared, Optional<SignedHead> by, List<Refusal> faults) {}

    static void forget(DataFolder files) throws IOException {
        Files.deleteIfExists(files.sums());
    }

    /** Writes them, unless the log is so large that hashing it would hold up the stop, or another program has it open. */
    public static void write(DataFolder files, OwnerFolder owner, String shop, Head head) throws IOException {
        Path wal = files.database().resolveSibling(files.database().getFileName() + "-wal");
        if (Files.exists(wal) || Files.size(files.database()) > MAX_BYTES) {
            return;
        }
        String list = list(files);
        SignedHead signed = owner.sign(SignedHead.What.FOLDER, shop, "", head, Optional.of(Disk.hash(bytes(list))));
        Disk.write(files.sums(), files.sums().resolveSibling("sums.part"), bytes(list + signed.line() + "\n"));
        Disk.syncFolder(files.root());
    }

    private static String list(DataFolder files) throws IOException {
        List<Path> own = Stream.of(files.database(), files.head(), files.checked())
                .filter(Files::isRegularFile)
                .toList();
        return Manifest.lines(files.root(), own);
    }

    /** Compares the files with their sums. */
    public static Found check(DataFolder files, Head head) throws IOException {
        if (!Files.isRegularFile(files.sums())) {
            return new Found(false, Optional.empty(), List.of());
        }
        String text = Files.readString(files.sums(), StandardCharsets.ISO_8859_1);
        int last = text.lastIndexOf('\n', text.length() - 2) + 1;
        Optional<SignedHead> signed = text.endsWith("\n")
                ? SignedHead.of(text.substring(last, text.length() - 1)).filter(SignedHead::isSound)
                : Optional.empty();
        String list = text.substring(0, last);
        if (signed.isEmpty()
                || signed.get().what() != SignedHead.What.FOLDER
                || !signed.get().document().equals(Disk.hash(bytes(list)))) {
            return new Found(
                    true,
                    Optional.empty(),
                    List.of(Fault.at(files.sums(), "the sums of the folder's files were changed", "")));
        }
        if (!list.equals(list(files)) || !signed.get().head().equals(head)) {
            return new Found(true, signed, Manifest.faults(files.root(), list, "since the program stopped"));
        }
        return new Found(true, signed, List.of());
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }
}
