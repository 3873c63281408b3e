package shimwright.trial;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.UnitShelf;
import shimwright.bench.desk.UnitSource;
import shimwright.bench.store.ShopStore;
import shimwright.bench.store.disk.DataFolder;
import shimwright.bench.store.disk.HeadFile;
import shimwright.bench.store.log.EntryRow;
import shimwright.bench.store.log.EntryText;
import shimwright.bench.store.log.OpenLog;
import shimwright.bench.store.log.Schema;
import shimwright.bench.store.log.Sql;
import shimwright.bench.store.sign.OwnerFolder;
import shimwright.bench.store.sqlite.SqliteJobLog;
import shimwright.bench.store.sqlite.SummaryFile;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.job.Draft;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.JobLog;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.Summaries;

/**
 * A shop of many jobs, made of the demo shop's two: the same entries under other ids, and notes until each has as many as
 * wanted. {@code java -cp … shimwright.trial.ShopGrowth PLAYED TO JOBS ENTRIES OPEN}, with PLAYED a demo shop as {@code Main
 * --warm PLAYED} lays it down.
 */
public final class ShopGrowth {
    /** The name of the program for which summaries are made. */
    static final String BUILD = "measured";

    private static final String CLOSED_JOB = "job-v-0091";
    private static final String OPEN_JOB = "job-v-0093";
    private static final int BATCH = 2_000;

    private final DataFolder to;
    private final PreparedStatement put;
    private Head log = Head.EMPTY;
    private int waiting;

    private ShopGrowth(DataFolder to, PreparedStatement put) {
        this.to = to;
        this.put = put;
    }

    /** No unit files: lines need none. */
    private record NoUnits() implements UnitSource {
        @Override
        public UnitShelf.Files files() {
            return new UnitShelf.Files(List.of(), List.of());
        }

        @Override
        public Outcome<String> put(String type, byte[] content) {
            return Outcome.ok(type);
        }

        @Override
        public Map<String, byte[]> shipped() {
            return Map.of();
        }
    }

    /** A job to be copied, and its line as the desk sums it up. */
    private record Model(List<LogEntry> entries, String number, String line) {}

    /** Makes the shop. */
    public static void main(String[] args) throws IOException, SQLException {
        Path played = Path.of(args[0]);
        DataFolder to = new DataFolder(Path.of(args[1]));
        copyFiles(played, to.root());
        List<LogEntry> shop = new ArrayList<>();
        Model closed;
        Model open;
        try (ShopStore store =
                ShopStore.in(played, OpenLog.Opening.WRITE, Optional.empty()).orElseThrow()) {
            shop.addAll(store.log().read(JobLog.SHOP));
            List<Summaries.Summary> lines = summaries(store);
            closed = model(store, lines, CLOSED_JOB);
            open = model(store, lines, OPEN_JOB);
        }
        try (Connection database = Sql.toWrite(to.database());
                SummaryFile summaries = SummaryFile.in(to.root(), BUILD)) {
            Schema.migrate(database);
            Sql.run(database, "begin immediate");
            try (PreparedStatement put = database.prepareStatement(
                    "insert into entry (" + EntryRow.COLUMNS + ") values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")) {
                new ShopGrowth(to, put)
                        .make(
                                shop,
                                closed,
                                open,
                                Integer.parseInt(args[2]),
                                Integer.parseInt(args[3]),
                                Integer.parseInt(args[4]),
                                summaries);
            }
            Sql.run(database, "commit");
        }
        long begun = System.nanoTime();
        // walks all of it once, and says so for later starts
        SqliteJobLog.open(to.root(), OpenLog.Opening.WRITE, Optional.of(owner(to.root())))
                .orElseThrow()
                .close();
        System.out.printf("walked in %.0f s%n", (System.nanoTime() - begun) / 1e9);
    }

    /** The owner's folder of a shop that is measured. */
    static OwnerFolder owner(Path data) {
        return new OwnerFolder(data.toAbsolutePath().resolveSibling(data.getFileName() + "-owner"), Clock.systemUTC());
    }

