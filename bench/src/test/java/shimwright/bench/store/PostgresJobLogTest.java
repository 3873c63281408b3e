package shimwright.bench.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shimwright.bench.store.backup.Backup;
import shimwright.bench.store.log.OpenLog;
import shimwright.bench.store.log.OpenLog.Opening;
import shimwright.bench.store.sign.OwnerFolder;
import shimwright.bench.store.sqlite.SqliteJobLog;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.AppendResult;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.Heads;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.StoreFailure;

/** The contract of the log on a PostgreSQL server, and what only several programs at one database can do. */
class PostgresJobLogTest extends JobLogContract {
    private final TestPostgres server = TestPostgres.get();
    private final String address = server.database();
    private final Path work;

    PostgresJobLogTest(@TempDir Path work) {
        this.work = work;
    }

    @Override
    OpenLog open() {
        return store(Optional.empty()).orElseThrow().log();
    }

    private Outcome<ShopStore> store(Optional<OwnerFolder> owner) {
        return ShopStore.at(address, Opening.WRITE, owner);
    }

    @Test
    void twoProgramsAtOneDatabaseSeeEachOtherAndAgreeOnOneOrder() throws Exception {
        ExecutorService benches = Executors.newFixedThreadPool(6);
        try (OpenLog first = open();
                OpenLog second = open()) {
            List<Callable<Integer>> work = new ArrayList<>();
            for (int w = 0; w < 6; w++) {
                int bench = w;
                OpenLog log = w % 2 == 0 ? first : second;
                work.add(() -> {
                    int moved = 0;
                    for (int i = 0; i < 25; i++) {
                        String id = bench + "-" + i;
                        Outcome<AppendResult> done;
                        do {
                            // all on one job: of those who looked at the same head one gets in
                            done = log.append(
                                    List.of(note("job-1", id, id), note("job-1", id + "b", id)),
                                    Heads.of("job-1", log.head("job-1")));
                            moved += done.orElseThrow() instanceof AppendResult.Moved ? 1 : 0;
                        } while (done.orElseThrow() instanceof AppendResult.Moved);
                    }
                    return moved;
                });
            }
            int moved = 0;
            for (Future<Integer> done : benches.invokeAll(work)) {
                moved += done.get();
            }
            assertThat(moved).isPositive();
            List<LogEntry> all = first.read("job-1");
            assertThat(all).hasSize(300);
            assertThat(second.read("job-1")).isEqualTo(all);
            for (int i = 0; i < all.size(); i += 2) {
                assertThat(all.get(i + 1).draft().id())
                        .isEqualTo(all.get(i).draft().id() + "b");
            }
            assertThat(first.walk()).isEmpty();
        } finally {
            benches.shutdown();
        }
    }

    @Test
    void whatAnotherBenchKeptIsThereToReadOn() {
        try (OpenLog mine = open();
                OpenLog theirs = open()) {
            Head seen = append(mine, note("job-1", "a", "one")).orElseThrow().streamHead();
            LogEntry more = append(theirs, note("job-1", "b", "two")).orElseThrow();
            assertThat(mine.head()).isEqualTo(new Head(2, more.hash()));
            assertThat(mine.read("job-1", seen)).containsExactly(more);
        }
    }

    @Test
    void aServerThatWasStartedAnewIsFoundAgain() {
        try (OpenLog log = open()) {
            append(log, note("job-1", "a", "one")).orElseThrow();
            server.restart();
            assertThat(append(log, note("job-1", "b", "two")).orElseThrow().number())
                    .isEqualTo(2);
            assertThat(log.read("job-1")).hasSize(2);
        }
    }

    @Test
    void theDatabaseForbidsChangeAndRemoval() {
        try (OpenLog log = open()) {
            append(log, note("job-1", "a", "one")).orElseThrow();
        }
        for (String statement : List.of("update entry set at = ''", "delete from entry", "truncate entry")) {
            assertThatThrownBy(() -> server.sql(TestPostgres.nameIn(address), statement))
                    .hasMessageContaining("an entry is never changed or removed");
        }
    }

    @Test
    void aChangedEntryIsNamedAtTheStartAndWhileItRuns() {
        try (OpenLog log = open()) {
            Logs.fill(log, 20, 4);
            LogEntry seventh = Logs.all(log).get(6);
            server.sql(
                    TestPostgres.nameIn(address),
                    "alter table entry disable trigger user",
                    "update entry set by_whom = 'somebody' where number = 7",
                    "alter table entry enable trigger user");
            assertThatThrownBy(() -> log.read(seventh.draft().stream())).isInstanceOf(StoreFailure.class);
            assertThat(log.walk()).isPresent();
            assertThat(append(log, note("job-1", "x", "more")).refusals())
                    .extracting(Refusal::fact)
                    .first()
                    .asString()
                    .startsWith("not kept, because the job log was found damaged");
        }
        assertThat(store(Optional.empty()).refusals())
                .extracting(Refusal::fact)
                .first()
                .asString()
                .contains("entry 7 of 20 does not follow");
    }

