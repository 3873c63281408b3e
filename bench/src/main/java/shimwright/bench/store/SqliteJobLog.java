package shimwright.bench.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Draft;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.EntryCodec;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.JobLog;
import shimwright.rebuild.job.Kept;

/**
 * The job log in one SQLite file with its head file beside it. One connection writes, behind a lock; others read.
 *
 * <p>An entry is answered after the database has synced its commit and the head file has synced the new head.
 */
public final class SqliteJobLog implements JobLog, AutoCloseable {
    /** How a log is opened. */
    public enum Opening {
        /** To write, as the only program that does. */
        WRITE,
        /** The same, letting a missing head file pass, or one that says more than the log holds; once, on request. */
        ACCEPT
    }

    private final DataFolder files;
    private final HeadFile headFile;
    private final FileChannel lock;
    private final Connection writer;
    private final Readers readers;
    private final ReentrantLock writing = new ReentrantLock();
    /** Streams as last written here, so that the rules need not read them again for every entry; under the lock. */
    private final Map<String, List<Kept>> known = new HashMap<>();

    private Head written;

    private SqliteJobLog(DataFolder files, FileChannel lock, Connection writer, Head written) {
        this.files = files;
        this.headFile = new HeadFile(files.head());
        this.lock = lock;
        this.writer = writer;
        this.written = written;
        this.readers = new Readers(files);
    }

