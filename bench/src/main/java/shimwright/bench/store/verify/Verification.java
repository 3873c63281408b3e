package shimwright.bench.store.verify;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.util.List;
import java.util.Optional;
import shimwright.bench.store.backup.Backup;
import shimwright.bench.store.disk.DataFolder;
import shimwright.bench.store.disk.Disk;
import shimwright.bench.store.disk.HeadFile;
import shimwright.bench.store.log.Fault;
import shimwright.bench.store.log.LogWalk;
import shimwright.bench.store.log.OwnerCheck;
import shimwright.bench.store.log.Schema;
import shimwright.bench.store.log.Sql;
import shimwright.bench.store.postgres.PostgresServer;
import shimwright.bench.store.sign.OwnerFolder;
import shimwright.bench.store.sign.RememberedHeads;
import shimwright.bench.store.sign.RememberedHeads.Remembered;
import shimwright.bench.store.sign.SignedHead;
import shimwright.bench.store.sqlite.FolderHashes;
import shimwright.bench.store.sqlite.LogCheck;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Head;

/** Checks kept things as far as anything can show whether they are as they were kept; changes nothing. */
public final class Verification {
    private final OwnerFolder owner;
    private final TrustedKeys keys;

    /**
     * Checks by what an owner keeps apart.
     *
     * @param owner whoever checks
     * @param trusted the short name of a key that may have signed beside the owner's own
     */
    public Verification(OwnerFolder owner, Optional<String> trusted) {
        this.owner = owner;
        this.keys = new TrustedKeys(owner, trusted);
    }

    /** Where a shop's entries are kept. */
    public sealed interface Shop {
        /** In a data folder. */
        record Folder(Path data) implements Shop {}

        /**
         * In a database.
         *
         * @param address as on the command line
         */
        record Database(String address) implements Shop {}
    }

    /** A data folder, also while the program runs. */
    public VerificationReport folder(Path data) {
        DataFolder files = new DataFolder(data);
        VerificationReport.Gathering report = new VerificationReport.Gathering();
        guarded(report, data, () -> {
            Optional<Refusal> gone = new OwnerCheck(files).gone();
            if (gone.isPresent() || !Files.exists(files.database())) {
                report.fault(gone.orElse(Fault.at(data, "there is no job log here", "Name a data folder")));
                newest(report, files, Head.EMPTY);
                return;
            }
            Outcome<Head> log = new LogCheck(files).check(false);
            if (!(log instanceof Outcome.Ok<Head> head)) {
                report.faults(log.refusals());
                return;
            }
            report.sound(head.value().count() + " entries follow one from the other and end as the head file says");
            headFile(report, files);
            FolderHashes.Found sums = FolderHashes.check(files, head.value());
            if (sums.by().isPresent()) {
                keys.check(report, files.sums(), sums.by().get());
            }
            if (sums.compared()) {
                report.part(sums.faults(), "the folder's own files are byte for byte as the program left them");
            } else {
                report.remark(
                        "The program runs, did not stop by itself, or the log is very large: its files are compared"
                                + " by their content, not byte for byte");
            }
            try (Connection database = Sql.toRead(files.database())) {
                EntriesCheck entries = new EntriesCheck(report, keys, files.root(), database);
                entries.all(new FolderContents(files), Schema.version(database) >= Schema.SIGNED);
                entries.remembered(RememberedHeads.name(files.root()), head.value());
            }
            newest(report, files, head.value());
        });
        return report.done();
    }

    /**
     * A database that several benches share, also while programs write to it.
     *
     * @param address as on the command line
     */
    public VerificationReport database(String address) {
        VerificationReport.Gathering report = new VerificationReport.Gathering();
        database(report, address, (connection, entries, contents, log) -> {
            report.sound(log.count() + " entries follow one from the other");
            entries.all(contents, true);
            String name = PostgresServer.of(address).orElseThrow().name();
            entries.remembered(name, log);
            OwnerCheck.newest(owner, name, connection, log).ifPresent(report::fault);
        });
        return report.done();
    }

    /** A shop as it is named on the command line. */
    public VerificationReport shop(Shop shop) {
        return shop instanceof Shop.Database database
                ? database(database.address())
                : folder(((Shop.Folder) shop).data());
    }