    @Test
    void anOlderDatabasePutBackIsNamed() {
        OwnerFolder owner = new OwnerFolder(work.resolve("owner"), Clock.systemUTC());
        try (ShopStore store = store(Optional.of(owner)).orElseThrow()) {
            Logs.fill(store.log(), 20, 4);
        }
        server.sql(
                TestPostgres.nameIn(address),
                "alter table entry disable trigger user",
                "delete from entry where number > 15",
                "alter table entry enable trigger user");
        assertThat(store(Optional.of(owner)).refusals())
                .extracting(Refusal::fact)
                .first()
                .asString()
                .contains("entry 20 was there when the program stopped")
                .endsWith("this one goes to entry 15");
        ShopStore.at(address, Opening.ACCEPT, Optional.of(owner)).orElseThrow().close();
        store(Optional.of(owner)).orElseThrow().close();
    }

    @Test
    void picturesAndDocumentsAreKeptByTheirHash() {
        try (ShopStore store = store(Optional.empty()).orElseThrow()) {
            byte[] noise = SamplePictures.noise(new Random(3), 9, 9);
            String picture = store.pictures().keep("a.png", noise).orElseThrow().hash();
            assertThat(store.pictures().find(picture)).hasValue(noise);
            assertThat(store.pictures().keep("a.txt", new byte[] {1}).isOk()).isFalse();
            byte[] text = "abc".getBytes(StandardCharsets.US_ASCII);
            String document = store.documents().keep("a.yaml", text).orElseThrow();
            assertThat(store.documents().find(document)).hasValue(text);
            assertThat(store.pictures().find(document)).isEmpty();
            server.sql(TestPostgres.nameIn(address), "update content set bytes = 'x'");
            assertThat(store.documents().find(document)).isEmpty();
            store.documents().keep("a.yaml", text).orElseThrow();
            assertThat(store.documents().find(document)).hasValue(text);
        }
    }

    @Test
    void aShopGoesFromOneStoreToTheOtherAndBack() throws IOException {
        KeptShop shop = new KeptShop(work);
        Head head;
        List<LogEntry> all;
        try (SqliteJobLog log = shop.open()) {
            head = log.head();
            all = Logs.all(log);
        }
        assertThat(Backup.restore(shop.backup, address).orElseThrow().head()).isEqualTo(head);
        try (ShopStore store = store(Optional.of(shop.owner)).orElseThrow()) {
            assertThat(Logs.all(store.log())).isEqualTo(all);
        }
        assertThat(Backup.restore(shop.backup, address).refusals())
                .extracting(Refusal::fact)
                .containsExactly("there is a shop in this database already");
        Path back = work.resolve("back");
        assertThat(Backup.make(address, back, Optional.of(shop.owner))
                        .orElseThrow()
                        .missing())
                .isEmpty();
        assertThat(shop.check().backup(back).faults()).isEmpty();
        Path folder = work.resolve("folder");
        Backup.restore(back, folder).orElseThrow();
        try (SqliteJobLog log = Logs.open(folder)) {
            assertThat(Logs.all(log)).isEqualTo(all);
        }
        assertThat(shop.check().folder(folder).sound()).contains("the hand-back of job-v-1 is as it was signed");
    }

    @Test
    void anAddressThatIsNoneAndAServerThatIsNotThereAreSaid() {
        assertThat(ShopStore.at("mysql://a:secret@b/c", Opening.WRITE, Optional.empty())
                        .refusals())
                .extracting(Refusal::sentence)
                .containsExactly("--store: \"mysql://a:…@b/c\" is not the address of a database."
                        + " Type it like postgresql://user@host:5432/shop.");
        assertThat(ShopStore.at("postgresql://shimwright@127.0.0.1:1/none", Opening.WRITE, Optional.empty())
                        .refusals())
                .extracting(Refusal::fact)
                .first()
                .asString()
                .startsWith("the database cannot be used: the database does not answer");
        assertThat(ShopStore.at(address + "x", Opening.WRITE, Optional.empty()).refusals())
                .extracting(Refusal::fact)
                .first()
                .asString()
                .contains("does not let this user in");
    }

    /** Entries that no column of text may hold on its own are kept as everything else. */
    @Test
    void textWithControlCharactersIsKept() {
        try (OpenLog log = open()) {
            Entry odd = new Entry.NoteMade("job", "zero \u0000 tab \t end");
            assertThat(append(log, new shimwright.rebuild.job.Draft("job-1", "a", NOON, "rebuilder", odd))
                            .orElseThrow()
                            .body())
                    .isEqualTo(odd);
            assertThat(log.read("job-1").get(0).body()).isEqualTo(odd);
        }
    }
}
