package shimwright.bench.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shimwright.bench.store.backup.Backup;
import shimwright.bench.store.disk.DataFolder;
import shimwright.bench.store.log.EntryText;
import shimwright.bench.store.log.OpenLog.Opening;
import shimwright.bench.store.sign.OwnerFolder;
import shimwright.bench.store.sign.SigningKey;
import shimwright.bench.store.sqlite.LogCheck;
import shimwright.bench.store.sqlite.SqliteJobLog;
import shimwright.bench.store.verify.Verification;
import shimwright.bench.store.verify.Verification.Shop;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Entry;

class VerificationTest {
    private final Path work;
    private final KeptShop shop;

    VerificationTest(@TempDir Path work) throws IOException {
        this.work = work;
        this.shop = new KeptShop(work);
    }

    private static EntryText otherSigner(EntryText entry) {
        return new EntryText(
                entry.stream(), entry.id(), entry.at(), "somebody", entry.device(), entry.type(), entry.body());
    }

    private String refusal() {
        var opened = SqliteJobLog.open(shop.data, Opening.WRITE, Optional.of(shop.owner));
        if (opened.isOk()) {
            opened.orElseThrow().close();
            return "";
        }
        return opened.refusals().get(0).sentence();
    }

    @Test
    void whatIsWholeIsSaidToBe() {
        assertThat(shop.check().folder(shop.data).faults()).isEmpty();
        assertThat(shop.check().folder(shop.data).sound())
                .contains(
                        "the folder's own files are byte for byte as the program left them",
                        "the hand-back of job-v-1 is as it was signed")
                .anyMatch(line ->
                        line.endsWith("heads that were printed, backed up or handed back are still in the log"));
        assertThat(shop.check().backup(shop.backup).faults()).isEmpty();
        assertThat(shop.check()
                        .record(shop.record, Optional.of(new Shop.Folder(shop.data)))
                        .faults())
                .isEmpty();
        assertThat(shop.check()
                        .head(
                                new Shop.Folder(shop.data),
                                KeptShop.JOB,
                                shop.printed.count(),
                                shop.printed.hash().substring(0, 16))
                        .isWhole())
                .isTrue();
    }

    @Test
    void aRunningShopCanBeChecked() {
        try (SqliteJobLog log = shop.open()) {
            KeptShop.keep(log, "job-v-2", new Entry.NoteMade("job", "while it runs"));
            assertThat(shop.check().folder(shop.data).faults()).isEmpty();
            assertThat(log.walk()).isEmpty();
        }
        assertThat(shop.check().folder(shop.data).faults()).isEmpty();
    }

    @Test
    void aForgedSignerIsNamedAtTheStartAndByEveryCheck() throws SQLException, IOException {
        KeptShop.forge(shop.data, 5, VerificationTest::otherSigner);
        Files.delete(shop.data.resolve("sums"));
        // the log is sound in itself
        assertThat(new LogCheck(new DataFolder(shop.data)).check(false).isOk()).isTrue();
        assertThat(refusal()).contains("this is not the job log that was kept here");
        assertThat(shop.check().folder(shop.data).faults())
                .extracting(Refusal::fact)
                .anyMatch(fact -> fact.contains("the hand-back of job-v-1 is not the one that was signed"))
                .anyMatch(fact -> fact.contains("of job-v-1 is another than it was on a printed record"));
        assertThat(shop.check()
                        .head(new Shop.Folder(shop.data), KeptShop.JOB, shop.printed.count(), shop.printed.hash())
                        .faults())
                .extracting(Refusal::fact)
                .containsExactly("entry " + shop.printed.count()
                        + " of job-v-1 or one before it is not what it was when this head was printed");
        assertThat(shop.check()
                        .record(shop.record, Optional.of(new Shop.Folder(shop.data)))
                        .isWhole())
                .isFalse();
    }

    @Test
    void anOldStoreWithItsOldHeadIsNamed() throws IOException {
        Path old = work.resolve("old");
        Logs.copy(shop.data, old);
        try (SqliteJobLog log = shop.open()) {
            KeptShop.keep(log, "job-v-2", new Entry.NoteMade("job", "more"));
        }
        for (String file : new String[] {"shimwright.db", "head", "sums", "checked"}) {
            Files.delete(shop.data.resolve(file));
            Files.copy(old.resolve(file), shop.data.resolve(file));
        }
        assertThat(refusal())
                .contains("the job log lost its end: entry 19 was there when the program stopped")
                .contains("this one goes to entry 18")
                .contains("--accept-log");
        assertThat(shop.check().folder(shop.data).isWhole()).isFalse();
        SqliteJobLog.open(shop.data, Opening.ACCEPT, Optional.of(shop.owner))
                .orElseThrow()
                .close();
        assertThat(refusal()).isEmpty();
        assertThat(shop.check().folder(shop.data).faults()).isEmpty();
    }

