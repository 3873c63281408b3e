package shimwright.bench.store.log;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import shimwright.bench.store.disk.DataFolder;
import shimwright.bench.store.sign.OwnerFolder;
import shimwright.bench.store.sign.RememberedHeads;
import shimwright.bench.store.sign.RememberedHeads.Remembered;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Head;

/** Compares a log that is sound in itself with what was seen of it before. */
public final class OwnerCheck {
    private final Path folder;
    private final DataFolder files;

    public OwnerCheck(DataFolder files) {
        this.files = files;
        this.folder = files.root();
    }

    /** Whether a shop was here of which only pictures or documents are left. */
    public Optional<Refusal> gone() throws IOException {
        boolean log = Files.exists(files.database()) && Files.size(files.database()) > 0;
        if (log || Files.exists(files.head())) {
            return Optional.empty();
        }
        return holdsFiles(files.pictures()) || holdsFiles(files.documents())
                ? Optional.of(Fault.gone(folder))
                : Optional.empty();
    }

    private static boolean holdsFiles(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return false;
        }
        try (Stream<Path> all = Files.walk(folder)) {
            return all.anyMatch(Files::isRegularFile);
        }
    }

    /** Whether the newest head remembered of this folder is still one of this log; the work of one look-up. */
    public Optional<Refusal> newest(OwnerFolder owner, Head log) throws IOException, SQLException {
        if (log.count() == 0) {
            // nothing to look into: then only what is remembered counts
            Optional<String> before = owner.heads().shopIn(RememberedHeads.name(folder));
            return before.isEmpty()
                    ? Optional.empty()
                    : owner.heads().binding(before.get(), RememberedHeads.name(folder)).stream()
                            .filter(one -> one.stream().isEmpty() && one.head().count() > 0)
                            .max(Comparator.comparingLong(one -> one.head().count()))
                            .map(one -> Fault.rolledBack(folder, one, log));
        }
        try (Connection database = Sql.toRead(files.database())) {
            return newest(owner, RememberedHeads.name(folder), database, log);
        }
    }

    /** The same over a connection. */
    public static Optional<Refusal> newest(OwnerFolder owner, String folder, Connection database, Head log)
            throws IOException, SQLException {
        Optional<String> before = owner.heads().shopIn(folder);
        if (before.isEmpty()) {
            return Optional.empty();
        }
        Optional<Remembered> last = owner.heads().binding(before.get(), folder).stream()
                .filter(one -> one.stream().isEmpty())
                .max(Comparator.comparingLong(one -> one.head().count()));
        if (log.count() == 0) {
            return last.map(one -> Fault.rolledBack(folder, one, log));
        }
        if (!before.equals(Sql.shop(database))) {
            return Optional.of(Fault.otherShop(folder));
        }
        return last.isPresent() ? fault(folder, database, last.get(), log) : Optional.empty();
    }

    /** Everything remembered that does not fit this log. */
    public static List<Refusal> all(Object folder, List<Remembered> remembered, Connection database, Head log)
            throws SQLException {
        List<Refusal> faults = new ArrayList<>();
        for (Remembered one : remembered) {
            fault(folder, database, one, log).ifPresent(faults::add);
        }
        return faults;
    }

    private static Optional<Refusal> fault(Object folder, Connection database, Remembered one, Head log)
            throws SQLException {
        Optional<Head> there = one.stream().isEmpty()
                ? Sql.headAt(database, one.head().count())
                : Sql.headAt(database, one.stream(), one.head().count());
        if (there.isPresent()) {
            return there.get().equals(one.head()) ? Optional.empty() : Optional.of(Fault.madeAnew(folder, one));
        }
        Head end = one.stream().isEmpty() ? log : Sql.head(database, one.stream());
        return Optional.of(Fault.rolledBack(folder, one, end));
    }
}