    /**
     * Opens the log of a data folder, or makes a new one in a folder without.
     *
     * <p>The whole chain is checked and compared with the head file before anything is written. Refused, with nothing
     * written: a log that lost its end, was changed, is damaged, was written by a newer program, has no head file, or is
     * in use.
     */
    public static Outcome<SqliteJobLog> open(Path folder, Opening how) {
        DataFolder files = new DataFolder(folder);
        FileChannel lock = null;
        Outcome<SqliteJobLog> opened;
        try {
            Disk.makeFolder(folder);
            lock = FileChannel.open(files.lock(), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            opened = isOurs(lock) ? openLocked(files, how, lock) : Outcome.refused(List.of(Fault.inUse(folder)));
        } catch (IOException failed) {
            opened = Outcome.refused(List.of(Fault.notWritable(folder, Disk.why(failed))));
        } catch (SQLException failed) {
            opened = Outcome.refused(List.of(Fault.notWritable(folder, Sql.why(failed))));
        }
        if (!opened.isOk()) {
            close(lock);
        }
        return opened;
    }

    private static boolean isOurs(FileChannel lock) throws IOException {
        try {
            FileLock held = lock.tryLock();
            return held != null;
        } catch (OverlappingFileLockException heldByThisProgram) {
            return false;
        }
    }

    private static Outcome<SqliteJobLog> openLocked(DataFolder files, Opening how, FileChannel lock)
            throws IOException, SQLException {
        Outcome<Head> sound = new LogCheck(files).check(how == Opening.ACCEPT);
        if (!(sound instanceof Outcome.Ok<Head> ok)) {
            return Outcome.refused(sound.refusals());
        }
        HeadFile file = new HeadFile(files.head());
        Optional<Head> said = file.read();
        if (said.isPresent() && said.get().count() > ok.value().count()) {
            // what was accepted stays to be seen
            Path seen = files.root().resolve("head-before-entry-" + (ok.value().count() + 1));
            Files.move(files.head(), seen, StandardCopyOption.REPLACE_EXISTING);
        }
        boolean fresh = !Files.exists(files.database());
        Connection writer = Sql.toWrite(files.database());
        try {
            Schema.migrate(writer);
            if (fresh) {
                Disk.syncFolder(files.root());
            }
            if (!said.equals(Optional.of(ok.value()))) {
                file.write(ok.value());
            }
        } catch (IOException | SQLException failed) {
            writer.close();
            throw failed;
        }
        return Outcome.ok(new SqliteJobLog(files, lock, writer, ok.value()));
    }

    @Override
    public Outcome<Kept> append(Draft draft, Function<List<Kept>, List<Refusal>> rules) {
        List<Refusal> faults = faults(draft);
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        writing.lock();
        try {
            return committed(draft, rules).flatMap(this::headed);
        } catch (SQLException failed) {
            return Outcome.refused(List.of(Fault.notKept(Sql.why(failed))));
        } finally {
            writing.unlock();
        }
    }

    private Outcome<Kept> committed(Draft draft, Function<List<Kept>, List<Refusal>> rules) throws SQLException {
        boolean done = false;
        Sql.run(writer, "begin immediate");
        try {
            Optional<Row> before = Sql.entry(writer, draft.id());
            if (before.isPresent()) {
                return repeated(before.get().kept(), draft);
            }
            Head streamHead = Sql.head(writer, draft.stream());
            List<Kept> stream = known(draft.stream(), streamHead);
            List<Refusal> forbidden = rules.apply(stream);
            if (!forbidden.isEmpty()) {
                return Outcome.refused(forbidden);
            }
            Row row = Row.after(Sql.head(writer), streamHead, draft);
            // read back before it is written: what cannot be read must never get in
            Kept kept = row.kept();
            Sql.insert(writer, row);
            Sql.run(writer, "commit");
            done = true;
            List<Kept> longer = new ArrayList<>(stream);
            longer.add(kept);
            known.put(draft.stream(), List.copyOf(longer));
            return Outcome.ok(kept);
        } finally {
            if (!done) {
                Sql.rollback(writer);
            }
        }
    }

    /** The stream as it stands, read and checked again only when it is not the one last written here. */
    private List<Kept> known(String stream, Head head) throws SQLException {
        List<Kept> before = known.getOrDefault(stream, List.of());
        Head reached = before.isEmpty()
                ? Head.EMPTY
                : new Head(
                        before.get(before.size() - 1).streamNumber(),
                        before.get(before.size() - 1).streamHash());
        if (!reached.equals(head)) {
            before = Readers.sound(Sql.stream(writer, stream), stream).stream()
                    .map(Row::kept)
                    .toList();
        }
        return before;
    }

    private static Outcome<Kept> repeated(Kept kept, Draft draft) {
        Entry body = EntryCodec.read(EntryCodec.typeOf(draft.body()), EntryCodec.write(draft.body()));
        if (kept.draft().stream().equals(draft.stream()) && kept.body().equals(body)) {
            return Outcome.ok(kept);
        }
        return Outcome.refused(
                "entry " + draft.id(),
                "an entry of this id is already kept and says something else",
                "Load the page again and make the entry anew");
    }

    /** The answer once the head file is at least as far; it lags only when it could not be written before. */
    private Outcome<Kept> headed(Kept kept) {
        try {
            Head head = kept.number() > written.count() ? Sql.head(writer) : written;
            if (head.count() > written.count()) {
                headFile.write(head);
                written = head;
            }
            return Outcome.ok(kept);
        } catch (IOException failed) {
            return Outcome.refused(List.of(Fault.headNotWritten(Disk.why(failed))));
        } catch (SQLException failed) {
            return Outcome.refused(List.of(Fault.headNotWritten(Sql.why(failed))));
        }
    }

    private static List<Refusal> faults(Draft draft) {
        boolean ofShop = draft.body() instanceof Entry.OfShop;
        if (ofShop != draft.stream().equals(SHOP)) {
            throw new IllegalArgumentException(
                    EntryCodec.typeOf(draft.body()) + " does not belong to the stream " + draft.stream());
        }
        List<Refusal> faults = new ArrayList<>();
        addUnlessPlain(faults, "entry id", draft.id());
        addUnlessPlain(faults, "job", draft.stream());
        addUnlessPlain(faults, "person", draft.by());
        return faults;
    }

    private static void addUnlessPlain(List<Refusal> faults, String place, String text) {
        if (text.isBlank()) {
            faults.add(new Refusal(place, "nothing is given", "Give it"));
        } else if (text.codePoints().anyMatch(c -> Character.isISOControl(c) || isHalfLetter(c))) {
            faults.add(new Refusal(place, "it holds a character that cannot be printed", "Type it anew"));
        }
    }

    private static boolean isHalfLetter(int codePoint) {
        return Character.getType(codePoint) == Character.SURROGATE;
    }

    @Override
    public List<Kept> read(String stream) {
        return readers.read(stream);
    }

    @Override
    public List<String> streams() {
        return readers.streams();
    }

    @Override
    public Head head() {
        return readers.head();
    }

    @Override
    public Head head(String stream) {
        return readers.head(stream);
    }

    /** The folder this log lives in. */
    public DataFolder folder() {
        return files;
    }

    @Override
    public void close() {
        writing.lock();
        try {
            readers.close();
            writer.close();
        } catch (SQLException failed) {
            throw new IllegalStateException("the log could not be closed", failed);
        } finally {
            close(lock);
            writing.unlock();
        }
    }

    private static void close(@Nullable FileChannel lock) {
        try {
            if (lock != null) {
                lock.close();
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
