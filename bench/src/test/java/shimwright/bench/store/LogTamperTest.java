package shimwright.bench.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shimwright.bench.store.disk.DataFolder;
import shimwright.bench.store.disk.HeadFile;
import shimwright.bench.store.log.OpenLog.Opening;
import shimwright.bench.store.log.Sql;
import shimwright.bench.store.sqlite.ReadOnlyJobLog;
import shimwright.bench.store.sqlite.SqliteJobLog;
import shimwright.rebuild.job.Draft;
import shimwright.rebuild.job.Entry.NoteMade;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.StoreFailure;

/** A log that was changed behind the program's back, or lost its end or its head file: said at the start. */
class LogTamperTest {
    private final Path folder;

    LogTamperTest(@TempDir Path work) {
        this.folder = work.resolve("data");
    }

    @BeforeEach
    void twentyEntries() {
        try (SqliteJobLog log = Logs.open(folder)) {
            Logs.fill(log, 20, 7);
        }
    }

    private Draft note(String id) {
        return new Draft("job-1", id, Instant.EPOCH, "rebuilder", new NoteMade("job", id));
    }

    @Test
    void theTriggersForbidChangeAndRemoval() throws SQLException {
        try (Connection raw = Sql.toWrite(new DataFolder(folder).database());
                Statement run = raw.createStatement()) {
            assertThatThrownBy(() -> run.execute("update entry set at = '' where number = 3"))
                    .hasMessageContaining("an entry is never changed");
            assertThatThrownBy(() -> run.execute("delete from entry where number = 3"))
                    .hasMessageContaining("an entry is never removed");
        }
    }

