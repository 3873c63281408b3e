package shimwright.bench.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shimwright.bench.store.log.OpenLog;
import shimwright.bench.store.sqlite.ReadOnlyJobLog;
import shimwright.bench.store.sqlite.SqliteJobLog;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Draft;
import shimwright.rebuild.job.Entry.NoteMade;
import shimwright.rebuild.job.LogEntry;

class SqliteJobLogTest extends JobLogContract {
    private final Path folder;

    SqliteJobLogTest(@TempDir Path folder) {
        this.folder = folder;
    }

    @Override
    OpenLog open() {
        return Logs.open(folder);
    }

    @Test
    void anInterruptedWriterHarmsNobody() {
        try (SqliteJobLog log = Logs.open(folder)) {
            Thread.currentThread().interrupt();
            Outcome<LogEntry> first = append(log, note("job-1", "a", "one"));
            assertThat(Thread.interrupted()).isTrue();
            assertThat(first.isOk()).isFalse();
            assertThat(first.refusals().get(0).fact()).startsWith("kept, but the head file could not be written");
            assertThat(append(log, note("job-1", "a", "one")).orElseThrow().number())
                    .isEqualTo(1);
            assertThat(append(log, note("job-1", "b", "two")).isOk()).isTrue();
        }
        try (SqliteJobLog log = Logs.open(folder)) {
            assertThat(log.head().count()).isEqualTo(2);
        }
    }

    @Test
    void oneFolderHasOneWriterAndManyReaders() {
        assertThat(ReadOnlyJobLog.open(folder).refusals())
                .extracting(Refusal::fact)
                .containsExactly("there is no job log here");
        try (SqliteJobLog log = Logs.open(folder)) {
            List<LogEntry> kept = Logs.fill(log, 10, 3);
            assertThat(Logs.refusal(folder)).contains("another Shimwright is working in this folder");
            try (ReadOnlyJobLog reader = ReadOnlyJobLog.open(folder).orElseThrow()) {
                assertThat(Logs.all(reader)).isEqualTo(kept);
                assertThat(reader.head()).isEqualTo(log.head());
                assertThat(reader.head("job-1")).isEqualTo(log.head("job-1"));
                assertThat(append(reader, note("job-1", "a", "wet")).isOk()).isFalse();
            }
            assertThat(append(log, note("job-1", "a", "wet")).isOk()).isTrue();
        }
    }

    @Test
    void aFolderThatIsAFileIsRefused() throws Exception {
        Path file = Files.writeString(folder.resolve("file"), "x");
        assertThat(Logs.refusal(file)).contains("this folder cannot be used");
    }

    @Test
    void theDeviceIsKeptAndHashed() throws Exception {
        try (SqliteJobLog log = Logs.open(folder)) {
            Draft draft = new Draft("job-1", "a", NOON, "rebuilder", "tablet-7f", new NoteMade("job", "wet"));
            assertThat(append(log, draft).orElseThrow().draft()).isEqualTo(draft);
            assertThat(log.read("job-1").get(0).draft()).isEqualTo(draft);
        }
        Logs.tamper(folder, "update entry set device = 'tablet-80'");
        assertThat(Logs.refusal(folder)).contains("changed or damaged");
    }
}
