package shimwright.bench.store.disk;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.Locale;
import java.util.stream.Stream;

/** Writing that has reached the disk when it returns. */
public final class Disk {
    private Disk() {}

    /** Writes a file beside its place, syncs it and moves it there in one go; the caller syncs the folder. */
    public static void write(Path file, Path part, byte[] content) throws IOException {
        try {
            try (FileChannel out = FileChannel.open(
                    part, StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING)) {
                fill(out, 0, content);
                out.force(true);
            }
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException failed) {
            Files.deleteIfExists(part);
            throw failed;
        }
    }

    /** Makes a folder that its owner alone may look into; one that is there is narrowed to that. */
    public static void makePrivateFolder(Path folder) throws IOException {
        makeFolder(folder);
        narrow(folder, "rwx------");
    }

    /** Writes and syncs a new file that its owner alone may read. */
    public static void writePrivate(Path file, byte[] content) throws IOException {
        Path part = file.resolveSibling(file.getFileName() + ".part");
        Files.deleteIfExists(part);
        Files.createFile(part);
        narrow(part, "rw-------");
        write(file, part, content);
        syncFolder(parent(file));
    }

    private static void narrow(Path path, String rights) throws IOException {
        try {
            Files.setPosixFilePermissions(path, PosixFilePermissions.fromString(rights));
        } catch (UnsupportedOperationException otherSystem) {
            return; // a system without such rights: its own apply
        }
    }

    /** Writes all of {@code content} where the channel stands; the caller syncs. */
    public static void fillOn(FileChannel out, byte[] content) throws IOException {
        ByteBuffer rest = ByteBuffer.wrap(content);
        while (rest.hasRemaining()) {
            out.write(rest);
        }
    }

    /** Writes all of {@code content} at {@code position}; the caller syncs. */
    static void fill(FileChannel out, long position, byte[] content) throws IOException {
        ByteBuffer rest = ByteBuffer.wrap(content);
        long at = position;
        while (rest.hasRemaining()) {
            at += out.write(rest, at);
        }
    }

    /** Syncs a file that something else has written. */
    public static void syncFile(Path file) throws IOException {
        try (FileChannel open = FileChannel.open(file, StandardOpenOption.WRITE)) {
            open.force(true);
        }
    }

    /** Syncs the names in a folder. */
    public static void syncFolder(Path folder) throws IOException {
        try (FileChannel names = FileChannel.open(folder, StandardOpenOption.READ)) {
            names.force(true);
        }
    }

    /** Lays a whole file in its folder, made where it is missing, in place of the one before; both synced. */
    public static void lay(Path file, byte[] content) throws IOException {
        makeFolder(parent(file));
        write(file, file.resolveSibling(file.getFileName() + ".part"), content);
        syncFolder(parent(file));
    }

    /** Makes a folder with all above it and syncs the names of those that are new. */
    public static void makeFolder(Path folder) throws IOException {
        if (Files.isDirectory(folder)) {
            return;
        }
        Path above = parent(folder);
        makeFolder(above);
        Files.createDirectories(folder);
        syncFolder(above);
    }

    /** Removes a folder with all in it, or nothing where there is none. */
    public static void deleteAll(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
    }

    /** The folder of a file; of a root the root itself. */
    public static Path parent(Path file) {
        Path above = file.toAbsolutePath().getParent();
        return above == null ? file.toAbsolutePath() : above;
    }

    /** SHA-256 of a file's content, lower-case hex. */
    public static String hash(Path file) throws IOException {
        MessageDigest digest = sha256();
        try (InputStream in = Files.newInputStream(file)) {
            byte[] piece = new byte[1 << 16];
            for (int n = in.read(piece); n >= 0; n = in.read(piece)) {
                digest.update(piece, 0, n);
            }
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    /** SHA-256 of {@code content}, lower-case hex. */
    public static String hash(byte[] content) {
        return HexFormat.of().formatHex(sha256().digest(content));
    }

    /** A new SHA-256. */
    public static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    /** Why the disk refused, in words for a person. */
    public static String why(IOException failed) {
        String said = String.valueOf(failed.getMessage()).toLowerCase(Locale.ROOT);
        if (said.contains("no space left") || said.contains("quota")) {
            return "the disk is full";
        }
        if (said.contains("read-only file system")) {
            return "the disk can only be read";
        }
        if (failed instanceof java.nio.file.AccessDeniedException || said.contains("permission denied")) {
            return "this user may not write there";
        }
        return "the disk answered with an error (" + failed.getMessage() + ")";
    }
}
