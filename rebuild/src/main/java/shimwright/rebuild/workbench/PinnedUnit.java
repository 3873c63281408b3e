package shimwright.rebuild.workbench;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType;

/** A unit file as it was read, under the hash of its content; two are the same when their hashes are. */
public final class PinnedUnit {
    /** What was hashed last: one change of a file asks several times. */
    private static volatile @Nullable Hashed latest;

    @SuppressWarnings("ArrayRecordComponent") // compared as what it is, an array
    private record Hashed(byte[] content, String hash) {}

    private final String hash;
    private final UnitType type;
    private final Map<String, Unit> resolved = new ConcurrentHashMap<>();

    /**
     * A unit file that was read.
     *
     * @param hash SHA-256 of its bytes, lower-case hex; empty where nobody kept them
     * @param type what it says
     */
    public PinnedUnit(String hash, UnitType type) {
        this.hash = hash;
        this.type = type;
    }

    /** SHA-256 of a file, lower-case hex. */
    public static String hash(byte[] content) {
        Hashed known = latest;
        if (known != null && Arrays.equals(known.content(), content)) {
            return known.hash();
        }
        try {
            String hash = HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(content));
            latest = new Hashed(content.clone(), hash);
            return hash;
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("every Java has SHA-256", missing);
        }
    }

    /** SHA-256 over the text of the file, lower-case hex. */
    public String hash() {
        return hash;
    }

    /** The unit type that the file describes. */
    public UnitType type() {
        return type;
    }

    /** The unit of a variant, resolved once; empty where the file has none of that name. */
    public Optional<Unit> unit(String variant) {
        return type.variants().containsKey(variant)
                ? Optional.of(resolved.computeIfAbsent(variant, type::resolve))
                : Optional.empty();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof PinnedUnit unit && unit.hash.equals(hash) && unit.type.equals(type);
    }

    @Override
    public int hashCode() {
        return hash.hashCode();
    }

    @Override
    public String toString() {
        return type.id() + " " + hash;
    }
}
