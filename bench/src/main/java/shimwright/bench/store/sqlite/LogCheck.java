package shimwright.bench.store.sqlite;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Optional;
import org.sqlite.ProgressHandler;
import shimwright.bench.store.disk.DataFolder;
import shimwright.bench.store.disk.Disk;
import shimwright.bench.store.disk.HeadFile;
import shimwright.bench.store.log.Fault;
import shimwright.bench.store.log.LogWalk;
import shimwright.bench.store.log.Pace;
import shimwright.bench.store.log.Schema;
import shimwright.bench.store.log.Sql;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Head;

/**
 * Walks the whole log and compares it with its head file, writing nothing: SQLite's own check of its pages, the tables,
 * and every entry's two hashes.
 */
public final class LogCheck {
    private static final int SOON_WALKED = 5_000;

    /** Of the database's own machine, between two rests. */
    private static final int STEPS = 100_000;

    private final Path folder;
    private final DataFolder files;
    private final Pace pace;

    public LogCheck(DataFolder files) {
        this(files, Pace.full());
    }

    /** A check at a pace; one that nobody waits for leaves the cores to the others. */
    public LogCheck(DataFolder files, Pace pace) {
        this.files = files;
        this.pace = pace;
        this.folder = files.root();
    }

    /**
     * The head of a sound log, every entry of it walked.
     *
     * @param accepted whether a missing or damaged head file and one that says more are let pass
     */
    public Outcome<Head> check(boolean accepted) {
        return check(accepted, Head.EMPTY);
    }

    /**
     * The head of a log of which a beginning was walked before.
     *
     * @param accepted whether a missing or damaged head file and one that says more are let pass
     * @param walked how far; where the log has another entry there, or no more than {@value #SOON_WALKED}, all is walked
     */
    public Outcome<Head> check(boolean accepted, Head walked) {
        try {
            HeadFile file = new HeadFile(files.head());
            boolean headThere = file.exists();
            Optional<Head> head = file.read();
            Outcome<Walk> walk = walk(head.orElse(Head.EMPTY).count(), walked);
            if (!(walk instanceof Outcome.Ok<Walk> ok)) {
                return walk.map(Walk::head);
            }
            Optional<Refusal> fault = compare(headThere, head, ok.value(), accepted);
            return fault.isPresent() ? Outcome.refused(List.of(fault.get())) : walk.map(Walk::head);
        } catch (SQLException failed) {
            return refused(Fault.damaged(folder, Sql.why(failed)));
        } catch (IOException failed) {
            return refused(Fault.damaged(folder, Disk.why(failed)));
        }
    }

    private Optional<Refusal> compare(boolean headThere, Optional<Head> head, Walk walk, boolean accepted) {
        Head log = walk.head();
        if (head.isEmpty()) {
            if (accepted || (log.count() == 0 && !headThere)) {
                return Optional.empty();
            }
            return Optional.of(headThere ? Fault.headTorn(folder, log) : Fault.headMissing(folder, log));
        }
        if (log.count() < head.get().count()) {
            return accepted ? Optional.empty() : Optional.of(Fault.shorter(folder, head.get(), log));
        }
        return walk.atMark().equals(head.get().hash())
                ? Optional.empty()
                : Optional.of(Fault.other(folder, head.get()));
    }

    /** The head that the walk came to and the hash it met at the marked number. */
    private record Walk(Head head, String atMark) {}

    private Outcome<Walk> walk(long mark, Head walked) throws IOException, SQLException {
        Walk nothing = new Walk(Head.EMPTY, mark == 0 ? Head.EMPTY.hash() : "");
        if (!Files.exists(files.database()) || Files.size(files.database()) == 0) {
            return Outcome.ok(nothing);
        }
        try (Connection database = Sql.toRead(files.database())) {
            int version = Schema.version(database);
            if (version > Schema.NEWEST) {
                return refused(Fault.newer(folder, "tables of version " + version));
            }
            if (!Schema.isOurs(database)) {
                return refused(Fault.guard(folder));
            }
            if (version == 0) {
                return Outcome.ok(nothing);
            }
            boolean goesOn = Sql.head(database).count() > SOON_WALKED
                    && Sql.headAt(database, walked.count()).equals(Optional.of(walked));
            String pages = goesOn ? "ok" : pages(database);
            if (!pages.equals("ok")) {
                return refused(Fault.damaged(folder, pages));
            }
            Outcome<Head> log = LogWalk.walk(folder, database, goesOn ? walked : Head.EMPTY, pace);
            return log instanceof Outcome.Ok<Head> ok
                    ? Outcome.ok(new Walk(
                            ok.value(),
                            Sql.headAt(database, mark).map(Head::hash).orElse("")))
                    : Outcome.refused(log.refusals());
        }
    }

    private String pages(Connection database) throws SQLException {
        ProgressHandler.setHandler(database, STEPS, new ProgressHandler() {
            @Override
            protected int progress() {
                pace.rest();
                return 0;
            }
        });
        try (Statement ask = database.createStatement();
                ResultSet answer = ask.executeQuery("pragma integrity_check(1)")) {
            return answer.next() ? answer.getString(1) : "no answer";
        } finally {
            ProgressHandler.clearHandler(database);
        }
    }

    private static <T> Outcome<T> refused(Refusal refusal) {
        return Outcome.refused(List.of(refusal));
    }
}
