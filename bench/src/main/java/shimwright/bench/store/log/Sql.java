package shimwright.bench.store.log;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;
import shimwright.bench.store.sign.SignedHead;
import shimwright.rebuild.job.Head;

/** Connections to the log, and the few statements asked of it. */
public final class Sql {
    private static final int BUSY_MILLISECONDS = 10_000;

    /** Held by each connection; more lies in the machine's own memory of files. */
    private static final int CACHE_KILOBYTES = 512;

    private Sql() {}

    /** A connection that may write: every commit is synced before it returns. */
    public static Connection toWrite(Path database) throws SQLException {
        SQLiteConfig config = common();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        return config.createConnection(url(database));
    }

    /** A connection that cannot write. */
    public static Connection toRead(Path database) throws SQLException {
        SQLiteConfig config = common();
        config.setReadOnly(true);
        Connection reader = config.createConnection(url(database));
        try {
            Schema.makeReadable(reader);
            return reader;
        } catch (SQLException failed) {
            reader.close();
            throw failed;
        }
    }

    private static SQLiteConfig common() {
        SQLiteConfig config = new SQLiteConfig();
        config.enforceForeignKeys(true);
        config.setBusyTimeout(BUSY_MILLISECONDS);
        config.setCacheSize(-CACHE_KILOBYTES);
        return config;
    }

    private static String url(Path database) {
        return "jdbc:sqlite:" + database.toAbsolutePath();
    }

    /** Runs a statement that asks for nothing. */
    public static void run(Connection database, String statement) throws SQLException {
        try (Statement ask = database.createStatement()) {
            ask.execute(statement);
        }
    }

    /** All statements, or none. */
    static void inTransaction(Connection database, List<String> statements) throws SQLException {
        boolean done = false;
        run(database, "begin immediate");
        try {
            for (String statement : statements) {
                run(database, statement);
            }
            run(database, "commit");
            done = true;
        } finally {
            if (!done) {
                rollback(database);
            }
        }
    }

    /** Leaves a transaction that failed; SQLite may have left it already, which is as good. */
    public static void rollback(Connection database) {
        try {
            run(database, "rollback");
        } catch (SQLException alreadyOut) {
            return;
        }
    }

    /** Hands on the rows of a stream after its first {@code skipped}, in order. */
    static void stream(Connection database, String stream, long skipped, Consumer<EntryRow> to) throws SQLException {
        try (PreparedStatement ask = database.prepareStatement("select " + EntryRow.COLUMNS
                + " from entry where stream = ? and stream_number > ? order by stream_number")) {
            ask.setString(1, stream);
            ask.setLong(2, skipped);
            try (ResultSet rows = ask.executeQuery()) {
                while (rows.next()) {
                    to.accept(EntryRow.of(rows));
                }
            }
        }
    }

    /** The rows after the first {@code skipped} of the whole log, in order. */
    static List<EntryRow> since(Connection database, long skipped, int atMost) throws SQLException {
        List<EntryRow> found = new ArrayList<>();
        try (PreparedStatement ask = database.prepareStatement(
                "select " + EntryRow.COLUMNS + " from entry where number > ? order by number limit ?")) {
            ask.setLong(1, skipped);
            ask.setInt(2, atMost);
            try (ResultSet rows = ask.executeQuery()) {
                while (rows.next()) {
                    found.add(EntryRow.of(rows));
                }
            }
        }
        return found;
    }

    /** The row of a client's id. */
    static Optional<EntryRow> entry(Connection database, String id) throws SQLException {
        return one(database, "select " + EntryRow.COLUMNS + " from entry where id = ?", id);
    }

    /** The head of the whole log. */
    public static Head head(Connection database) throws SQLException {
        return one(database, "select " + EntryRow.COLUMNS + " from entry order by number desc limit 1")
                .map(EntryRow::head)
                .orElse(Head.EMPTY);
    }

    /** The head of a stream. */
    public static Head head(Connection database, String stream) throws SQLException {
        return one(
                        database,
                        "select " + EntryRow.COLUMNS
                                + " from entry where stream = ? order by stream_number desc limit 1",
                        stream)
                .map(EntryRow::streamHead)
                .orElse(Head.EMPTY);
    }

    /** The row of a number. */
    public static Optional<EntryRow> entryAt(Connection database, long number) throws SQLException {
        return one(database, "select " + EntryRow.COLUMNS + " from entry where number = ?", number);
    }

    /** The head of the whole log as it was at a number; empty where it never went so far. */
    public static Optional<Head> headAt(Connection database, long number) throws SQLException {
        return number == 0 ? Optional.of(Head.EMPTY) : entryAt(database, number).map(EntryRow::head);
    }

