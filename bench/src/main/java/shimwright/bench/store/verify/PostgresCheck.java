package shimwright.bench.store.verify;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import shimwright.bench.store.disk.Disk;
import shimwright.bench.store.log.Fault;
import shimwright.bench.store.postgres.PostgresContents;
import shimwright.bench.store.postgres.PostgresServer;
import shimwright.mechanics.outcome.Refusal;

/** What a check asks of a shop's database beside its entries: its guards, and the contents in it. Changes nothing. */
final class PostgresCheck implements EntriesCheck.Contents {
    private static final int ROWS = 20;

    private final PostgresServer server;
    private final Connection database;

    private PostgresCheck(PostgresServer server, Connection database) {
        this.server = server;
        this.database = database;
    }

    /** What is asked of a database as it stands at one moment. */
    interface Question {
        void ask(Connection database, PostgresCheck contents) throws java.io.IOException, SQLException;
    }

    /** Asks in one snapshot in which nothing can be written, whatever is kept meanwhile. */
    static void in(PostgresServer server, Question question) throws java.io.IOException, SQLException {
        try (Connection database = server.connect()) {
            database.setTransactionIsolation(Connection.TRANSACTION_REPEATABLE_READ);
            database.setReadOnly(true);
            database.setAutoCommit(false);
            question.ask(database, new PostgresCheck(server, database));
            database.rollback();
        }
    }

    /** Whether the database still refuses to change what was kept; the way in which a trigger is switched off. */
    Optional<Refusal> guard() throws SQLException {
        try (Statement ask = database.createStatement();
                ResultSet rows = ask.executeQuery("select t.tgenabled = 'O' and p.prosrc like '%raise exception%'"
                        + " from pg_trigger t join pg_proc p on p.oid = t.tgfoid"
                        + " where t.tgrelid = 'entry'::regclass and t.tgname = 'entry_stays'")) {
            return rows.next() && rows.getBoolean(1) ? Optional.empty() : Optional.of(Fault.guard(server.name()));
        }
    }

    @Override
    public Optional<byte[]> picture(String hash) throws SQLException {
        return PostgresContents.get(database, hash, PostgresContents.PICTURE);
    }

    @Override
    public Optional<byte[]> document(String hash) throws SQLException {
        return PostgresContents.get(database, hash, PostgresContents.DOCUMENT);
    }

    @Override
    public List<Refusal> strayPictures(Set<String> named) throws SQLException {
        return strays(named, PostgresContents.PICTURE);
    }

    @Override
    public List<Refusal> strayDocuments(Set<String> named) throws SQLException {
        return strays(named, PostgresContents.DOCUMENT);
    }

    private List<Refusal> strays(Set<String> named, String kind) throws SQLException {
        List<Refusal> faults = new ArrayList<>();
        try (PreparedStatement ask = database.prepareStatement("select hash, bytes from content where kind = ?")) {
            ask.setFetchSize(ROWS);
            ask.setString(1, kind);
            try (ResultSet rows = ask.executeQuery()) {
                while (rows.next()) {
                    String hash = rows.getString(1);
                    if (!named.contains(hash) && !hash.equals(Disk.hash(rows.getBytes(2)))) {
                        faults.add(Fault.at(server.name(), kind + " " + hash + " is not as it was kept", ""));
                    }
                }
            }
        }
        return faults;
    }
}
