package shimwright.bench.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shimwright.bench.store.backup.Backup;
import shimwright.bench.store.log.EntryRow;
import shimwright.bench.store.log.EntryText;
import shimwright.bench.store.log.OpenLog.Opening;
import shimwright.bench.store.postgres.PostgresServer;
import shimwright.bench.store.verify.Verification.Shop;
import shimwright.bench.store.verify.VerificationReport;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.Signing.Occasion;

/** The checks of a data folder, of a shop in a PostgreSQL database. */
class DatabaseVerificationTest {
    /** Set by {@code -Dshimwright.rows=1000} for a long run. */
    private static final int ROWS = Integer.getInteger("shimwright.rows", 40);

    private final TestPostgres server = TestPostgres.get();
    private final String address = server.database();
    private final String database = TestPostgres.nameIn(address);
    private final KeptShop shop;
    private final Path back;
    private final Head printed;

    DatabaseVerificationTest(@TempDir Path work) throws IOException {
        shop = new KeptShop(work);
        back = work.resolve("back");
        Backup.restore(shop.backup, address).orElseThrow();
        try (ShopStore store =
                ShopStore.at(address, Opening.WRITE, Optional.of(shop.owner)).orElseThrow()) {
            KeptShop.keep(store.log(), "job-v-2", new Entry.NoteMade("job", "in the database"));
            printed = store.log().head("job-v-2");
            store.log().signing().remember(Occasion.PRINTED, "job-v-2", printed);
        }
        Backup.make(address, back, Optional.of(shop.owner)).orElseThrow();
    }

    private VerificationReport check() {
        return shop.check().database(address);
    }

    private VerificationReport head(String job, Head head) {
        return shop.check().head(new Shop.Database(address), job, head.count(), head.hash());
    }

    /** Runs statements as the database's owner could, with the guard away while they run. */
    private void tamper(String... statements) {
        List<String> all = new ArrayList<>(List.of("alter table entry disable trigger user"));
        all.addAll(List.of(statements));
        all.add("alter table entry enable trigger user");
        server.sql(database, all.toArray(String[]::new));
    }

    @Test
    void whatIsWholeIsSaidToBe() {
        assertThat(check().faults()).isEmpty();
        assertThat(check().sound())
                .contains(
                        "19 entries follow one from the other",
                        "1 pictures are as they were kept",
                        "1 documents are as they were kept",
                        "the hand-back of job-v-1 is as it was signed")
                .anyMatch(line ->
                        line.endsWith("heads that were printed, backed up or handed back are still in the log"));
        assertThat(head("job-v-2", printed).isWhole()).isTrue();
        Shop here = new Shop.Database(address);
        assertThat(shop.check().record(shop.record, Optional.of(here)).isWhole())
                .isTrue();
        assertThat(shop.check().backup(back, Optional.of(here)).faults()).isEmpty();
        assertThat(shop.check().backup(back, Optional.of(here)).sound())
                .contains("entry 19 and all before it are as they were when this backup was made");
    }

    @Test
    void aRunningShopCanBeChecked() {
        try (ShopStore store =
                ShopStore.at(address, Opening.WRITE, Optional.of(shop.owner)).orElseThrow()) {
            KeptShop.keep(store.log(), "job-v-2", new Entry.NoteMade("job", "while it runs"));
            assertThat(check().faults()).isEmpty();
        }
        assertThat(check().faults()).isEmpty();
    }

    @Test
    void anEndThatIsGoneIsNamedByDatabaseHeadAndBackup() {
        tamper("delete from entry where number > 18");
        assertThat(check().faults()).extracting(Refusal::fact).anyMatch(fact -> fact.contains("lost its end"));
        assertThat(head("job-v-2", printed).faults())
                .extracting(Refusal::fact)
                .anyMatch(fact -> fact.contains("is not there, so something kept is gone"));
        assertThat(shop.check()
                        .backup(back, Optional.of(new Shop.Database(address)))
                        .faults())
                .extracting(Refusal::fact)
                .containsExactly("entry 19 is not there, so something kept is gone");
    }

    @Test
    void aForgeryWhoseEveryHashFitsIsNamed() throws SQLException {
        rechain(5);
        assertThat(check().faults())
                .extracting(Refusal::fact)
                .anyMatch(fact -> fact.contains("the hand-back of job-v-1 is not the one that was signed"))
                .anyMatch(fact -> fact.contains("entry 19 is another than it was in a backup"));
        assertThat(head("job-v-1", shop.printed).isWhole()).isFalse();
        assertThat(shop.check()
                        .backup(back, Optional.of(new Shop.Database(address)))
                        .isWhole())
                .isFalse();
    }

