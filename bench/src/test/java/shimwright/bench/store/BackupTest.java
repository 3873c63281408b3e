package shimwright.bench.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shimwright.bench.store.backup.Backup;
import shimwright.bench.store.content.FilePictureStore;
import shimwright.bench.store.disk.DataFolder;
import shimwright.bench.store.disk.Disk;
import shimwright.bench.store.disk.Manifest;
import shimwright.bench.store.sqlite.ReadOnlyJobLog;
import shimwright.bench.store.sqlite.SqliteJobLog;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Draft;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.PictureStore.Picture;

class BackupTest {
    private final Path work;
    private final Path data;
    private final Path backup;

    BackupTest(@TempDir Path work) {
        this.work = work;
        this.data = work.resolve("data");
        this.backup = work.resolve("backup");
    }

    private static Picture picture(Path data, SqliteJobLog log, long seed) {
        Picture kept = FilePictureStore.open(new DataFolder(data).pictures())
                .orElseThrow()
                .keep("a.png", SamplePictures.noise(new Random(seed), 8, 8))
                .orElseThrow();
        Entry entry = new Entry.PictureAdded("job", kept.hash(), kept.mediaType(), kept.size(), "bearing race");
        log.append(new Draft("job-1", "picture-" + seed, Instant.EPOCH, "rebuilder", entry), stream -> List.of())
                .orElseThrow();
        return kept;
    }

    private List<LogEntry> shop() throws IOException {
        Files.createDirectories(data.resolve("units"));
        Files.writeString(data.resolve("units/four speed.yaml"), "unit: demo\n");
        try (SqliteJobLog log = Logs.open(data)) {
            log.append(
                            new Draft("job-1", "n", Instant.EPOCH, "rebuilder", new Entry.NoteMade("job", "wet")),
                            stream -> List.of())
                    .orElseThrow();
            picture(data, log, 1);
            picture(data, log, 2);
            return Logs.all(log);
        }
    }

    @Test
    void aBackupRestoresToTheSameLogHeadPicturesAndUnitFiles() throws IOException {
        List<LogEntry> kept = shop();
        Backup.Made made = Backup.make(data, backup).orElseThrow();
        Head head = new Head(kept.size(), kept.get(kept.size() - 1).hash());
        // the log, its head, two pictures, one unit file
        assertThat(made).isEqualTo(new Backup.Made(head, 5, List.of()));
        assertThat(Backup.check(backup).orElseThrow()).isEqualTo(made);

        Path restored = work.resolve("restored");
        assertThat(Backup.restore(backup, restored).orElseThrow()).isEqualTo(made);
        assertThat(restored.resolve("units/four speed.yaml")).hasContent("unit: demo\n");
        try (SqliteJobLog log = Logs.open(restored)) {
            assertThat(Logs.all(log)).isEqualTo(kept);
            picture(restored, log, 3);
        }
        Logs.open(restored).close();
    }

    @Test
    void aBackupMadeWhileEntriesAreWrittenIsAWholeBeginning() throws Exception {
        AtomicBoolean stop = new AtomicBoolean();
        try (SqliteJobLog log = Logs.open(data)) {
            Thread bench = new Thread(() -> {
                for (int round = 0; !stop.get(); round++) {
                    Logs.fill(log, 5, 1000 + round);
                    picture(data, log, round);
                }
            });
            bench.start();
            for (int i = 0; i < 4; i++) {
                Backup.Made made =
                        Backup.make(data, work.resolve("backup-" + i)).orElseThrow();
                // sample entries name pictures that never were; those of the bench must all be there
                assertThat(made.missing())
                        .extracting(Refusal::place)
                        .allMatch(place -> !place.matches("picture [0-9a-f]{12}"));
                Path restored = work.resolve("restored-" + i);
                Backup.restore(work.resolve("backup-" + i), restored).orElseThrow();
                try (ReadOnlyJobLog copy = ReadOnlyJobLog.open(restored).orElseThrow()) {
                    List<LogEntry> early = Logs.all(copy);
                    assertThat(early).isEqualTo(Logs.all(log).subList(0, early.size()));
                }
            }
            stop.set(true);
            bench.join();
        }
    }

    @Test
    void aPictureThatIsGoneIsReportedAndTheRestIsSaved() throws IOException {
        shop();
        String hash;
        try (SqliteJobLog log = Logs.open(data)) {
            hash = picture(data, log, 9).hash();
        }
        Files.delete(FilePictureStore.over(new DataFolder(data).pictures())
                .file(hash)
                .orElseThrow());
        Backup.Made made = Backup.make(data, backup).orElseThrow();
        assertThat(made.missing())
                .extracting(Refusal::sentence)
                .containsExactly("picture " + hash.substring(0, 12)
                        + ": an entry names it, but it is not there or not whole. Look for it in an older backup.");
        assertThat(Backup.check(backup).isOk()).isTrue();
    }

