package shimwright.bench.store.backup;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import shimwright.bench.store.disk.DataFolder;
import shimwright.bench.store.disk.Disk;
import shimwright.bench.store.disk.HeadFile;
import shimwright.bench.store.disk.Manifest;
import shimwright.bench.store.log.Schema;
import shimwright.bench.store.log.Sql;
import shimwright.bench.store.postgres.PostgresServer;
import shimwright.bench.store.sign.OwnerFolder;
import shimwright.bench.store.sign.SignedHead;
import shimwright.bench.store.sqlite.LogCheck;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.Signing;

/**
 * Backups of a data folder: a folder with a copy of the log taken in one piece, its head, the pictures that its entries
 * name, the shop's unit files, and a list of all of them with hashes. It may be made while a program writes.
 */
public final class Backup {
    private Backup() {}

    /**
     * What a backup holds.
     *
     * @param head how far its log goes
     * @param files the number of its files
     * @param missing pictures that entries name and that were not in the data folder, or not whole
     */
    public record Made(Head head, int files, List<Refusal> missing) {}

    /**
     * Makes a backup and checks the copy, not the original.
     *
     * @param data the data folder
     * @param target a folder that is not there yet or is empty; it appears only when the backup is whole
     */
    public static Outcome<Made> make(Path data, Path target) {
        return make(data, target, Optional.empty());
    }

    /**
     * The same, signed and remembered.
     *
     * @param owner whose key signs
     */
    public static Outcome<Made> make(Path data, Path target, Optional<OwnerFolder> owner) {
        return make(new FolderOrigin(new DataFolder(data)), target, owner);
    }

    /**
     * The same of a database that several benches share.
     *
     * @param address as on the command line
     */
    public static Outcome<Made> make(String address, Path target, Optional<OwnerFolder> owner) {
        return PostgresServer.of(address)
                .flatMap(PostgresServer::migrate)
                .flatMap(server -> make(new PostgresOrigin(server), target, owner));
    }

    /** Where a backup is taken from. */
    interface Origin {
        /** As it is remembered. */
        String name();

        /** Whether there is a log. */
        boolean isThere();

        /** Copies the log as it stands at one moment. */
        void copyLog(DataFolder to) throws IOException, SQLException;

        /** Copies what entries name and all else that belongs to the shop; says what is missing. */
        List<Refusal> copyRest(DataFolder to) throws IOException, SQLException;
    }

    private static Outcome<Made> make(Origin from, Path target, Optional<OwnerFolder> owner) {
        return guarded(target, () -> {
            Outcome<Path> part = begin(target);
            if (!(part instanceof Outcome.Ok<Path> begun)) {
                return Outcome.refused(part.refusals());
            }
            if (!from.isThere()) {
                return Outcome.refused(Refusal.at(from.name(), "there is no job log here", "Name a data folder"));
            }
            DataFolder to = new DataFolder(begun.value());
            from.copyLog(to);
            Outcome<Head> log = head(to);
            if (!(log instanceof Outcome.Ok<Head> head)) {
                return Outcome.refused(log.refusals());
            }
            List<Refusal> missing = from.copyRest(to);
            Files.writeString(to.manifest(), Manifest.of(to.root()), StandardCharsets.UTF_8);
            sign(from, to, head.value(), owner);
            Outcome<Made> checked = check(to.root());
            return checked.flatMap(made -> finish(to.root(), target, new Made(head.value(), made.files(), missing)));
        });
    }

    /** Signs and remembers a backup; an empty log has nothing to sign. */
    private static void sign(Origin from, DataFolder to, Head head, Optional<OwnerFolder> owner)
            throws IOException, SQLException {
        Optional<String> shop = shop(to);
        if (owner.isPresent() && shop.isPresent()) {
            SignedHead signed = owner.get()
                    .sign(SignedHead.What.BACKUP, shop.get(), "", head, Optional.of(Disk.hash(to.manifest())));
            Files.writeString(to.signature(), signed.line() + "\n", StandardCharsets.US_ASCII);
            owner.get().remember(Signing.Occasion.BACKED_UP, shop.get(), "", head, from.name());
        }
    }

    /** Checks a backup: every file against its list, the database's pages, the chain and the head. */
    public static Outcome<Made> check(Path backup) {
        return guarded(backup, () -> {
            DataFolder files = new DataFolder(backup);
            Outcome<List<Path>> listed = Manifest.check(files);
            if (!(listed instanceof Outcome.Ok<List<Path>> known)) {
                return Outcome.refused(listed.refusals());
            }
            return new LogCheck(files)
                    .check(false)
                    .map(head -> new Made(head, known.value().size(), List.of()));
        });
    }