    /** Changes who signed an entry, and makes every hash from there on fit again. */
    private void rechain(long number) throws SQLException {
        server.sql(database, "alter table entry disable trigger user");
        try (Connection raw = PostgresServer.of(address).orElseThrow().connect()) {
            List<EntryRow> rows = new ArrayList<>();
            try (Statement ask = raw.createStatement();
                    ResultSet all = ask.executeQuery("select " + EntryRow.COLUMNS + " from entry order by number")) {
                while (all.next()) {
                    rows.add(EntryRow.of(all));
                }
            }
            Head log = Head.EMPTY;
            Map<String, Head> streams = new HashMap<>();
            for (EntryRow row : rows) {
                EntryText was = row.written();
                EntryText now = row.number() != number
                        ? was
                        : new EntryText(
                                was.stream(), was.id(), was.at(), "somebody", was.device(), was.type(), was.body());
                EntryRow made = EntryRow.after(log, streams.getOrDefault(now.stream(), Head.EMPTY), now);
                log = made.head();
                streams.put(now.stream(), made.streamHead());
                try (PreparedStatement put = raw.prepareStatement(
                        "update entry set by_whom = ?, hash = ?, stream_hash = ? where number = ?")) {
                    put.setString(1, now.by());
                    put.setString(2, made.hash());
                    put.setString(3, made.streamHash());
                    put.setLong(4, made.number());
                    put.executeUpdate();
                }
            }
        }
        server.sql(database, "alter table entry enable trigger user");
    }

    @Test
    void aGuardThatWasTakenAwayIsNamed() {
        server.sql(database, "alter table entry disable trigger user");
        assertThat(check().faults())
                .extracting(Refusal::fact)
                .containsExactly("the job log's tables are not as this program made them");
        server.sql(
                database,
                "alter table entry enable trigger user",
                "create or replace function never() returns trigger language plpgsql as $$ begin return null; end $$");
        assertThat(check().isWhole()).isFalse();
    }

    /** One letter, anywhere in a row of any table, in a picture or a document too. */
    @Test
    void aChangeOfOneLetterAnywhereIsNamed() throws SQLException {
        Random random = new Random(20261129);
        List<String> unseen = new ArrayList<>();
        for (int i = 0; i < ROWS; i++) {
            String[] change = change(random);
            server.sql(database, "create table before_ as select * from " + change[0]);
            tamper(change[1]);
            if (check().isWhole()) {
                unseen.add(change[1]);
            }
            tamper("delete from " + change[0], "insert into " + change[0] + " select * from before_");
            server.sql(database, "drop table before_");
        }
        assertThat(unseen).isEmpty();
        assertThat(check().faults()).isEmpty();
    }

    /** A table and the statement that changes something in it. */
    private static String[] change(Random random) {
        int which = random.nextInt(10);
        if (which == 0) {
            return new String[] {
                "content",
                "update content set bytes = set_byte(bytes, %d, (get_byte(bytes, %<d) + 1) %% 256)"
                                .formatted(random.nextInt(100))
                        + " where kind = '" + (random.nextBoolean() ? "picture" : "document") + "'"
            };
        }
        if (which == 1) {
            int at = 1 + random.nextInt(300);
            return new String[] {"signature", "update signature set line = " + other("line", at)};
        }
        String column = List.of("stream", "id", "at", "by_whom", "device", "type", "body", "hash", "stream_hash")
                .get(random.nextInt(9));
        int number = 1 + random.nextInt(19);
        return new String[] {
            "entry",
            "update entry set " + column + " = " + other(column, 1 + random.nextInt(8)) + " where number = " + number
        };
    }

    /** The text of a column with another letter at a place, or one more behind it. */
    private static String other(String column, int at) {
        return "overlay(%s placing case when substr(%s, %d, 1) = 'x' then 'y' else 'x' end from %d for 1)"
                .formatted(column, column, at, at);
    }

    @Test
    void anAddressThatIsNoneAndADatabaseWithoutAShopAreSaid() {
        assertThat(shop.check().database("mysql://a/b").faults())
                .extracting(Refusal::fact)
                .containsExactly("\"mysql://a/b\" is not the address of a database");
        assertThat(shop.check().database(server.database()).faults())
                .extracting(Refusal::fact)
                .containsExactly("it cannot be read: the database does not hold the tables of a shop,"
                        + " or this user may not use them");
        assertThat(shop.check().database("postgresql://127.0.0.1:1/none").isWhole())
                .isFalse();
    }
}
