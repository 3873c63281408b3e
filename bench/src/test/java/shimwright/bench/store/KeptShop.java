package shimwright.bench.store;

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
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
import shimwright.bench.store.backup.Backup;
import shimwright.bench.store.content.FileDocumentStore;
import shimwright.bench.store.content.FilePictureStore;
import shimwright.bench.store.disk.DataFolder;
import shimwright.bench.store.disk.HeadFile;
import shimwright.bench.store.log.EntryRow;
import shimwright.bench.store.log.EntryText;
import shimwright.bench.store.log.OpenLog;
import shimwright.bench.store.sign.OwnerFolder;
import shimwright.bench.store.sqlite.SqliteJobLog;
import shimwright.bench.store.verify.Verification;
import shimwright.rebuild.job.Draft;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.Heads;
import shimwright.rebuild.job.JobLog;
import shimwright.rebuild.job.Signing;

/** A small shop with an owner: two jobs, one handed back, pictures, a document, a record and a backup, all whole. */
final class KeptShop {
    static final Instant NOON = Instant.parse("2026-11-29T12:00:00Z");
    static final String JOB = "job-v-1";

    final OwnerFolder owner;
    final Path data;
    final Path backup;
    final Path record;
    final Head printed;

    KeptShop(Path work) throws IOException {
        owner = new OwnerFolder(work.resolve("owner"), Clock.fixed(NOON, ZoneOffset.UTC));
        data = work.resolve("data");
        backup = work.resolve("backup");
        record = work.resolve("record.pdf");
        DataFolder files = new DataFolder(data);
        try (SqliteJobLog log = open()) {
            FilePictureStore pictures = FilePictureStore.open(files.pictures()).orElseThrow();
            String unit = FileDocumentStore.open(files.documents())
                    .orElseThrow()
                    .keep("unit.yaml", "unit: one\n".repeat(40).getBytes(StandardCharsets.UTF_8))
                    .orElseThrow();
            keep(log, JOB, opened("V-1", unit));
            keep(log, "job-v-2", opened("V-2", unit));
            for (int i = 0; i < 12; i++) {
                keep(log, i % 3 == 0 ? "job-v-2" : JOB, new Entry.NoteMade("job", "note " + i));
            }
            keep(log, JobLog.SHOP, new Entry.ShimRemoved("s1", "bent"));
            var picture = pictures.keep("a.png", SamplePictures.noise(new Random(5), 12, 12))
                    .orElseThrow();
            keep(log, JOB, new Entry.PictureAdded("job", picture.hash(), picture.mediaType(), picture.size(), "noise"));
            keep(log, JOB, new Entry.HandedBack("a year", "change the oil", ""));
            printed = log.head(JOB);
            byte[] pdf = "%PDF-1.7\nas good as one\n%%EOF".repeat(20).getBytes(StandardCharsets.US_ASCII);
            Files.write(record, log.signing().sign(pdf, JOB, printed));
            log.signing().remember(Signing.Occasion.PRINTED, JOB, printed);
            keep(log, "job-v-2", new Entry.NoteMade("job", "after"));
        }
        Backup.make(data, backup, Optional.of(owner)).orElseThrow();
    }

    SqliteJobLog open() {
        return SqliteJobLog.open(data, OpenLog.Opening.WRITE, Optional.of(owner))
                .orElseThrow();
    }

    Verification check() {
        return new Verification(owner, Optional.empty());
    }

    static void keep(JobLog log, String stream, Entry entry) {
        Draft draft = new Draft(stream, "e" + log.head().count(), NOON, "rebuilder", entry);
        log.append(List.of(draft), Heads.NOTHING).orElseThrow();
    }

    private static Entry opened(String number, String unitFile) {
        return new Entry.JobOpened(number, "one", "A", "owner", List.of(), Map.of(), "", "", unitFile);
    }

    /** Changes an entry of a log and makes every hash, the guards and the head file fit again, as its owner could. */
    static void forge(Path folder, long number, UnaryOperator<EntryText> change) throws SQLException, IOException {
        DataFolder files = new DataFolder(folder);
        Head log = Head.EMPTY;
        try (Connection raw = DriverManager.getConnection("jdbc:sqlite:" + files.database())) {
            raw.setAutoCommit(false);
            List<String> guards = new ArrayList<>();
            try (Statement ask = raw.createStatement();
                    ResultSet rows = ask.executeQuery("select sql from sqlite_schema where type = 'trigger'")) {
                while (rows.next()) {
                    guards.add(rows.getString(1));
                }
            }
            List<EntryRow> before = new ArrayList<>();
            try (Statement run = raw.createStatement()) {
                run.execute("drop trigger entry_stays");
                run.execute("drop trigger entry_remains");
                try (ResultSet rows = run.executeQuery("select " + EntryRow.COLUMNS + " from entry order by number")) {
                    while (rows.next()) {
                        before.add(EntryRow.of(rows));
                    }
                }
                Map<String, Head> streams = new HashMap<>();
                for (EntryRow row : before) {
                    EntryText written = row.number() == number ? change.apply(row.written()) : row.written();
                    EntryRow made = EntryRow.after(log, streams.getOrDefault(written.stream(), Head.EMPTY), written);
                    log = made.head();
                    streams.put(written.stream(), made.streamHead());
                    put(raw, made);
                }
                for (String guard : guards) {
                    run.execute(guard);
                }
            }
            raw.commit();
        }
        Files.delete(files.head());
        new HeadFile(files.head()).write(log);
    }

    private static void put(Connection raw, EntryRow row) throws SQLException {
        try (PreparedStatement put = raw.prepareStatement(
                "update entry set at = ?, by_whom = ?, device = ?, body = ?, hash = ?, stream_hash = ?"
                        + " where number = ?")) {
            put.setString(1, row.written().at());
            put.setString(2, row.written().by());
            put.setString(3, row.written().device());
            put.setString(4, row.written().body());
            put.setString(5, row.hash());
            put.setString(6, row.streamHash());
            put.setLong(7, row.number());
            put.executeUpdate();
        }
    }
}