    /**
     * Puts a backup into a new data folder after checking it, and checks what arrived.
     *
     * @param target a folder that is not there yet or is empty
     */
    public static Outcome<Made> restore(Path backup, Path target) {
        Outcome<Made> sound = check(backup);
        if (!sound.isOk()) {
            return sound;
        }
        return guarded(target, () -> {
            Outcome<Path> part = begin(target);
            if (!(part instanceof Outcome.Ok<Path> begun)) {
                return Outcome.refused(part.refusals());
            }
            DataFolder from = new DataFolder(backup);
            Outcome<List<Path>> listed = Manifest.check(from);
            if (!(listed instanceof Outcome.Ok<List<Path>> known)) {
                return Outcome.refused(listed.refusals());
            }
            DataFolder to = new DataFolder(begun.value());
            copy(from.root().toAbsolutePath().normalize(), known.value(), to.root());
            Files.copy(from.manifest(), to.manifest(), LinkOption.NOFOLLOW_LINKS);
            Outcome<Made> arrived = check(to.root());
            Files.deleteIfExists(to.manifest());
            return arrived.flatMap(made -> finish(begun.value(), target, made));
        });
    }

    /**
     * Puts a backup into a database that holds no shop yet, after checking it.
     *
     * @param address as on the command line
     */
    public static Outcome<Made> restore(Path backup, String address) {
        Outcome<Made> sound = check(backup);
        return sound.flatMap(made -> PostgresServer.of(address)
                .flatMap(PostgresServer::migrate)
                .flatMap(server -> guarded(
                        backup,
                        () -> new PostgresOrigin(server)
                                .fill(new DataFolder(backup))
                                .map(done -> made))));
    }

    /**
     * Copies a backup into a new data folder as it is: for a folder that is opened at once, since opening checks the log
     * and every picture is checked when it is read.
     *
     * @param target a folder that is not there yet or is empty
     */
    public static Outcome<Path> lay(Path backup, Path target) {
        return guarded(target, () -> {
            Outcome<Path> part = begin(target);
            if (part instanceof Outcome.Ok<Path> begun) {
                copyAll(backup, begun.value());
                Files.deleteIfExists(new DataFolder(begun.value()).manifest());
                Files.deleteIfExists(target);
                Files.move(begun.value(), target, StandardCopyOption.ATOMIC_MOVE);
            }
            return part;
        });
    }

    private interface Work<T> {
        Outcome<T> run() throws IOException, SQLException;
    }

    private static <T> Outcome<T> guarded(Path place, Work<T> work) {
        try {
            return work.run();
        } catch (IOException failed) {
            return Outcome.refused(
                    Refusal.at(place.toString(), "not done: " + Disk.why(failed), "Put that right and try again"));
        } catch (SQLException failed) {
            return Outcome.refused(
                    Refusal.at(place.toString(), "not done: " + Sql.why(failed), "Put that right and try again"));
        }
    }

    /** An empty folder beside the target to work in. */
    private static Outcome<Path> begin(Path target) throws IOException {
        if (Files.exists(target) && !isEmptyFolder(target)) {
            return Outcome.refused(Refusal.at(
                    target.toString(), "there is something here already", "Name a folder that is not there yet"));
        }
        Path part = target.resolveSibling(target.getFileName() + ".part");
        Disk.deleteAll(part);
        Disk.makePrivateFolder(part);
        return Outcome.ok(part);
    }

    private static boolean isEmptyFolder(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return false;
        }
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.findAny().isEmpty();
        }
    }

    private static Outcome<Made> finish(Path part, Path target, Made made) {
        return guarded(target, () -> {
            for (Path file : Manifest.files(part)) {
                Disk.syncFile(file);
                Disk.syncFolder(Disk.parent(file));
            }
            Files.deleteIfExists(target);
            Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
            Disk.syncFolder(Disk.parent(target));
            return Outcome.ok(made);
        });
    }

    /** Checks the copied log and writes its head file. */
    private static Outcome<Head> head(DataFolder to) throws IOException {
        Outcome<Head> log = new LogCheck(to).check(true);
        if (log instanceof Outcome.Ok<Head> head) {
            new HeadFile(to.head()).write(head.value());
        }
        return log;
    }

    private static Optional<String> shop(DataFolder copy) throws SQLException {
        try (Connection database = Sql.toRead(copy.database())) {
            return Schema.version(database) == 0 ? Optional.empty() : Sql.shop(database);
        }
    }

    static void copyAll(Path from, Path to) throws IOException {
        copy(from, Manifest.files(from), to);
    }

    private static void copy(Path from, List<Path> files, Path to) throws IOException {
        for (Path file : files) {
            Path copy = to.resolve(from.relativize(file).toString());
            Files.createDirectories(Disk.parent(copy));
            Files.copy(file, copy);
        }
    }
}
