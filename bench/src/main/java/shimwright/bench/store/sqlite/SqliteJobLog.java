package shimwright.bench.store.sqlite;

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
import shimwright.bench.store.disk.DataFolder;
import shimwright.bench.store.disk.Disk;
import shimwright.bench.store.disk.HeadFile;
import shimwright.bench.store.log.AppendBatch;
import shimwright.bench.store.log.Connections;
import shimwright.bench.store.log.Fault;
import shimwright.bench.store.log.LogQueries;
import shimwright.bench.store.log.OpenLog;
import shimwright.bench.store.log.OwnerCheck;
import shimwright.bench.store.log.Pace;
import shimwright.bench.store.log.QueriedLog;
import shimwright.bench.store.log.Schema;
import shimwright.bench.store.log.Sql;
import shimwright.bench.store.sign.LogSigning;
import shimwright.bench.store.sign.OwnerFolder;
import shimwright.bench.store.sign.RememberedHeads;
import shimwright.bench.store.sign.SignedHead;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.AppendResult;
import shimwright.rebuild.job.Draft;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.Heads;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.Signing;

/**
 * The job log in one SQLite file with its head file beside it. One connection writes, behind a lock; others read.
 *
 * <p>An entry is answered after the database has synced its commit and the head file has synced the new head.
 */
public final class SqliteJobLog implements OpenLog, QueriedLog {
    private final DataFolder files;
    private final HeadFile headFile;
    private final FileChannel lock;
    private final Connection writer;
    private final LogQueries readers;
    private final ReentrantLock writing = new ReentrantLock();

    private final Optional<OwnerFolder> owner;

    private Head written;
    private volatile @Nullable Refusal spoilt;

    private SqliteJobLog(
            DataFolder files, FileChannel lock, Connection writer, Head written, Optional<OwnerFolder> owner) {
        this.files = files;
        this.owner = owner;
        this.headFile = new HeadFile(files.head());
        this.lock = lock;
        this.writer = writer;
        this.written = written;
        this.readers = new LogQueries(new Connections(() -> Sql.toRead(files.database())));
    }

    /** Opens the log as a program does that signs and remembers nothing: a demo or a test. */
    public static Outcome<SqliteJobLog> open(Path folder, OpenLog.Opening how) {
        return open(folder, how, Optional.empty());
    }

