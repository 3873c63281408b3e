package shimwright.bench.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shimwright.bench.store.backup.Backup;
import shimwright.bench.store.disk.DataFolder;
import shimwright.bench.store.disk.Disk;
import shimwright.bench.store.disk.Manifest;
import shimwright.bench.store.log.EntryText;
import shimwright.bench.store.log.OpenLog;
import shimwright.bench.store.log.Sql;
import shimwright.bench.store.sign.OwnerFolder;
import shimwright.bench.store.sign.SignedHead;
import shimwright.bench.store.sqlite.FolderHashes;
import shimwright.bench.store.sqlite.LogCheck;
import shimwright.bench.store.sqlite.SqliteJobLog;
import shimwright.rebuild.job.Head;

/**
 * Random changes of one byte, and forgeries whose every hash fits again, of a shop, its backup and its record: each must be
 * named. {@code -Dshimwright.bytes=10000 -Dshimwright.forgeries=1000} for the long run.
 */
class FaultInjectionTest {
    private static final int BYTES = Integer.getInteger("shimwright.bytes", 120);
    private static final int FORGERIES = Integer.getInteger("shimwright.forgeries", 12);

    private final Path work;
    private final KeptShop shop;
    private final OwnerFolder forger;
    private final Random random = new Random(20261129);

    FaultInjectionTest(@TempDir Path work) throws IOException {
        this.work = work;
        this.shop = new KeptShop(work);
        this.forger = new OwnerFolder(work.resolve("forger"), Clock.systemUTC());
    }

    private boolean isWhole(Path file) {
        if (file.equals(shop.record)) {
            return shop.check().record(file, Optional.empty()).isWhole();
        }
        return file.startsWith(shop.data)
                ? shop.check().folder(shop.data).isWhole()
                : shop.check().backup(shop.backup).isWhole();
    }

    @Test
    void everyChangedByteIsNamed() throws IOException {
        List<Path> files = new ArrayList<>(List.of(shop.record));
        files.addAll(Manifest.files(shop.data));
        files.addAll(Manifest.files(shop.backup));
        // SQLite's shared memory is made anew at each opening and holds nothing that is kept
        files.removeIf(file -> file.toFile().length() == 0 || file.toString().endsWith("-shm"));
        assertThat(files).hasSizeGreaterThan(12);
        for (Path file : files) {
            assertThat(isWhole(file)).as(file.toString()).isTrue();
        }
        List<String> unseen = new ArrayList<>();
        for (int i = 0; i < BYTES; i++) {
            Path file = files.get(random.nextInt(files.size()));
            byte[] whole = Files.readAllBytes(file);
            byte[] changed = whole.clone();
            int at = random.nextInt(whole.length);
            changed[at] ^= (byte) (1 + random.nextInt(255));
            Files.write(file, changed);
            if (isWhole(file)) {
                unseen.add(work.relativize(file) + " at " + at + ": " + whole[at] + " to " + changed[at]);
            }
            Files.write(file, whole);
        }
        assertThat(unseen).isEmpty();
        assertThat(isWhole(files.get(1))).isTrue();
    }

    @Test
    void everyForgeryIsNamed() throws IOException, SQLException {
        List<String> unseen = new ArrayList<>();
        for (int i = 0; i < FORGERIES; i++) {
            int kind = i % 3;
            int way = random.nextInt(3);
            long number = 1L + random.nextInt(18);
            Path target = work.resolve("forged-" + i);
            boolean whole = switch (kind) {
                case 0 -> forgedFolderIsWhole(target, number, way);
                case 1 -> forgedBackupIsWhole(target, number, way);
                default -> forgedRecordIsWhole(target, way);
            };
            if (whole) {
                unseen.add("kind " + kind + ", entry " + number + ", way " + way);
            }
        }
        assertThat(unseen).isEmpty();
    }

