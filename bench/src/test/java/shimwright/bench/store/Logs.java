package shimwright.bench.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import shimwright.bench.store.disk.DataFolder;
import shimwright.bench.store.log.OpenLog;
import shimwright.bench.store.sqlite.SqliteJobLog;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.job.JobLog;
import shimwright.rebuild.job.LogEntry;

/** Making, opening, copying and spoiling logs for tests. */
final class Logs {
    private Logs() {}

    static SqliteJobLog open(Path folder) {
        return SqliteJobLog.open(folder, OpenLog.Opening.WRITE).orElseThrow();
    }

    /** The refusal of opening this folder to write; fails when it opens. */
    static String refusal(Path folder) {
        return refusal(folder, OpenLog.Opening.WRITE);
    }

    static String refusal(Path folder, OpenLog.Opening how) {
        Outcome<SqliteJobLog> opened = SqliteJobLog.open(folder, how);
        if (opened.isOk()) {
            opened.orElseThrow().close();
            throw new AssertionError("the log opened: " + folder);
        }
        return opened.refusals().get(0).sentence();
    }

    /** Appends {@code count} entries of all kinds to a few streams. */
    static List<LogEntry> fill(JobLog log, int count, long seed) {
        EntrySamples samples = new EntrySamples(seed);
        List<LogEntry> kept = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            String id = "fill-" + seed + "-" + i;
            kept.add(log.append(samples.draft(id, "job-" + i % 3, samples.alone()), stream -> List.of())
                    .orElseThrow());
        }
        return kept;
    }

    /** Everything in the log in the order of the log. */
    static List<LogEntry> all(JobLog log) {
        return log.streams().stream()
                .flatMap(stream -> log.read(stream).stream())
                .sorted(Comparator.comparingLong(LogEntry::number))
                .toList();
    }

    /** Runs statements on the database file itself, with the log's guards away while they run. */
    static void tamper(Path folder, String... statements) throws SQLException {
        try (Connection raw = DriverManager.getConnection("jdbc:sqlite:" + new DataFolder(folder).database());
                Statement run = raw.createStatement()) {
            run.execute("pragma writable_schema = on");
            run.execute("create table guard as select * from sqlite_schema where type = 'trigger'");
            run.execute("drop trigger entry_stays");
            run.execute("drop trigger entry_remains");
            for (String statement : statements) {
                run.execute(statement);
            }
            run.execute("insert into sqlite_schema select * from guard");
            run.execute("drop table guard");
        }
    }

    static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path path : all.toList()) {
                Path target = to.resolve(from.relativize(path).toString());
                if (Files.isDirectory(path)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(path, target);
                }
            }
        }
    }
}