    /**
     * Opens the log of a data folder, or makes a new one in a folder without.
     *
     * <p>The chain is walked and compared with the head file, and with the newest head that the owner's folder remembers,
     * before anything is written. Of a long log only what came since it was last walked; {@link #walk} does the rest.
     * Refused, with nothing written: a log that lost its end, was changed, is damaged, was written by a newer program, has
     * no head file, is in use, or is gone while its pictures lie there.
     */
    public static Outcome<SqliteJobLog> open(Path folder, OpenLog.Opening how, Optional<OwnerFolder> owner) {
        DataFolder files = new DataFolder(folder);
        FileChannel lock = null;
        Outcome<SqliteJobLog> opened;
        try {
            Disk.makePrivateFolder(folder);
            lock = FileChannel.open(files.lock(), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            opened = isOurs(lock) ? openLocked(files, how, lock, owner) : Outcome.refused(List.of(Fault.inUse(folder)));
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

    private static Outcome<SqliteJobLog> openLocked(
            DataFolder files, OpenLog.Opening how, FileChannel lock, Optional<OwnerFolder> owner)
            throws IOException, SQLException {
        boolean accepted = how == OpenLog.Opening.ACCEPT;
        Head walked = Head.EMPTY;
        if (owner.isPresent()) {
            try {
                walked = Checkpoint.read(files, owner.get().key());
            } catch (IOException unreadable) {
                return Outcome.refused(List.of(Fault.ownerFolder(owner.get().root(), Disk.why(unreadable))));
            }
        }
        OwnerCheck before = new OwnerCheck(files);
        Optional<Refusal> gone = accepted ? Optional.empty() : before.gone();
        Outcome<Head> sound =
                gone.isPresent() ? Outcome.refused(List.of(gone.get())) : new LogCheck(files).check(accepted, walked);
        if (!(sound instanceof Outcome.Ok<Head> ok)) {
            return Outcome.refused(sound.refusals());
        }
        Optional<Refusal> other =
                accepted || owner.isEmpty() ? Optional.empty() : before.newest(owner.get(), ok.value());
        if (other.isPresent()) {
            return Outcome.refused(List.of(other.get()));
        }
        Outcome<SqliteJobLog> opened = openSound(files, ok.value(), lock, owner);
        if (accepted && opened instanceof Outcome.Ok<SqliteJobLog> log) {
            log.value().signing().remember(Signing.Occasion.ACCEPTED, "", ok.value());
        }
        return opened;
    }

    private static Outcome<SqliteJobLog> openSound(
            DataFolder files, Head log, FileChannel lock, Optional<OwnerFolder> owner)
            throws IOException, SQLException {
        HeadFile file = new HeadFile(files.head());
        Optional<Head> said = file.read();
        if (said.isPresent() && said.get().count() > log.count()) {
            // what was accepted stays to be seen
            Path seen = files.root().resolve("head-before-entry-" + (log.count() + 1));
            Files.move(files.head(), seen, StandardCopyOption.REPLACE_EXISTING);
        }
        boolean fresh = !Files.exists(files.database());
        Connection writer = Sql.toWrite(files.database());
        try {
            FolderHashes.forget(files);
            Schema.migrate(writer);
            if (fresh) {
                Disk.syncFolder(files.root());
            }
            if (!said.equals(Optional.of(log))) {
                file.write(log);
            }
        } catch (IOException | SQLException failed) {
            writer.close();
            throw failed;
        }
        return Outcome.ok(new SqliteJobLog(files, lock, writer, log, owner));
    }

    @Override
    public Outcome<AppendResult> append(List<Draft> act, Heads heads) {
        Outcome<AppendResult> answer = AppendBatch.of(act).flatMap(made -> append(made, heads));
        for (LogEntry kept : AppendBatch.handedBack(answer)) {
            signing().remember(Signing.Occasion.HANDED_BACK, kept.draft().stream(), kept.streamHead());
        }
        return answer;
    }

    private Outcome<AppendResult> append(AppendBatch act, Heads heads) {
        Refusal found = spoilt;
        if (found != null) {
            return Outcome.refused(List.of(Fault.spoilt(found)));
        }
        writing.lock();
        try {
            return committed(act, heads).flatMap(this::headed);
        } catch (SQLException failed) {
            return Outcome.refused(List.of(Fault.notKept(Sql.why(failed))));
        } finally {
            writing.unlock();
        }
    }

    private Outcome<AppendResult> committed(AppendBatch act, Heads heads) throws SQLException {
        boolean committed = false;
        Sql.run(writer, "begin immediate");
        try {
            AppendBatch.Done done = act.write(writer, heads);
            if (done.wrote()) {
                for (LogEntry handedBack : AppendBatch.handedBack(done.answer())) {
                    sign(handedBack);
                }
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
    private Outcome<AppendResult> headed(AppendResult answer) {
        if (!(answer instanceof AppendResult.Entries entries)) {
            return Outcome.ok(answer);
        }
        try {
            LogEntry last = entries.entries().get(entries.entries().size() - 1);
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

    /** A hand-back is kept together with its signature. */
    private void sign(LogEntry handedBack) throws SQLException {
        if (owner.isPresent()) {
            String shop = Sql.shop(writer).orElseThrow();
            Sql.sign(
                    writer,
                    owner.get()
                            .sign(
                                    SignedHead.What.HANDBACK,
                                    shop,
                                    handedBack.draft().stream(),
                                    handedBack.streamHead(),
                                    Optional.empty()));
        }
    }

    @Override
    public Signing signing() {
        return owner.<Signing>map(folder -> new LogSigning(folder, RememberedHeads.name(files.root()), this::shop))
                .orElse(Signing.NONE);
    }

    private Optional<String> shop() {
        return readers.ask(Sql::shop);
    }

    @Override
    public Optional<Refusal> walk() {
        Outcome<Head> walked = new LogCheck(files, Pace.gentle()).check(false);
        if (walked instanceof Outcome.Ok<Head>) {
            return Optional.empty();
        }
        spoilt = walked.refusals().get(0);
        return Optional.ofNullable(spoilt);
    }

    @Override
    public LogQueries readers() {
        return readers;
    }

    @Override
    public void close() {
        writing.lock();
        try {
            Optional<String> shop = shop();
            readers.close();
            writer.close();
            if (shop.isPresent() && spoilt == null) {
                leave(shop.get());
            }
        } catch (SQLException failed) {
            throw new IllegalStateException("the log could not be closed", failed);
        } finally {
            close(lock);
            writing.unlock();
        }
    }

    /** What the next start and the next check go by; without it they walk all. */
    private void leave(String shop) {
        try {
            if (owner.isPresent()) {
                Checkpoint.write(files, owner.get().key(), written);
                FolderHashes.write(files, owner.get(), shop, written);
                if (!owner.get().heads().knows(shop, written, RememberedHeads.name(files.root()))) {
                    owner.get()
                            .remember(Signing.Occasion.STOPPED, shop, "", written, RememberedHeads.name(files.root()));
                }
            }
        } catch (IOException full) {
            return;
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
