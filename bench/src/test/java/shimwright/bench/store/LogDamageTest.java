package shimwright.bench.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shimwright.bench.store.log.OpenLog;
import shimwright.bench.store.sqlite.SqliteJobLog;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.job.LogEntry;

/** Bytes cut and turned in the files: an opened log is the whole log, and anything less is said. */
class LogDamageTest {
    private static final int ENTRIES = 60;
    private static final int TRIALS = 200;

    private final Path work;

    LogDamageTest(@TempDir Path work) {
        this.work = work;
    }

    /** A folder as a kill leaves it: entries in the write-ahead log, not yet in the database. */
    private List<LogEntry> killedFolder(Path to) throws IOException {
        Path living = work.resolve("living");
        try (SqliteJobLog log = Logs.open(living)) {
            List<LogEntry> kept = Logs.fill(log, ENTRIES, 5);
            Logs.copy(living, to);
            return kept;
        }
    }

    private List<LogEntry> closedFolder(Path folder) {
        try (SqliteJobLog log = Logs.open(folder)) {
            return Logs.fill(log, ENTRIES, 6);
        }
    }

    private static byte[] cut(byte[] content, Random random) {
        return Arrays.copyOf(content, random.nextInt(content.length));
    }

    private static byte[] flipped(byte[] content, Random random) {
        byte[] other = content.clone();
        for (int n = 1 + random.nextInt(3); n > 0; n--) {
            other[random.nextInt(other.length)] ^= (byte) (1 << random.nextInt(8));
        }
        return other;
    }

    /** Damages one file of the folder many ways; returns how often the log opened whole and how often it was refused. */
    private Map<String, Integer> damage(Path folder, String file, List<LogEntry> kept, UnaryOperator<byte[]> how)
            throws IOException {
        Map<String, Integer> seen = new TreeMap<>();
        for (int i = 0; i < TRIALS; i++) {
            Path copy = Files.createTempDirectory(work, "trial");
            Logs.copy(folder, copy.resolve("data"));
            Path damaged = copy.resolve("data").resolve(file);
            Files.write(damaged, how.apply(Files.readAllBytes(damaged)));
            Outcome<SqliteJobLog> opened = SqliteJobLog.open(copy.resolve("data"), OpenLog.Opening.WRITE);
            if (opened instanceof Outcome.Ok<SqliteJobLog> ok) {
                try (SqliteJobLog log = ok.value()) {
                    assertThat(Logs.all(log)).isEqualTo(kept);
                    assertThat(log.head().count()).isEqualTo(ENTRIES);
                }
                seen.merge("whole", 1, Integer::sum);
            } else {
                assertThat(opened.refusals()).hasSize(1);
                assertThat(opened.refusals().get(0).hint()).contains("Nothing was written");
                seen.merge("refused", 1, Integer::sum);
            }
        }
        return seen;
    }

    @Test
    void aWriteAheadLogCutAnywhereIsNeverTakenForTheWhole() throws IOException {
        List<LogEntry> kept = killedFolder(work.resolve("killed"));
        Random random = new Random(11);
        assertThat(damage(work.resolve("killed"), "shimwright.db-wal", kept, wal -> cut(wal, random)))
                .containsEntry("refused", TRIALS);
    }

    @Test
    void bitsTurnedInTheWriteAheadLogAreHarmlessOrSaid() throws IOException {
        List<LogEntry> kept = killedFolder(work.resolve("killed"));
        Random random = new Random(12);
        assertThat(damage(work.resolve("killed"), "shimwright.db-wal", kept, wal -> flipped(wal, random)))
                .hasEntrySatisfying("refused", n -> assertThat(n).isGreaterThan(TRIALS * 9 / 10));
    }

    @Test
    void bitsTurnedInTheDatabaseAreHarmlessOrSaid() throws IOException {
        List<LogEntry> kept = closedFolder(work.resolve("closed"));
        Random random = new Random(13);
        assertThat(damage(work.resolve("closed"), "shimwright.db", kept, file -> flipped(file, random)))
                .hasEntrySatisfying("refused", n -> assertThat(n).isGreaterThan(TRIALS / 2));
    }

    @Test
    void aDatabaseCutShortIsSaid() throws IOException {
        List<LogEntry> kept = closedFolder(work.resolve("closed"));
        Random random = new Random(14);
        assertThat(damage(work.resolve("closed"), "shimwright.db", kept, file -> cut(file, random)))
                .containsEntry("refused", TRIALS);
    }

    @Test
    void aHeadFileCutOrTurnedAnywhereIsHarmlessOrSaid() throws IOException {
        List<LogEntry> kept = closedFolder(work.resolve("closed"));
        Random random = new Random(15);
        assertThat(damage(
                        work.resolve("closed"),
                        "head",
                        kept,
                        file -> random.nextBoolean() ? cut(file, random) : flipped(file, random)))
                .containsOnlyKeys("refused", "whole");
    }
}
