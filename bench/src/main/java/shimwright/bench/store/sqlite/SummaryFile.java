package shimwright.bench.store.sqlite;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import shimwright.bench.store.disk.DataFolder;
import shimwright.bench.store.disk.Disk;
import shimwright.bench.store.log.Sql;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.Summaries;

/**
 * Summaries in a file of the data folder, for one program and one way of summing up, each with a hash of its own. A file that
 * is damaged, or was made by another program, is begun anew; where it cannot be written, all is worked out each time.
 */
public final class SummaryFile implements Summaries, AutoCloseable {
    private static final int HASH = 64;

    private final Connection file;
    private final String program;

    private SummaryFile(Connection file, String program) {
        this.file = file;
        this.program = program;
    }

    /**
     * Opens or begins the file.
     *
     * @param program a name that changes whenever the texts would
     */
    public static SummaryFile in(Path folder, String program) {
        Path place = new DataFolder(folder).summaries();
        try {
            return opened("jdbc:sqlite:" + place.toAbsolutePath(), program);
        } catch (SQLException damaged) {
            try {
                Files.deleteIfExists(place);
                return opened("jdbc:sqlite:" + place.toAbsolutePath(), program);
            } catch (IOException | SQLException unwritable) {
                return inMemory(program);
            }
        }
    }

    private static SummaryFile inMemory(String program) {
        try {
            return opened("jdbc:sqlite::memory:", program);
        } catch (SQLException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static SummaryFile opened(String url, String program) throws SQLException {
        Connection file = DriverManager.getConnection(url);
        try {
            // nothing rests on it: a power cut may cost it
            Sql.run(file, "pragma synchronous = off");
            Sql.run(file, "create table if not exists made (program text, count integer, hash text) strict");
            Sql.run(
                    file,
                    "create table if not exists summary (place integer primary key, stream text unique, count integer,"
                            + " hash text, text text) strict");
            SummaryFile summaries = new SummaryFile(file, program);
            if (!summaries.isOf(program)) {
                Sql.run(file, "delete from summary");
                Sql.run(file, "delete from made");
            }
            return summaries;
        } catch (SQLException failed) {
            file.close();
            throw failed;
        }
    }

    private boolean isOf(String program) throws SQLException {
        try (Statement ask = file.createStatement();
                ResultSet rows = ask.executeQuery("select program from made")) {
            return rows.next() && program.equals(rows.getString(1));
        }
    }

    @Override
    public synchronized Head upTo() {
        try (Statement ask = file.createStatement();
                ResultSet rows = ask.executeQuery("select count, hash from made")) {
            return rows.next() ? new Head(rows.getLong(1), rows.getString(2)) : Head.EMPTY;
        } catch (SQLException damaged) {
            return Head.EMPTY;
        }
    }

    @Override
    public synchronized List<Summary> all() {
        List<Summary> all = new ArrayList<>();
        try (Statement ask = file.createStatement();
                ResultSet rows = ask.executeQuery("select stream, count, hash, text from summary order by place")) {
            while (rows.next()) {
                String kept = rows.getString(4);
                Summary summary = new Summary(
                        rows.getString(1),
                        new Head(rows.getLong(2), rows.getString(3)),
                        kept.substring(Math.min(HASH, kept.length())));
                if (!kept(summary).equals(kept)) {
                    return List.of();
                }
                all.add(summary);
            }
            return all;
        } catch (SQLException damaged) {
            return List.of();
        }
    }

    /** The text with the hash of the whole before it: a damaged line would be believed where no stream is read. */
    private static String kept(Summary summary) {
        String whole = summary.stream() + "\n" + summary.head().count() + "\n"
                + summary.head().hash() + "\n" + summary.text();
        return Disk.hash(whole.getBytes(StandardCharsets.UTF_8)) + summary.text();
    }

    @Override
    public synchronized void keep(Head upTo, List<Summary> changed) {
        try {
            Sql.run(file, "begin");
            try (PreparedStatement put = file.prepareStatement(
                    "insert into summary (stream, count, hash, text) values (?, ?, ?, ?) on conflict (stream) do update"
                            + " set count = excluded.count, hash = excluded.hash, text = excluded.text")) {
                for (Summary summary : changed) {
                    put.setString(1, summary.stream());
                    put.setLong(2, summary.head().count());
                    put.setString(3, summary.head().hash());
                    put.setString(4, kept(summary));
                    put.executeUpdate();
                }
            }
            Sql.run(file, "delete from made");
            try (PreparedStatement put =
                    file.prepareStatement("insert into made (program, count, hash) values (?, ?, ?)")) {
                put.setString(1, program);
                put.setLong(2, upTo.count());
                put.setString(3, upTo.hash());
                put.executeUpdate();
            }
            Sql.run(file, "commit");
        } catch (SQLException unwritable) {
            Sql.rollback(file);
        }
    }

    @Override
    public synchronized void close() {
        try {
            file.close();
        } catch (SQLException gone) {
            return;
        }
    }
}