    @Test
    void tamperingWithNothingIsNotSeen() throws SQLException {
        Logs.tamper(folder);
        Logs.open(folder).close();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "update entry set body = replace(body, '}', ' }') where number = 7",
                "update entry set at = '2020-01-01T00:00:00Z' where number = 7",
                "update entry set by_whom = 'somebody else' where number = 7",
                "update entry set id = 'x' where number = 7",
                "update entry set type = 'NoteMade ' where number = 7",
                "update entry set stream = 'job-9', stream_number = 1 where number = 7",
                "update entry set hash = replace(hash, 'a', 'b') where number = 7",
                "update entry set stream_hash = replace(stream_hash, 'a', 'b') where number = 7",
                "update entry set stream_number = 99 where number = 7",
                "delete from entry where number = 7",
                "delete from entry where number = 1",
                "update entry set number = 100 - number where number in (7, 8);",
                "insert into entry select 7.0 + 14, stream, 99, id || 'x', at, by_whom, type, body, hash, stream_hash, device"
                        + " from entry where number = 7"
            })
    void aChangedLogIsSaidAndLeftAlone(String change) throws SQLException, IOException {
        Logs.tamper(folder, change);
        byte[] before = Files.readAllBytes(folder.resolve("shimwright.db"));
        assertThat(Logs.refusal(folder))
                .contains("the job log was changed or damaged after it was kept")
                .contains("does not follow from the one before")
                .contains("restore the newest backup");
        assertThat(Logs.refusal(folder, Opening.ACCEPT)).contains("changed or damaged");
        assertThat(ReadOnlyJobLog.open(folder).isOk()).isFalse();
        assertThat(Files.readAllBytes(folder.resolve("shimwright.db"))).isEqualTo(before);
    }

    @Test
    void swappedEntriesAreSaid() throws SQLException {
        Logs.tamper(
                folder,
                "update entry set number = -7 where number = 7",
                "update entry set number = 7 where number = 8",
                "update entry set number = 8 where number = -7");
        assertThat(Logs.refusal(folder)).contains("entry 7 of 20 does not follow");
    }

    @Test
    void missingGuardsAreSaid() throws SQLException {
        try (Connection raw = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("shimwright.db"));
                Statement run = raw.createStatement()) {
            run.execute("drop trigger entry_stays");
        }
        assertThat(Logs.refusal(folder)).contains("tables are not as this program made them");
    }

    @Test
    void aCutTailIsCountedAndCanBeAcceptedOnceWithTheOldHeadKept() throws SQLException {
        Logs.tamper(folder, "delete from entry where number > 17");
        assertThat(Logs.refusal(folder))
                .isEqualTo(folder + ": the job log lost its end: 20 entries were kept, 17 are there, 3 are missing."
                        + " Nothing was written. Keep this folder as it is and restore the newest backup into a new"
                        + " one. To go on without what is missing, start once with --accept-log.");
        try (SqliteJobLog log = SqliteJobLog.open(folder, Opening.ACCEPT).orElseThrow()) {
            assertThat(log.append(note("a"), stream -> List.of()).orElseThrow().number())
                    .isEqualTo(18);
        }
        assertThat(folder.resolve("head-before-entry-18")).isRegularFile();
        Logs.open(folder).close();
    }

    @Test
    void aWholeLogThatIsGoneIsSaidAndNotMadeAnew() throws IOException {
        Files.delete(folder.resolve("shimwright.db"));
        assertThat(Logs.refusal(folder)).contains("20 entries were kept, 0 are there, 20 are missing");
        assertThat(folder.resolve("shimwright.db")).doesNotExist();
    }

    @Test
    void anotherLogInItsPlaceIsSaid() throws IOException {
        Path other = folder.resolveSibling("other");
        try (SqliteJobLog log = Logs.open(other)) {
            Logs.fill(log, 25, 8);
        }
        Files.delete(folder.resolve("shimwright.db"));
        Files.copy(other.resolve("shimwright.db"), folder.resolve("shimwright.db"));
        assertThat(Logs.refusal(folder)).contains("entry 20 is another than the head file says");
        assertThat(Logs.refusal(folder, Opening.ACCEPT)).contains("entry 20 is another than the head file says");
    }

    @Test
    void aMissingHeadFileIsSaidAndCanBeAccepted() throws IOException {
        Files.delete(folder.resolve("head"));
        assertThat(Logs.refusal(folder))
                .contains("the head file is missing")
                .contains("ends at entry 20")
                .contains("--accept-log");
        SqliteJobLog.open(folder, Opening.ACCEPT).orElseThrow().close();
        Logs.open(folder).close();
    }

    @Test
    void aTornHeadFileFallsBackOnItsOtherSlot() throws IOException {
        byte[] head = Files.readAllBytes(folder.resolve("head"));
        // 20 entries and the first empty head are 21 turns: the newest slot is the second
        assertThat(new String(head, 4096, 40, StandardCharsets.US_ASCII)).startsWith("shimwright head 1 ");
        byte[] torn = head.clone();
        torn[4096 + 50]++;
        Files.write(folder.resolve("head"), torn);
        assertThat(new HeadFile(folder.resolve("head")).read().orElseThrow().count())
                .isEqualTo(19);
        try (SqliteJobLog log = Logs.open(folder)) {
            assertThat(log.head().count()).isEqualTo(20);
        }
        assertThat(new HeadFile(folder.resolve("head")).read().orElseThrow().count())
                .isEqualTo(20);
        torn[50]++;
        Files.write(folder.resolve("head"), torn);
        assertThat(Logs.refusal(folder)).contains("the head file is damaged");
        SqliteJobLog.open(folder, Opening.ACCEPT).orElseThrow().close();
        Logs.open(folder).close();
    }

    @Test
    void aHeadThatLagsIsBroughtUp() throws IOException {
        byte[] early = Files.readAllBytes(folder.resolve("head"));
        Head grown;
        try (SqliteJobLog log = Logs.open(folder)) {
            Logs.fill(log, 5, 9);
            grown = log.head();
        }
        Files.write(folder.resolve("head"), early);
        Logs.open(folder).close();
        assertThat(new HeadFile(folder.resolve("head")).read()).contains(grown);
    }

    @Test
    void aNewerProgramsLogIsSaid() throws SQLException {
        try (Connection raw = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("shimwright.db"));
                Statement run = raw.createStatement()) {
            run.execute("pragma user_version = 99");
        }
        assertThat(Logs.refusal(folder)).contains("tables of version 99").contains("Use the newer program");
    }

    @Test
    void anEntryDamagedWhileTheProgramRunsIsNotShown() throws SQLException {
        try (SqliteJobLog log = Logs.open(folder)) {
            LogEntry third = Logs.all(log).get(2);
            Logs.tamper(folder, "update entry set by_whom = 'x' where number = 3");
            assertThatThrownBy(() -> log.read(third.draft().stream()))
                    .isInstanceOf(StoreFailure.class)
                    .hasMessageContaining("was changed or damaged while the program ran");
        }
    }

    @Test
    void theHashIsTheOneThatIsDocumented() throws Exception {
        // the same by another way: the bytes written out by hand, digested by the system's own tool
        LogEntry first = Logs.open(folder.resolveSibling("one"))
                .append(note("a"), stream -> List.of())
                .orElseThrow();
        Path bytes = folder.resolveSibling("bytes");
        try (var out = new DataOutputStream(Files.newOutputStream(bytes))) {
            out.writeByte(1);
            out.write(new byte[32]);
            for (String text : Stream.of(
                            "job-1",
                            "a",
                            "1970-01-01T00:00:00Z",
                            "rebuilder",
                            "NoteMade",
                            "{\"about\":\"job\",\"text\":\"a\"}")
                    .toList()) {
                out.writeInt(text.length());
                out.writeBytes(text);
            }
        }
        Process sum = new ProcessBuilder("sha256sum", bytes.toString()).start();
        assertThat(new String(sum.getInputStream().readAllBytes(), StandardCharsets.US_ASCII))
                .startsWith(first.hash() + " ");
        assertThat(first.streamHash()).isEqualTo(first.hash());
    }
}
