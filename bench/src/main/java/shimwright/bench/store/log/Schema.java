package shimwright.bench.store.log;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The tables of the log, version by version. */
public final class Schema {
    /** The statements that lead from version {@code i} to version {@code i + 1}; only ever added to. */
    private static final List<List<String>> MIGRATIONS = List.of(
            List.of("""
            create table entry (
              number integer primary key,
              stream text not null,
              stream_number integer not null,
              id text not null unique,
              at text not null,
              by_whom text not null,
              type text not null,
              body text not null,
              hash text not null,
              stream_hash text not null,
              unique (stream, stream_number)
            ) strict""", """
            create trigger entry_stays before update on entry
            begin select raise(abort, 'an entry is never changed'); end""", """
            create trigger entry_remains before delete on entry
            begin select raise(abort, 'an entry is never removed'); end"""),
            List.of(
                    "alter table entry add column device text not null default ''",
                    "create index entry_first on entry (number) where stream_number = 1"),
            List.of("""
            create table signature (
              stream text not null,
              stream_number integer not null,
              line text not null,
              primary key (stream, stream_number)
            ) strict"""));

    /** The version this program writes. */
    public static final int NEWEST = MIGRATIONS.size();

    /** The first version that keeps signatures. */
    public static final int SIGNED = 3;

    private Schema() {}

    /** The version of an open database; 0 for one without tables. */
    public static int version(Connection database) throws SQLException {
        try (Statement ask = database.createStatement();
                ResultSet answer = ask.executeQuery("pragma user_version")) {
            return answer.next() ? answer.getInt(1) : 0;
        }
    }

    /** Brings the tables to the newest version, each version whole or not at all. */
    public static void migrate(Connection database) throws SQLException {
        migrate(database, NEWEST);
    }

    private static void migrate(Connection database, int to) throws SQLException {
        for (int from = version(database); from < to; from++) {
            List<String> statements = new ArrayList<>(MIGRATIONS.get(from));
            statements.add("pragma user_version = " + (from + 1));
            Sql.inTransaction(database, statements);
        }
    }

    /** Lets a log of an older program be read without being changed: what its entries do not have is empty. */
    static void makeReadable(Connection reader) throws SQLException {
        if (version(reader) == 1) {
            Sql.run(
                    reader,
                    "create temp view entry as select " + EntryRow.COLUMNS.replace("device", "'' as device")
                            + " from main.entry");
        }
    }

    /** Whether the tables are those that this program made for their version. */
    public static boolean isOurs(Connection database) throws SQLException {
        try (Connection fresh = DriverManager.getConnection("jdbc:sqlite::memory:")) {
            migrate(fresh, version(database));
            return plain(statements(database)).equals(plain(statements(fresh)));
        }
    }

    private static List<String> statements(Connection database) throws SQLException {
        List<String> found = new ArrayList<>();
        try (Statement ask = database.createStatement();
                ResultSet rows =
                        ask.executeQuery("select sql from main.sqlite_schema where sql is not null order by sql")) {
            while (rows.next()) {
                found.add(rows.getString(1));
            }
        }
        return found;
    }

    private static List<String> plain(List<String> statements) {
        return statements.stream()
                .map(sql -> sql.replaceAll("\\s+", " ").strip().toLowerCase(Locale.ROOT))
                .toList();
    }
}
