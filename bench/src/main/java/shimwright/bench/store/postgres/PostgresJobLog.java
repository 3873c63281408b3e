package shimwright.bench.store.postgres;

import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import shimwright.bench.store.disk.Disk;
import shimwright.bench.store.log.AppendBatch;
import shimwright.bench.store.log.Connections;
import shimwright.bench.store.log.Fault;
import shimwright.bench.store.log.LogQueries;
import shimwright.bench.store.log.LogWalk;
import shimwright.bench.store.log.OpenLog;
import shimwright.bench.store.log.OwnerCheck;
import shimwright.bench.store.log.QueriedLog;
import shimwright.bench.store.log.Sql;
import shimwright.bench.store.sign.LogSigning;
import shimwright.bench.store.sign.OwnerFolder;
import shimwright.bench.store.sign.SignedHead;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.AppendResult;
import shimwright.rebuild.job.Draft;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.Heads;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.Signing;
import shimwright.rebuild.job.StoreFailure;

/**
 * The job log in a PostgreSQL database, for several benches: any number of programs write, one act at a time under a lock
 * of the database, and each sees at once what another kept.
 *
 * <p>An act is answered after the database has synced its commit. What a torn file is to a log on a disk of its own, the
 * database's own log takes care of; that an older database was put back shows in the heads that the owner remembers.
 */
public final class PostgresJobLog implements OpenLog, QueriedLog {
    /** Of all programs that write to a shop; any number that is always the same. */
    private static final String LOCK = "select pg_advisory_xact_lock(8613)";

    private static final int SOON_WALKED = 5_000;

    private final PostgresServer server;
    private final Connections connections;
    private final LogQueries readers;
    private final Optional<OwnerFolder> owner;
    private volatile @Nullable Refusal spoilt;

    private PostgresJobLog(PostgresServer server, Connections connections, Optional<OwnerFolder> owner) {
        this.server = server;
        this.connections = connections;
        this.readers = new LogQueries(connections);
        this.owner = owner;
    }

    /**
     * Opens a shop's database; an empty one gets its tables.
     *
     * <p>A short log is walked, a long one when {@link #walk} is asked; its head is compared with the newest that the
     * owner's folder remembers.
     *
     * @param how {@link OpenLog.Opening#ACCEPT} lets a log pass that lost its end
     */
    public static Outcome<PostgresJobLog> open(
            PostgresServer server, OpenLog.Opening how, Optional<OwnerFolder> owner) {
        return server.migrate().flatMap(ready -> {
            PostgresJobLog log = new PostgresJobLog(ready, new Connections(ready::connect), owner);
            Optional<Refusal> fault = log.faultAtStart(how == OpenLog.Opening.ACCEPT);
            if (fault.isPresent()) {
                log.close();
                return Outcome.refused(List.of(fault.get()));
            }
            return Outcome.ok(log);
        });
    }

    private Optional<Refusal> faultAtStart(boolean accepted) {
        try {
            Head head = connections.ask(Sql::head);
            Optional<Refusal> found = head.count() <= SOON_WALKED ? walk() : Optional.empty();
            if (found.isPresent() || owner.isEmpty()) {
                return found;
            }
            owner.get().key();
            if (accepted) {
                signing().remember(Signing.Occasion.ACCEPTED, "", head);
                return Optional.empty();
            }
            return connections.ask(database -> {
                try {
                    return OwnerCheck.newest(owner.get(), server.name(), database, head);
                } catch (IOException unreadable) {
                    return Optional.of(Fault.ownerFolder(owner.get().root(), Disk.why(unreadable)));
                }
            });
        } catch (IOException unreadable) {
            return owner.map(folder -> Fault.ownerFolder(folder.root(), Disk.why(unreadable)));
        } catch (SQLException failed) {
            return Optional.of(Fault.damaged(server.name(), Sql.why(failed)));
        }
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
        try {
            return connections.ask(database -> committed(database, act, heads));
        } catch (SQLException failed) {
            return Outcome.refused(List.of(Fault.notKept(Sql.why(failed))));
        }
    }

    private Outcome<AppendResult> committed(Connection database, AppendBatch act, Heads heads) throws SQLException {
        database.setAutoCommit(false);
        Sql.run(database, LOCK);
        AppendBatch.Done done = act.write(database, heads);
        if (done.wrote()) {
            for (LogEntry handedBack : AppendBatch.handedBack(done.answer())) {
                sign(database, handedBack);
            }
            database.commit();
        } else {
            database.rollback();
        }
        database.setAutoCommit(true);
        return done.answer();
    }

    private void sign(Connection database, LogEntry handedBack) throws SQLException {
        if (owner.isPresent()) {
            Sql.sign(
                    database,
                    owner.get()
                            .sign(
                                    SignedHead.What.HANDBACK,
                                    Sql.shop(database).orElseThrow(),
                                    handedBack.draft().stream(),
                                    handedBack.streamHead(),
                                    Optional.empty()));
        }
    }

    @Override
    public Signing signing() {
        return owner.<Signing>map(folder -> new LogSigning(folder, server.name(), () -> readers.ask(Sql::shop)))
                .orElse(Signing.NONE);
    }

    @Override
    public Optional<Refusal> walk() {
        Outcome<Head> walked = readers.ask(database -> {
            database.setAutoCommit(false);
            Outcome<Head> head = LogWalk.walk(server.name(), database, Head.EMPTY);
            database.rollback();
            database.setAutoCommit(true);
            return head;
        });
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

    /** The connections, for what else lies in the database. */
    public Connections connections() {
        return connections;
    }

    @Override
    public void close() {
        try {
            Head head = head();
            Optional<String> shop = readers.ask(Sql::shop);
            boolean known =
                    owner.isPresent() && shop.isPresent() && owner.get().heads().knows(shop.get(), head, server.name());
            if (spoilt == null && !known) {
                signing().remember(Signing.Occasion.STOPPED, "", head);
            }
            connections.close();
        } catch (SQLException | IOException | StoreFailure gone) {
            return; // a database that is gone has closed it already
        }
    }
}
