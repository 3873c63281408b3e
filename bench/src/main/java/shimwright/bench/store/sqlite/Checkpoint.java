package shimwright.bench.store.sqlite;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import shimwright.bench.store.disk.DataFolder;
import shimwright.bench.store.disk.Disk;
import shimwright.bench.store.sign.SigningKey;
import shimwright.rebuild.job.Head;

/**
 * How far a log was walked and found sound, under a checksum that only the owner's key can make: a start need not walk
 * that part again. Without it, or with one that does not fit, all is walked.
 */
final class Checkpoint {
    private static final Pattern TEXT =
            Pattern.compile("shimwright checked 1 ([0-9]{1,18}) ([0-9a-f]{64}) ([0-9a-f]{64})\n");

    private Checkpoint() {}

    /** How far; nothing where the file is not one that this key made. */
    static Head read(DataFolder files, SigningKey key) throws IOException {
        if (!Files.isRegularFile(files.checked())) {
            return Head.EMPTY;
        }
        Matcher text = TEXT.matcher(Files.readString(files.checked(), StandardCharsets.ISO_8859_1));
        if (!text.matches()) {
            return Head.EMPTY;
        }
        Head head = new Head(Long.parseLong(text.group(1)), text.group(2));
        return Optional.of(head).filter(h -> text.group(3).equals(mac(h, key))).orElse(Head.EMPTY);
    }

    static void write(DataFolder files, SigningKey key, Head head) throws IOException {
        Path file = files.checked();
        String text = "shimwright checked 1 " + head.count() + " " + head.hash() + " " + mac(head, key) + "\n";
        Disk.write(file, file.resolveSibling("checked.part"), text.getBytes(StandardCharsets.US_ASCII));
        Disk.syncFolder(files.root());
    }

    private static String mac(Head head, SigningKey key) {
        return key.mac("checked " + head.count() + " " + head.hash());
    }
}