    /** The head of a stream as it was at a number; empty where it never went so far. */
    public static Optional<Head> headAt(Connection database, String stream, long number) throws SQLException {
        return number == 0
                ? Optional.of(Head.EMPTY)
                : one(
                                database,
                                "select " + EntryRow.COLUMNS + " from entry where stream = ? and stream_number = ?",
                                stream,
                                number)
                        .map(EntryRow::streamHead);
    }

    /** The name of a shop: the hash of its first entry; empty for an empty log. */
    public static Optional<String> shop(Connection database) throws SQLException {
        return headAt(database, 1).map(Head::hash);
    }

    /** Keeps the signature of a stream's head. */
    public static void sign(Connection database, SignedHead signed) throws SQLException {
        try (PreparedStatement put =
                database.prepareStatement("insert into signature (stream, stream_number, line) values (?, ?, ?)")) {
            put.setString(1, signed.stream());
            put.setLong(2, signed.head().count());
            put.setString(3, signed.line());
            put.executeUpdate();
        }
    }

    /** The signature of a stream's head, as text. */
    public static Optional<String> signature(Connection database, String stream, long number) throws SQLException {
        try (PreparedStatement ask =
                database.prepareStatement("select line from signature where stream = ? and stream_number = ?")) {
            ask.setString(1, stream);
            ask.setLong(2, number);
            try (ResultSet rows = ask.executeQuery()) {
                return rows.next() ? Optional.of(rows.getString(1)) : Optional.empty();
            }
        }
    }

    /** How many signatures there are. */
    public static long signatures(Connection database) throws SQLException {
        try (Statement ask = database.createStatement();
                ResultSet rows = ask.executeQuery("select count(*) from signature")) {
            return rows.next() ? rows.getLong(1) : 0;
        }
    }

    /** The streams in order of their first entry. */
    static List<String> streams(Connection database) throws SQLException {
        List<String> found = new ArrayList<>();
        try (Statement ask = database.createStatement();
                ResultSet rows = ask.executeQuery("select stream from entry where stream_number = 1 order by number")) {
            while (rows.next()) {
                found.add(rows.getString(1));
            }
        }
        return found;
    }

    /** Writes an entry. */
    public static void insert(Connection database, EntryRow row) throws SQLException {
        try (PreparedStatement put = database.prepareStatement(
                "insert into entry (" + EntryRow.COLUMNS + ") values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")) {
            EntryText written = row.written();
            put.setLong(1, row.number());
            put.setString(2, written.stream());
            put.setLong(3, row.streamNumber());
            put.setString(4, written.id());
            put.setString(5, written.at());
            put.setString(6, written.by());
            put.setString(7, written.device());
            put.setString(8, written.type());
            put.setString(9, written.body());
            put.setString(10, row.hash());
            put.setString(11, row.streamHash());
            put.executeUpdate();
        }
    }

    private static Optional<EntryRow> one(Connection database, String query, Object... given) throws SQLException {
        try (PreparedStatement ask = database.prepareStatement(query)) {
            for (int i = 0; i < given.length; i++) {
                ask.setObject(i + 1, given[i]);
            }
            try (ResultSet rows = ask.executeQuery()) {
                return rows.next() ? Optional.of(EntryRow.of(rows)) : Optional.empty();
            }
        }
    }

    /** Why the database refused, in words for a person. */
    public static String why(SQLException failed) {
        String state = failed.getSQLState() == null ? "" : failed.getSQLState();
        if (!(failed instanceof SQLiteException) && state.length() == 5) {
            return whyPostgres(state, failed);
        }
        SQLiteErrorCode code =
                failed instanceof SQLiteException known ? known.getResultCode() : SQLiteErrorCode.SQLITE_ERROR;
        return switch (code.code & 0xff) {
            case 13 -> "the disk is full";
            case 8 -> "the disk or the data folder can only be read";
            case 5, 6 -> "another program holds the log";
            case 11, 26 -> "the log's file is damaged";
            case 14 -> "the log's file cannot be opened";
            default -> "the disk answered with an error (" + failed.getMessage() + ")";
        };
    }

    /** By the classes of the SQL standard's states, as PostgreSQL's manual lists them in appendix A. */
    private static String whyPostgres(String state, SQLException failed) {
        String answer = String.valueOf(failed.getMessage()).lines().findFirst().orElse("");
        return switch (state.substring(0, 2)) {
            case "08", "57" -> "the database does not answer (" + answer + ")";
            case "28", "3D" -> "the database does not let this user in (" + answer + ")";
            case "53" -> state.equals("53100") ? "the database's disk is full" : "the database has no room left";
            case "25" -> "the database can only be read";
            case "42" -> "the database does not hold the tables of a shop, or this user may not use them";
            default -> "the database answered with an error (" + answer + ")";
        };
    }
}