    /** A backup by itself. */
    public VerificationReport backup(Path backup) {
        return backup(backup, Optional.empty());
    }

    /**
     * A backup beside a shop.
     *
     * @param shop whose entries it should hold, where it is at hand
     */
    public VerificationReport backup(Path backup, Optional<Shop> shop) {
        DataFolder files = new DataFolder(backup.toAbsolutePath().normalize());
        VerificationReport.Gathering report = new VerificationReport.Gathering();
        guarded(report, backup, () -> {
            Outcome<Backup.Made> sound = Backup.check(backup);
            if (!(sound instanceof Outcome.Ok<Backup.Made> made)) {
                report.faults(sound.refusals());
                return;
            }
            Head head = made.value().head();
            report.sound(made.value().files() + " files are as listed; " + head.count()
                    + " entries follow one from the other");
            headFile(report, files);
            try (Connection database = Sql.toRead(files.database())) {
                String name = Sql.shop(database).orElse("");
                signature(report, files, name, head);
                new EntriesCheck(report, keys, files.root(), database)
                        .all(new FolderContents(files), Schema.version(database) >= Schema.SIGNED);
                elsewhere(report, files, database, name, head);
            }
            shop.ifPresent(from -> asked(
                    report,
                    from,
                    (entries, log) -> entries.head("", head.count(), head.hash(), "when this backup was made")));
        });
        return report.done();
    }

    /**
     * A record that was handed out as a file.
     *
     * @param shop it should come from, where it is at hand
     */
    public VerificationReport record(Path file, Optional<Shop> shop) {
        VerificationReport.Gathering report = new VerificationReport.Gathering();
        guarded(report, file, () -> {
            byte[] content = Files.readAllBytes(file);
            Optional<SignedHead> scanned = SignedHead.scanned(content);
            Optional<SignedHead> end = scanned.isPresent() ? scanned : SignedHead.endOf(content);
            if (end.isEmpty() || end.get().what() != SignedHead.What.RECORD) {
                report.fault(Fault.at(
                        file,
                        "this file was changed after it was signed, or was never signed",
                        "Print the record anew and compare"));
                return;
            }
            SignedHead signed = end.get();
            report.sound(
                    (scanned.isPresent() ? "code of the record of " : "record of ") + signed.stream() + " at its entry "
                            + signed.head().count() + ", hash " + signed.head().hash() + ", as it was signed");
            keys.check(report, file, signed);
            if (shop.isPresent()) {
                Head head = signed.head();
                report.faults(head(shop.get(), signed.stream(), head.count(), head.hash())
                        .faults());
            }
        });
        return report.done();
    }

    /**
     * A head as it is printed on paper.
     *
     * @param job the job's stream; empty for the whole log
     * @param hash at least its first 12 digits
     */
    public VerificationReport head(Shop shop, String job, long count, String hash) {
        VerificationReport.Gathering report = new VerificationReport.Gathering();
        if (hash.matches("[0-9a-f]{12,64}")) {
            asked(report, shop, (entries, log) -> entries.head(job, count, hash, "when this head was printed"));
        } else {
            report.fault(Refusal.of(
                    "--hash", "\"" + hash + "\" is not the hash of a head", "Type at least its first 12 digits"));
        }
        return report.done();
    }

    private interface Question {
        void ask(EntriesCheck entries, Head log) throws IOException, SQLException;
    }

    /** Asks a shop whose entries follow one from the other; of any other it says what is wrong. */
    private void asked(VerificationReport.Gathering report, Shop shop, Question question) {
        if (shop instanceof Shop.Folder folder) {
            DataFolder files = new DataFolder(folder.data());
            guarded(report, folder.data(), () -> {
                Outcome<Head> log = new LogCheck(files).check(false);
                report.faults(log.refusals());
                if (log instanceof Outcome.Ok<Head> head) {
                    try (Connection database = Sql.toRead(files.database())) {
                        question.ask(new EntriesCheck(report, keys, files.root(), database), head.value());
                    }
                }
            });
        } else if (shop instanceof Shop.Database database) {
            database(report, database.address(), (connection, entries, contents, log) -> question.ask(entries, log));
        }
    }

    private interface DatabaseQuestion {
        void ask(Connection database, EntriesCheck entries, PostgresCheck contents, Head log)
                throws IOException, SQLException;
    }