    /** The folder in its own place, since that is what the owner remembers; put right again after. */
    private boolean forgedFolderIsWhole(Path aside, long number, int way) throws IOException, SQLException {
        Logs.copy(shop.data, aside);
        KeptShop.forge(shop.data, number, this::changed);
        DataFolder files = new DataFolder(shop.data);
        signAnew(shop.data, way);
        Files.delete(files.sums());
        if (way == 2) {
            FolderHashes.write(
                    files,
                    forger,
                    shopOf(files),
                    new LogCheck(files).check(false).orElseThrow());
        }
        boolean sound = new LogCheck(files).check(false).isOk();
        boolean whole = shop.check().folder(shop.data).isWhole();
        boolean opens = SqliteJobLog.open(shop.data, OpenLog.Opening.WRITE, Optional.of(shop.owner))
                .map(log -> {
                    log.close();
                    return true;
                })
                .isOk();
        Disk.deleteAll(shop.data);
        Files.move(aside, shop.data);
        assertThat(sound).isTrue();
        return whole || opens;
    }

    private boolean forgedBackupIsWhole(Path target, long number, int way) throws IOException, SQLException {
        Logs.copy(shop.backup, target);
        KeptShop.forge(target, number, this::changed);
        signAnew(target, way);
        DataFolder files = new DataFolder(target);
        Files.delete(files.manifest());
        byte[] signature = Files.readAllBytes(files.signature());
        Files.delete(files.signature());
        Files.writeString(files.manifest(), Manifest.of(target), StandardCharsets.UTF_8);
        Head head = new LogCheck(files).check(false).orElseThrow();
        if (way == 0) {
            Files.write(files.signature(), signature);
        } else if (way == 2) {
            SignedHead signed = forger.sign(
                    SignedHead.What.BACKUP, shopOf(files), "", head, Optional.of(Disk.hash(files.manifest())));
            Files.writeString(files.signature(), signed.line() + "\n");
        }
        assertThat(Backup.check(target).isOk()).isTrue();
        return shop.check().backup(target).isWhole();
    }

    private boolean forgedRecordIsWhole(Path target, int way) throws IOException {
        byte[] signed = Files.readAllBytes(shop.record);
        String text = new String(signed, StandardCharsets.ISO_8859_1);
        int end = text.lastIndexOf("\n%shimwright");
        byte[] record = Arrays.copyOf(signed, end);
        record[random.nextInt(end)]++;
        SignedHead own =
                SignedHead.of(text.substring(end + 2, text.length() - 1)).orElseThrow();
        byte[] forged = switch (way) {
            case 0 -> own.behind(record);
            case 1 -> record;
            default ->
                forger.sign(
                                SignedHead.What.RECORD,
                                own.shop(),
                                own.stream(),
                                own.head(),
                                Optional.of(Disk.hash(record)))
                        .behind(record);
        };
        Files.write(target, forged);
        return shop.check().record(target, Optional.empty()).isWhole();
    }

    /** The signatures in the log: left as they are, taken away, or made by the forger's own key. */
    private void signAnew(Path folder, int way) throws SQLException {
        if (way == 0) {
            return;
        }
        try (Connection raw = DriverManager.getConnection("jdbc:sqlite:" + new DataFolder(folder).database());
                Statement run = raw.createStatement()) {
            run.execute("delete from signature");
            if (way == 2) {
                Head head = Sql.head(raw, KeptShop.JOB);
                Sql.sign(
                        raw,
                        forger.sign(
                                SignedHead.What.HANDBACK,
                                Sql.shop(raw).orElseThrow(),
                                KeptShop.JOB,
                                head,
                                Optional.empty()));
            }
        }
    }

    private static String shopOf(DataFolder files) throws SQLException {
        try (Connection database = Sql.toRead(files.database())) {
            return Sql.shop(database).orElseThrow();
        }
    }

    private EntryText changed(EntryText e) {
        return switch (random.nextInt(3)) {
            case 0 -> new EntryText(e.stream(), e.id(), e.at(), "signer " + random.nextInt(), "", e.type(), e.body());
            case 1 ->
                new EntryText(
                        e.stream(),
                        e.id(),
                        Instant.parse(e.at())
                                .minusSeconds(1 + random.nextInt(1000))
                                .toString(),
                        e.by(),
                        e.device(),
                        e.type(),
                        e.body());
            default -> new EntryText(e.stream(), e.id(), e.at(), e.by(), "tablet", e.type(), e.body());
        };
    }
}
