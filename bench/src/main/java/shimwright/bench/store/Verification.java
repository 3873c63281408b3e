package shimwright.bench.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import shimwright.bench.store.RememberedHeads.Remembered;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.LogEntry;

/** Checks kept things as far as anything can show whether they are as they were kept; changes nothing. */
public final class Verification {
    private final OwnerFolder owner;
    private final Optional<String> trusted;

    /**
     * Checks by what an owner keeps apart.
     *
     * @param owner whoever checks
     * @param trusted the short name of a key that may have signed beside the owner's own
     */
    public Verification(OwnerFolder owner, Optional<String> trusted) {
        this.owner = owner;
        this.trusted = trusted.map(name -> name.replaceAll("\\s", ""));
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
                key(report, files.sums(), sums.by().get());
            }
            if (sums.compared()) {
                report.part(sums.faults(), "the folder's own files are byte for byte as the program left them");
            } else {
                report.remark(
                        "The program runs, did not stop by itself, or the log is very large: its files are compared"
                                + " by their content, not byte for byte");
            }
            try (Connection database = Sql.toRead(files.database())) {
                entries(report, files, database);
                remembered(report, files, database, head.value());
            }
            newest(report, files, head.value());
        });
        return report.done();
    }

    /** A backup. */
    public VerificationReport backup(Path backup) {
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
                String shop = Sql.shop(database).orElse("");
                signature(report, files, shop, head);
                entries(report, files, database);
                elsewhere(report, files, database, shop, head);
            }
        });
        return report.done();
    }

    /**
     * A record that was handed out as a file.
     *
     * @param data the data folder it should come from, where it is at hand
     */
    public VerificationReport record(Path file, Optional<Path> data) {
        VerificationReport.Gathering report = new VerificationReport.Gathering();
        guarded(report, file, () -> {
            Optional<SignedHead> end = SignedHead.endOf(Files.readAllBytes(file));
            if (end.isEmpty() || end.get().what() != SignedHead.What.RECORD) {
                report.fault(Fault.at(
                        file,
                        "this file was changed after it was signed, or was never signed",
                        "Print the record anew and compare"));
                return;
            }
            SignedHead signed = end.get();
            report.sound("record of " + signed.stream() + " at its entry "
                    + signed.head().count() + ", hash " + signed.head().hash() + ", as it was signed");
            key(report, file, signed);
            if (data.isPresent()) {
                report.faults(head(
                                data.get(),
                                signed.stream(),
                                signed.head().count(),
                                signed.head().hash())
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
    public VerificationReport head(Path data, String job, long count, String hash) {
        DataFolder files = new DataFolder(data);
        VerificationReport.Gathering report = new VerificationReport.Gathering();
        guarded(report, data, () -> {
            if (!hash.matches("[0-9a-f]{12,64}")) {
                report.fault(Refusal.of(
                        "--hash", "\"" + hash + "\" is not the hash of a head", "Type at least its first 12 digits"));
                return;
            }
            Outcome<Head> log = new LogCheck(files).check(false);
            if (!(log instanceof Outcome.Ok<Head>)) {
                report.faults(log.refusals());
                return;
            }
            try (Connection database = Sql.toRead(files.database())) {
                Optional<Head> there = job.isEmpty() ? Sql.headAt(database, count) : Sql.headAt(database, job, count);
                String what = "entry " + count + (job.isEmpty() ? "" : " of " + job);
                if (there.isEmpty()) {
                    report.fault(Fault.at(data, what + " is not there, so something kept is gone", ""));
                } else if (there.get().hash().startsWith(hash)) {
                    report.sound(what + " and all before it are as they were when this head was printed");
                } else {
                    report.fault(Fault.at(
                            data, what + " or one before it is not what it was when this head was printed", ""));
                }
            }
        });
        return report.done();
    }

    private interface Work {
        void run() throws IOException, SQLException;
    }

    private static void guarded(VerificationReport.Gathering report, Path place, Work work) {
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

    private void entries(VerificationReport.Gathering report, DataFolder files, Connection database)
            throws IOException, SQLException {
        LogScan scan = LogScan.of(database);
        FilePictureStore pictures = FilePictureStore.over(files.pictures());
        FileDocumentStore documents = FileDocumentStore.over(files.documents());
        report.part(
                contents(files.pictures(), scan.pictures(), "picture", pictures::find),
                scan.pictures().size() + " pictures are as they were kept");
        report.part(
                contents(files.documents(), scan.documents(), "document", documents::find),
                scan.documents().size() + " documents are as they were kept");
        for (LogEntry kept : scan.clockSetBack()) {
            report.remark("Entry " + kept.number() + " is dated " + kept.draft().at()
                    + ", before the one in front of it: the clock was set back");
        }
        handBacks(report, files, database, scan.handedBack());
    }

    private interface Finding {
        Optional<byte[]> of(String hash);
    }

    private static List<Refusal> contents(Path folder, Set<String> named, String word, Finding finding)
            throws IOException {
        List<Refusal> faults = new ArrayList<>();
        for (String hash : named) {
            if (finding.of(hash).isEmpty()) {
                faults.add(Fault.at(
                        folder,
                        "the " + word + " " + hash + " is named by an entry and is not there, or not as it was kept",
                        "Look for it in a backup"));
            }
        }
        if (!Files.isDirectory(folder)) {
            return faults;
        }
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile)
                    .filter(file -> !file.startsWith(folder.resolve("part")))
                    .toList()) {
                String hash = file.getFileName().toString().replaceFirst("\\..*", "");
                if (!named.contains(hash) && !hash.equals(Disk.hash(file))) {
                    faults.add(Fault.at(file, "this is not a " + word + " as it was kept", ""));
                }
            }
        }
        return faults;
    }

    private void handBacks(
            VerificationReport.Gathering report, DataFolder files, Connection database, List<LogEntry> handedBack)
            throws IOException, SQLException {
        if (Schema.version(database) < Schema.SIGNED) {
            report.remark("No hand-back is signed: an older program kept this log");
            return;
        }
        boolean anySigned = Sql.signatures(database) > 0;
        for (LogEntry kept : handedBack) {
            String stream = kept.draft().stream();
            Optional<String> line = Sql.signature(database, stream, kept.streamNumber());
            Optional<SignedHead> signed = line.flatMap(SignedHead::of).filter(SignedHead::isSound);
            if (line.isEmpty() && !anySigned) {
                report.remark("The hand-back of " + stream + " is not signed");
            } else if (line.isEmpty()) {
                report.fault(Fault.at(files.root(), "the signature of the hand-back of " + stream + " is gone", ""));
            } else if (signed.isEmpty()
                    || signed.get().what() != SignedHead.What.HANDBACK
                    || !signed.get().head().equals(kept.streamHead())
                    || !Sql.shop(database).equals(Optional.of(signed.get().shop()))) {
                report.fault(Fault.at(
                        files.root(),
                        "the hand-back of " + stream + " is not the one that was signed: an entry of it was changed",
                        "Compare with the printed record, or with a backup"));
            } else {
                report.sound("the hand-back of " + stream + " is as it was signed");
                key(report, files.root(), signed.get());
            }
        }
    }

    /** Whose key it was. */
    private void key(VerificationReport.Gathering report, Path place, SignedHead signed) throws IOException {
        String name = SigningKey.fingerprint(signed.key());
        boolean own = owner.hasKey() && owner.key().publicKey().equals(signed.key());
        if (own || trusted.equals(Optional.of(name.replace(" ", "")))) {
            report.sound("signed with the key " + name + (own ? ", your own" : ", which you named"));
        } else {
            report.fault(Fault.at(
                    place,
                    "this is signed with the key " + name + ", which is not yours"
                            + (trusted.isEmpty() ? "" : " nor the one you named"),
                    "If it should be another shop's, ask that shop for the name of its key and give it with --key"));
        }
    }

    private void signature(VerificationReport.Gathering report, DataFolder files, String shop, Head head)
            throws IOException {
        if (!Files.isRegularFile(files.signature())) {
            if (owner.hasKey() || trusted.isPresent()) {
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
            key(report, files.root(), signed.get());
        }
    }

    private void remembered(VerificationReport.Gathering report, DataFolder files, Connection database, Head log)
            throws IOException, SQLException {
        Optional<String> shop = Sql.shop(database);
        if (shop.isEmpty()) {
            return;
        }
        List<Remembered> all = owner.heads().binding(shop.get(), RememberedHeads.name(files.root()));
        if (all.isEmpty()) {
            report.remark("No head of this folder is remembered in " + owner.root());
        } else {
            report.part(
                    new OwnerCheck(files).all(all, database, log),
                    all.size() + " heads that were printed, backed up or handed back are still in the log");
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
            List<Refusal> faults = new OwnerCheck(files).all(binding, database, head);
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