    private void database(VerificationReport.Gathering report, String address, DatabaseQuestion question) {
        Outcome<PostgresServer> named = PostgresServer.of(address);
        report.faults(named.refusals());
        if (!(named instanceof Outcome.Ok<PostgresServer> server)) {
            return;
        }
        String name = server.value().name();
        guarded(
                report,
                name,
                () -> PostgresCheck.in(server.value(), (connection, contents) -> {
                    contents.guard().ifPresent(report::fault);
                    Outcome<Head> log = LogWalk.walk(name, connection, Head.EMPTY);
                    report.faults(log.refusals());
                    if (log instanceof Outcome.Ok<Head> head) {
                        EntriesCheck entries = new EntriesCheck(report, keys, name, connection);
                        question.ask(connection, entries, contents, head.value());
                    }
                }));
    }

    private interface Work {
        void run() throws IOException, SQLException;
    }

    private static void guarded(VerificationReport.Gathering report, Object place, Work work) {
        try {
            work.run();
        } catch (IOException failed) {
            report.fault(Fault.at(place, "it cannot be read: " + Disk.why(failed), ""));
        } catch (SQLException failed) {
            report.fault(Fault.at(place, "it cannot be read: " + Sql.why(failed), ""));
        } catch (IllegalStateException | IllegalArgumentException | DateTimeException broken) {
            report.fault(Fault.at(place, "it holds what this program never wrote: " + broken.getMessage(), ""));
        }
    }

    private static void headFile(VerificationReport.Gathering report, DataFolder files) throws IOException {
        if (!new HeadFile(files.head()).isClean()) {
            report.fault(Fault.at(
                    files.head(),
                    "the head file was changed or is torn in one of its two places",
                    "If the power failed, start the program once and check again"));
        }
    }

    private void signature(VerificationReport.Gathering report, DataFolder files, String shop, Head head)
            throws IOException {
        if (!Files.isRegularFile(files.signature())) {
            if (keys.any()) {
                report.fault(Fault.at(
                        files.root(),
                        "this backup is not signed",
                        "One that an older program made never was; of any other, use another backup"));
            } else {
                report.remark("This backup is not signed");
            }
            return;
        }
        String text = Files.readString(files.signature(), StandardCharsets.ISO_8859_1);
        Optional<SignedHead> signed = text.endsWith("\n")
                ? SignedHead.of(text.substring(0, text.length() - 1)).filter(SignedHead::isSound)
                : Optional.empty();
        if (signed.isEmpty()
                || signed.get().what() != SignedHead.What.BACKUP
                || !signed.get().shop().equals(shop)
                || !signed.get().head().equals(head)
                || !signed.get().document().equals(Disk.hash(files.manifest()))) {
            report.fault(Fault.at(files.root(), "this backup is not the one that was signed", "Use another backup"));
        } else {
            report.sound("the backup is as it was signed");
            keys.check(report, files.root(), signed.get());
        }
    }

    private void newest(VerificationReport.Gathering report, DataFolder files, Head log)
            throws IOException, SQLException {
        new OwnerCheck(files).newest(owner, log).ifPresent(report::fault);
    }

    /** Heads remembered of the folders that a backup may come from: it must fit one of them as far as it goes. */
    private void elsewhere(
            VerificationReport.Gathering report, DataFolder files, Connection database, String shop, Head head)
            throws IOException, SQLException {
        List<Remembered> all = owner.heads().all().stream()
                .filter(one -> one.shop().equals(shop))
                .toList();
        Optional<List<Refusal>> best = Optional.empty();
        for (String folder : all.stream().map(Remembered::folder).distinct().toList()) {
            List<Remembered> binding = owner.heads().binding(shop, folder).stream()
                    .filter(one -> one.stream().isEmpty() && one.head().count() <= head.count())
                    .toList();
            List<Refusal> faults = OwnerCheck.all(files.root(), binding, database, head);
            if (best.isEmpty() || faults.size() < best.get().size()) {
                best = Optional.of(faults);
            }
        }
        if (best.isEmpty()) {
            report.remark("No head of this shop is remembered in " + owner.root());
        } else {
            report.part(best.get(), "the heads that are remembered of this shop are in the backup");
        }
    }
}
