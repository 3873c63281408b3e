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
import java.util.List;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.job.Appended;
import shimwright.rebuild.job.Draft;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.Heads;
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
    public Outcome<Appended> append(List<Draft> act, Heads heads) {
        return Act.of(act).flatMap(made -> append(made, heads));
    }

    private Outcome<Appended> append(Act act, Heads heads) {
        writing.lock();
        try {
            return committed(act, heads).flatMap(this::headed);
        } catch (SQLException failed) {
            return Outcome.refused(List.of(Fault.notKept(Sql.why(failed))));
        } finally {
            writing.unlock();
        }
    }

    private Outcome<Appended> committed(Act act, Heads heads) throws SQLException {
        boolean committed = false;
        Sql.run(writer, "begin immediate");
        try {
            Act.Done done = act.write(writer, heads);
            if (done.wrote()) {
                Sql.run(writer, "commit");
                committed = true;
            }
            return done.answer();
        } finally {
            if (!committed) {
                Sql.rollback(writer);
            }
        }
    }

    /** The answer once the head file is at least as far; it lags only when it could not be written before. */
    private Outcome<Appended> headed(Appended answer) {
        if (!(answer instanceof Appended.Entries entries)) {
            return Outcome.ok(answer);
        }
        try {
            Kept last = entries.entries().get(entries.entries().size() - 1);
            Head head = last.number() > written.count() ? Sql.head(writer) : written;
            if (head.count() > written.count()) {
                headFile.write(head);
                written = head;
            }
            return Outcome.ok(answer);
        } catch (IOException failed) {
            return Outcome.refused(List.of(Fault.headNotWritten(Disk.why(failed))));
        } catch (SQLException failed) {
            return Outcome.refused(List.of(Fault.headNotWritten(Sql.why(failed))));
        }
    }

    @Override
    public Optional<Kept> find(String id) {
        return readers.find(id);
    }

    @Override
    public List<Kept> read(String stream, Head after) {
        return readers.read(stream, after);
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