    @Test
    void storeAndHeadGoneIsNotAnEmptyShop() throws IOException {
        Files.delete(shop.data.resolve("shimwright.db"));
        Files.delete(shop.data.resolve("head"));
        assertThat(Logs.refusal(shop.data)).contains("gone, but pictures or documents of a shop lie here");
        assertThat(refusal()).contains("gone, but pictures");
        assertThat(shop.check().folder(shop.data).isWhole()).isFalse();
        assertThat(shop.data.resolve("shimwright.db")).doesNotExist();
    }

    @Test
    void allGoneIsNotAnEmptyShopEither() throws IOException {
        Path aside = work.resolve("aside");
        Files.move(shop.data, aside);
        assertThat(refusal()).contains("the job log lost its end: entry 18 was there");
        assertThat(shop.data.resolve("shimwright.db")).doesNotExist();
    }

    @Test
    void anotherShopInThePlaceOfThisOneIsNamed() throws IOException {
        Path other = work.resolve("other");
        KeptShop another = new KeptShop(Files.createDirectories(other));
        try (SqliteJobLog log = another.open()) {
            KeptShop.keep(log, "job-v-9", new Entry.NoteMade("job", "longer"));
        }
        Files.move(shop.data, work.resolve("aside"));
        Path fresh = work.resolve("fresh");
        try (SqliteJobLog log = Logs.open(fresh)) {
            Logs.fill(log, 30, 3);
        }
        Files.move(fresh, shop.data);
        assertThat(refusal()).contains("another shop's job log was kept here before");
    }

    @Test
    void aBackupWithAnotherKeyOrNoneIsNamed() throws IOException {
        OwnerFolder stranger = new OwnerFolder(work.resolve("stranger"), Clock.systemUTC());
        Path copy = work.resolve("copy");
        Backup.make(shop.data, copy, Optional.of(stranger)).orElseThrow();
        assertThat(shop.check().backup(copy).faults())
                .extracting(Refusal::fact)
                .anyMatch(fact -> fact.contains("which is not yours"));
        String name = SigningKey.fingerprint(stranger.key().publicKey());
        assertThat(new Verification(shop.owner, Optional.of(name)).backup(copy).faults())
                .isEmpty();
        Files.delete(copy.resolve("signature"));
        assertThat(shop.check().backup(copy).faults()).extracting(Refusal::fact).contains("this backup is not signed");
    }

    @Test
    void theKeyIsForItsOwnerAlone() throws IOException {
        assertThat(Files.getPosixFilePermissions(shop.owner.root().resolve("key")))
                .extracting(Enum::name)
                .containsExactlyInAnyOrder("OWNER_READ", "OWNER_WRITE");
        assertThat(Files.getPosixFilePermissions(shop.data))
                .extracting(Enum::name)
                .containsExactlyInAnyOrder("OWNER_READ", "OWNER_WRITE", "OWNER_EXECUTE");
    }

    @Test
    void aClockSetBackIsMentioned() {
        try (SqliteJobLog log = shop.open()) {
            assertThat(log.lastKept()).contains(KeptShop.NOON);
            Entry note = new Entry.NoteMade("job", "yesterday");
            log.append(
                            new shimwright.rebuild.job.Draft(
                                    "job-v-2", "early", KeptShop.NOON.minusSeconds(86_400), "rebuilder", note),
                            stream -> java.util.List.of())
                    .orElseThrow();
        }
        assertThat(shop.check().folder(shop.data).remarks())
                .anyMatch(line -> line.startsWith("Entry 19 is dated 2026-11-28T12:00:00Z"));
    }

    @Test
    void aSignatureOfTheStandardsExampleFits() {
        // RFC 8032, section 7.1, test 3: the public key behind its X.509 prefix (RFC 8410, section 4), message af82
        String key = "302a300506032b6570032100" + "fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025";
        String signature = "6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac"
                + "18ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a";
        String message = new String(new byte[] {(byte) 0xaf, (byte) 0x82}, StandardCharsets.ISO_8859_1);
        assertThat(SigningKey.fits(key, message.getBytes(StandardCharsets.ISO_8859_1), signature))
                .isTrue();
        assertThat(SigningKey.fits(key, "af".getBytes(StandardCharsets.US_ASCII), signature))
                .isFalse();
    }
}