    private static void copyFiles(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path path : (Iterable<Path>) all::iterator) {
                Path target = to.resolve(from.relativize(path).toString());
                if (Files.isDirectory(path)) {
                    Files.createDirectories(target);
                } else if (!from.equals(path.getParent())) {
                    Files.copy(path, target);
                }
            }
        }
    }

    private static List<Summaries.Summary> summaries(ShopStore store) {
        List<Summaries.Summary> kept = new ArrayList<>();
        Summaries catching = new Summaries() {
            @Override
            public Head upTo() {
                return Head.EMPTY;
            }

            @Override
            public List<Summary> all() {
                return List.of();
            }

            @Override
            public void keep(Head upTo, List<Summary> changed) {
                kept.addAll(changed);
            }
        };
        UnitShelf none = new UnitShelf(new NoUnits(), store.documents());
        new Desk(store.log(), store.pictures(), none, Clock.systemUTC(), Optional.of(catching)).lines();
        return kept;
    }

    private static Model model(ShopStore store, List<Summaries.Summary> lines, String job) {
        String line = lines.stream()
                .filter(summary -> summary.stream().equals(job))
                .findFirst()
                .orElseThrow()
                .text();
        return new Model(store.log().read(job), line.substring(0, line.indexOf(' ')), line);
    }

    private void make(
            List<LogEntry> shop, Model closed, Model open, int jobs, int entries, int opened, SummaryFile summaries)
            throws IOException, SQLException {
        Head stream = Head.EMPTY;
        for (LogEntry entry : shop) {
            stream = add(stream, EntryText.of(entry.draft()));
        }
        List<Summaries.Summary> made = new ArrayList<>();
        for (int i = 1; i <= jobs; i++) {
            Model model = i > jobs - opened ? open : closed;
            String job = "job-g-" + i;
            String number = "G-" + i;
            Head head = job(model, job, number, entries);
            made.add(new Summaries.Summary(
                    job, head, number + model.line().substring(model.number().length())));
        }
        put.executeBatch();
        summaries.keep(log, made);
        new HeadFile(to.head()).write(log);
        System.out.println(log.count() + " entries");
    }

    private Head job(Model model, String job, String number, int entries) throws SQLException {
        List<LogEntry> from = model.entries();
        LogEntry last = from.get(from.size() - 1);
        Head head = Head.EMPTY;
        for (int i = 0; i < Math.min(from.size(), entries) - 1; i++) {
            head = add(head, copy(from.get(i), model, job, number, i));
        }
        for (int i = from.size(); i < entries; i++) {
            Draft note = new Draft(
                    job,
                    job + "-n" + i,
                    last.draft().at(),
                    "rebuilder",
                    new Entry.NoteMade("job", "measured again, nothing to say"));
            head = add(head, EntryText.of(note));
        }
        return add(head, copy(last, model, job, number, entries));
    }

    private static EntryText copy(LogEntry entry, Model model, String job, String number, int i) {
        EntryText text = EntryText.of(entry.draft());
        String body = text.body().replace("\"" + model.number() + "\"", "\"" + number + "\"");
        return new EntryText(job, job + "-" + i, text.at(), text.by(), text.device(), text.type(), body);
    }

    private Head add(Head stream, EntryText text) throws SQLException {
        EntryRow row = EntryRow.after(log, stream, text);
        put.setLong(1, row.number());
        put.setString(2, text.stream());
        put.setLong(3, row.streamNumber());
        put.setString(4, text.id());
        put.setString(5, text.at());
        put.setString(6, text.by());
        put.setString(7, text.device());
        put.setString(8, text.type());
        put.setString(9, text.body());
        put.setString(10, row.hash());
        put.setString(11, row.streamHash());
        put.addBatch();
        if (++waiting % BATCH == 0) {
            put.executeBatch();
        }
        log = row.head();
        return row.streamHead();
    }
}
