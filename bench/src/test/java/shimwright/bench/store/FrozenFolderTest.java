package shimwright.bench.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shimwright.bench.store.backup.Backup;
import shimwright.bench.store.disk.DataFolder;
import shimwright.bench.store.disk.HeadFile;
import shimwright.bench.store.log.OpenLog.Opening;
import shimwright.bench.store.log.Schema;
import shimwright.bench.store.sign.OwnerFolder;
import shimwright.bench.store.sqlite.ReadOnlyJobLog;
import shimwright.bench.store.sqlite.SqliteJobLog;
import shimwright.bench.store.verify.Verification;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.LogEntry;
import tools.jackson.databind.JsonNode;

/** Data folders that earlier programs wrote, with their tables, files and signatures, under this one. */
class FrozenFolderTest {
    private final Path data;
    private final Path owner;

    FrozenFolderTest(@TempDir Path work) {
        this.data = work.resolve("data");
        this.owner = work.resolve("owner");
    }

    private OwnerFolder owner() {
        return new OwnerFolder(owner, Clock.systemUTC());
    }

    @ParameterizedTest
    @ValueSource(strings = "2026-11-29")
    void whatAnEarlierProgramKeptIsWholeAndGoesOn(String release, @TempDir Path work) throws IOException, SQLException {
        FrozenFolder.lay(release, data, owner);
        Verification check = new Verification(owner(), Optional.empty());
        assertThat(check.folder(data).faults()).isEmpty();
        List<LogEntry> before;
        try (SqliteJobLog log =
                SqliteJobLog.open(data, Opening.WRITE, Optional.of(owner())).orElseThrow()) {
            before = Logs.all(log);
            assertThat(before).hasSizeGreaterThan(100);
            assertThat(log.walk()).isEmpty();
            Logs.fill(log, 5, 99);
        }
        assertThat(check.folder(data).faults()).isEmpty();
        assertThat(check.folder(data).sound()).contains("the hand-back of job-v-1 is as it was signed");
        Path backup = work.resolve("backup");
        Backup.make(data, backup, Optional.of(owner())).orElseThrow();
        assertThat(check.backup(backup).faults()).isEmpty();
        try (SqliteJobLog log = Logs.open(data)) {
            assertThat(Logs.all(log)).startsWith(before.toArray(LogEntry[]::new));
        }
    }

    /** The frozen text stands for what was kept: one letter of it changed is not taken for the same. */
    @Test
    void oneLetterOfTheFrozenFolderChangedIsNamed() throws IOException, SQLException {
        FrozenFolder.lay("2026-11-29", data, owner);
        Logs.tamper(data, "update entry set body = replace(body, 'note 3', 'note 4')");
        assertThat(SqliteJobLog.open(data, Opening.WRITE, Optional.of(owner())).refusals())
                .extracting(Refusal::fact)
                .singleElement()
                .asString()
                .contains("does not follow from the one before");
    }

    /** Tables as the first version had them: no device, no signatures, the entries of then. */
    @Test
    void tablesOfTheFirstVersionAreBroughtToThisOne() throws IOException, SQLException {
        DataFolder files = new DataFolder(data);
        FrozenStore.lay("0.1.0", data);
        Path aside = data.resolveSibling("aside");
        Files.move(data, aside);
        Files.createDirectories(data);
        try (Connection raw = DriverManager.getConnection("jdbc:sqlite:" + files.database());
                Statement run = raw.createStatement()) {
            run.execute("attach '" + new DataFolder(aside).database() + "' as new");
            for (String statement : FIRST) {
                run.execute(statement);
            }
            run.execute(
                    "insert into main.entry select number, stream, stream_number, id, at, by_whom, type, body, hash,"
                            + " stream_hash from new.entry");
        }
        new HeadFile(files.head()).write(lastOf("0.1.0"));
        List<LogEntry> before;
        try (ReadOnlyJobLog log = ReadOnlyJobLog.open(data).orElseThrow()) {
            before = Logs.all(log);
        }
        try (SqliteJobLog log = Logs.open(data)) {
            assertThat(Logs.all(log)).isEqualTo(before).hasSizeGreaterThan(200);
            Logs.fill(log, 5, 99);
            assertThat(log.walk()).isEmpty();
        }
        try (Connection raw = DriverManager.getConnection("jdbc:sqlite:" + files.database())) {
            assertThat(Schema.version(raw)).isEqualTo(Schema.NEWEST);
        }
    }

    private static Head lastOf(String release) throws IOException {
        List<JsonNode> lines = FrozenStore.lines(release);
        JsonNode last = lines.get(lines.size() - 1);
        return new Head(lines.size(), FrozenStore.text(last, "hash"));
    }

    /** As 0.1.0 made them. */
    private static final List<String> FIRST = List.of("""
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
            begin select raise(abort, 'an entry is never removed'); end""", "pragma user_version = 1");
}
