package shimwright.bench.store.backup;

import java.io.IOException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shimwright.bench.store.content.FileDocumentStore;
import shimwright.bench.store.content.FilePictureStore;
import shimwright.bench.store.disk.DataFolder;
import shimwright.bench.store.log.EntryRow;
import shimwright.bench.store.log.LogScan;
import shimwright.bench.store.log.Schema;
import shimwright.bench.store.log.Sql;
import shimwright.bench.store.postgres.PostgresContents;
import shimwright.bench.store.postgres.PostgresServer;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;

/** A database that a backup is taken of, or that one is put into. */
final class PostgresOrigin implements Backup.Origin {
    private static final int ROWS = 500;

    private final PostgresServer server;

    PostgresOrigin(PostgresServer server) {
        this.server = server;
    }

    @Override
    public String name() {
        return server.name();
    }

    @Override
    public boolean isThere() {
        return true;
    }

    @Override
    public void copyLog(DataFolder to) throws IOException, SQLException {
        try (Connection source = server.connect();
                Connection target = Sql.toWrite(to.database())) {
            // one snapshot for both tables, whatever is kept meanwhile
            source.setTransactionIsolation(Connection.TRANSACTION_REPEATABLE_READ);
            source.setAutoCommit(false);
            Schema.migrate(target);
            Sql.run(target, "begin immediate");
            copyEntries(source, target);
            copySignatures(source, target);
            Sql.run(target, "commit");
            // one file, as a backup holds it
            Sql.run(target, "pragma journal_mode = delete");
            source.rollback();
        }
    }

    private static void copyEntries(Connection source, Connection target) throws SQLException {
        try (Statement ask = source.createStatement()) {
            ask.setFetchSize(ROWS);
            try (ResultSet rows = ask.executeQuery("select " + EntryRow.COLUMNS + " from entry order by number")) {
                while (rows.next()) {
                    Sql.insert(target, EntryRow.of(rows));
                }
            }
        }
    }

    private static void copySignatures(Connection source, Connection target) throws SQLException {
        try (Statement ask = source.createStatement();
                ResultSet rows = ask.executeQuery("select stream, stream_number, line from signature");
                PreparedStatement put = target.prepareStatement(
                        "insert into signature (stream, stream_number, line) values (?, ?, ?)")) {
            while (rows.next()) {
                put.setString(1, rows.getString(1));
                put.setLong(2, rows.getLong(2));
                put.setString(3, rows.getString(3));
                put.executeUpdate();
            }
        }
    }

    @Override
    public List<Refusal> copyRest(DataFolder to) throws IOException, SQLException {
        FilePictureStore pictures = FilePictureStore.open(to.pictures()).orElseThrow();
        FileDocumentStore documents = FileDocumentStore.open(to.documents()).orElseThrow();
        List<Refusal> missing = new ArrayList<>();
        try (Connection source = server.connect();
                Connection copied = Sql.toRead(to.database())) {
            LogScan scan = LogScan.of(copied);
            for (String hash : scan.pictures()) {
                copy(source, hash, PostgresContents.PICTURE, content -> pictures.keep(hash, content), missing);
            }
            for (String hash : scan.documents()) {
                copy(source, hash, PostgresContents.DOCUMENT, content -> documents.keep(hash, content), missing);
            }
        }
        return missing;
    }

    private interface Keeping {
        Outcome<?> of(byte[] content);
    }

    private static void copy(Connection source, String hash, String kind, Keeping keeping, List<Refusal> missing)
            throws SQLException {
        Optional<byte[]> content = PostgresContents.get(source, hash, kind);
        if (content.isEmpty() || !keeping.of(content.get()).isOk()) {
            missing.add(Refusal.at(
                    kind + " " + hash.substring(0, Math.min(12, hash.length())),
                    "an entry names it, but it is not there or not whole",
                    "Look for it in an older backup"));
        }
    }

    /** Puts a checked backup into a database without a shop: all of it or nothing. */
    Outcome<PostgresServer> fill(DataFolder backup) throws IOException, SQLException {
        FilePictureStore pictures = FilePictureStore.over(backup.pictures());
        FileDocumentStore documents = FileDocumentStore.over(backup.documents());
        try (Connection target = server.connect();
                Connection source = Sql.toRead(backup.database())) {
            target.setAutoCommit(false);
            if (Sql.head(target).count() > 0) {
                return Outcome.refused(Refusal.at(
                        server.name(), "there is a shop in this database already", "Name one that is empty"));
            }
            copyEntries(source, target);
            if (Schema.version(source) >= Schema.SIGNED) {
                copySignatures(source, target);
            }
            LogScan scan = LogScan.of(source);
            for (String hash : scan.pictures()) {
                Optional<byte[]> content = pictures.find(hash);
                if (content.isPresent()) {
                    PostgresContents.put(target, hash, PostgresContents.PICTURE, content.get());
                }
            }
            for (String hash : scan.documents()) {
                Optional<byte[]> content = documents.find(hash);
                if (content.isPresent()) {
                    PostgresContents.put(target, hash, PostgresContents.DOCUMENT, content.get());
                }
            }
            target.commit();
            return Outcome.ok(server);
        }
    }
}