    @Test
    void everyDamagedBackupIsRefused() throws IOException {
        shop();
        Backup.make(data, backup).orElseThrow();
        List<Path> files = Manifest.files(backup);
        Random random = new Random(4);
        for (int i = 0; i < 40; i++) {
            Path spoiled = work.resolve("spoiled-" + i);
            Logs.copy(backup, spoiled);
            Path file = spoiled.resolve(backup.relativize(files.get(i % files.size())));
            byte[] content = Files.readAllBytes(file);
            if (random.nextInt(5) == 0) {
                Files.delete(file);
            } else {
                content[random.nextInt(content.length)] ^= (byte) (1 << random.nextInt(8));
                Files.write(file, content);
            }
            Outcome<Backup.Made> refused = Backup.restore(spoiled, work.resolve("never"));
            assertThat(refused.isOk()).as(file.toString()).isFalse();
            assertThat(work.resolve("never")).doesNotExist();
        }
    }

    @Test
    void allDamagedFilesAreNamedAtOnce() throws IOException {
        shop();
        Backup.make(data, backup).orElseThrow();
        Files.delete(backup.resolve("head"));
        Files.writeString(backup.resolve("units/four speed.yaml"), "unit: other\n");
        assertThat(Backup.check(backup).refusals())
                .extracting(Refusal::sentence)
                .containsExactly(
                        backup.resolve("head") + ": the file is missing. Use another backup.",
                        backup.resolve("units/four speed.yaml")
                                + ": the file was changed since the backup was made. Use another backup.");
    }

    @Test
    void aBackupOfADamagedLogIsNotMade() throws Exception {
        shop();
        Logs.tamper(data, "update entry set by_whom = 'x' where number = 1");
        assertThat(Backup.make(data, backup).refusals())
                .extracting(Refusal::fact)
                .allMatch(fact -> fact.contains("changed or damaged"));
        assertThat(backup).doesNotExist();
    }

    @Test
    void nothingIsOverwritten() throws IOException {
        shop();
        Backup.make(data, backup).orElseThrow();
        assertThat(Backup.make(data, backup).refusals())
                .extracting(Refusal::fact)
                .containsExactly("there is something here already");
        assertThat(Backup.restore(backup, data).refusals())
                .extracting(Refusal::fact)
                .containsExactly("there is something here already");
        assertThat(Backup.make(work.resolve("nowhere"), work.resolve("b2")).refusals())
                .extracting(Refusal::fact)
                .containsExactly("there is no job log here");
        assertThat(Backup.restore(data, work.resolve("b3")).refusals())
                .extracting(Refusal::fact)
                .containsExactly("this is not a whole backup: its list of files is missing or damaged");
    }

    @Test
    void aBackupThatWasCutOffBeforeIsStartedAfresh() throws IOException {
        shop();
        Files.createDirectories(work.resolve("backup.part/old"));
        Files.writeString(work.resolve("backup.part/old/file"), "x");
        assertThat(Backup.make(data, backup).orElseThrow().files()).isEqualTo(5);
        assertThat(work.resolve("backup.part")).doesNotExist();
    }

    @Test
    void whatIsNotListedAndWhatIsALinkIsNamedAndNotRestored() throws IOException {
        shop();
        Backup.make(data, backup).orElseThrow();
        Path secret = Files.writeString(work.resolve("secret"), "not of this shop");
        Files.createSymbolicLink(backup.resolve("units/link.yaml"), secret);
        Files.writeString(backup.resolve("units/more.yaml"), "unit: more\n");
        Path unit = backup.resolve("units/four speed.yaml");
        byte[] same = Files.readAllBytes(unit);
        Path elsewhere = Files.write(work.resolve("same"), same);
        Files.delete(unit);
        Files.createSymbolicLink(unit, elsewhere);
        assertThat(Backup.restore(backup, work.resolve("new")).refusals())
                .extracting(refusal -> refusal.place().replace(backup.toString(), "") + " " + refusal.fact())
                .containsExactlyInAnyOrder(
                        "/units/four speed.yaml the file is missing",
                        "/units/four speed.yaml this is a link, which no backup holds",
                        "/units/link.yaml this is a link, which no backup holds",
                        "/units/more.yaml this was not in the backup when it was made");
        assertThat(work.resolve("new")).doesNotExist();
    }

    @Test
    void aManifestWithALineThatNamesNoFileOfTheBackupIsNamed() throws IOException {
        shop();
        Backup.make(data, backup).orElseThrow();
        Path manifest = backup.resolve("manifest");
        String text = Files.readString(manifest);
        String lines = text.substring(0, text.lastIndexOf('\n', text.length() - 2) + 1);
        for (String garbage : List.of("garbage", "0".repeat(64) + " 3 ../secret", "0".repeat(64) + " 3 a\0b")) {
            String more = lines + garbage + "\n";
            String sum = Disk.hash(more.getBytes(java.nio.charset.StandardCharsets.UTF_8));
            Files.writeString(manifest, more + sum + " " + more.length() + " manifest\n");
            assertThat(Backup.restore(backup, work.resolve("new")).refusals())
                    .extracting(Refusal::fact)
                    .anyMatch(fact -> fact.startsWith("a line of the list of files cannot be read"));
        }
    }
}
