package shimwright.bench.store.log;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import shimwright.bench.store.disk.Disk;

/**
 * The hash chain of the log.
 *
 * <p>{@code hash = SHA-256(version ‖ previous ‖ n₁ ‖ text₁ ‖ … ‖ nₖ ‖ textₖ)} with one version byte, the previous
 * hash as 32 bytes (zeros before the first entry), and the entry's texts as UTF-8, each after its length in bytes as a
 * 4-byte big-endian number. Version 1 has stream, id, time, person, type and body; version 2 the device as a seventh, and
 * is written where there is one. Lengths make the text unambiguous: no two entries share one.
 */
public final class Chain {
    private Chain() {}

    /** The hash of the entry that follows {@code previous}; both lower-case hex. Nothing follows what is no hash. */
    public static String next(String previous, int version, List<String> texts) {
        MessageDigest digest = Disk.sha256();
        digest.update((byte) version);
        try {
            digest.update(HexFormat.of().parseHex(previous));
        } catch (IllegalArgumentException damaged) {
            return "";
        }
        for (String text : texts) {
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            digest.update(
                    ByteBuffer.allocate(Integer.BYTES).putInt(bytes.length).array());
            digest.update(bytes);
        }
        return HexFormat.of().formatHex(digest.digest());
    }
}
