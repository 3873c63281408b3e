package shimwright.bench.web.pair;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Files and folders that only their owner may read, from the moment they are there. */
final class OwnerOnlyFiles {
    private static final FileAttribute<Set<PosixFilePermission>> FILE =
            PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"));
    private static final FileAttribute<Set<PosixFilePermission>> FOLDER =
            PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------"));

    private OwnerOnlyFiles() {}

    static void folder(@Nullable Path folder) throws IOException {
        if (folder != null && !Files.isDirectory(folder)) {
            if (posix(folder)) {
                Files.createDirectories(folder, FOLDER);
            } else {
                Files.createDirectories(folder);
            }
        }
    }

    /** Makes an empty file where there is none. */
    static void file(Path path) throws IOException {
        if (Files.exists(path)) {
            return;
        }
        try {
            if (posix(path)) {
                Files.createFile(path, FILE);
            } else {
                Files.createFile(path);
            }
        } catch (FileAlreadyExistsException another) {
            // another program was quicker, and made it just so
        }
    }

    private static boolean posix(Path path) {
        return path.getFileSystem().supportedFileAttributeViews().contains("posix");
    }
}
