package shimwright.bench.store.verify;

import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import shimwright.bench.store.log.Fault;
import shimwright.bench.store.log.LogScan;
import shimwright.bench.store.log.OwnerCheck;
import shimwright.bench.store.log.Sql;
import shimwright.bench.store.sign.RememberedHeads;
import shimwright.bench.store.sign.SignedHead;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.LogEntry;

/** Compares the entries of a sound log with what they stand on: pictures, documents, clocks, signatures, printed heads. */
final class EntriesCheck {
    private final VerificationReport.Gathering report;
    private final TrustedKeys keys;
    private final Object place;
    private final Connection database;

    /**
     * A check of one log.
     *
     * @param place the log, for sentences
     */
    EntriesCheck(VerificationReport.Gathering report, TrustedKeys keys, Object place, Connection database) {
        this.report = report;
        this.keys = keys;
        this.place = place;
        this.database = database;
    }

    /** Where pictures and documents lie. */
    interface Contents {
        Optional<byte[]> picture(String hash) throws SQLException;

        Optional<byte[]> document(String hash) throws SQLException;

        /** Pictures that are not as they were kept though no entry names them. */
        List<Refusal> strayPictures(Set<String> named) throws IOException, SQLException;

        /** The same for documents. */
        List<Refusal> strayDocuments(Set<String> named) throws IOException, SQLException;
    }

    private interface Finding {
        Optional<byte[]> of(String hash) throws SQLException;
    }

    /**
     * Compares all of them.
     *
     * @param signed whether the log is of a program that signs
     */
    void all(Contents contents, boolean signed) throws IOException, SQLException {
        LogScan scan = LogScan.of(database);
        List<Refusal> pictures = missing(scan.pictures(), "picture", contents::picture);
        pictures.addAll(contents.strayPictures(scan.pictures()));
        report.part(pictures, scan.pictures().size() + " pictures are as they were kept");
        List<Refusal> documents = missing(scan.documents(), "document", contents::document);
        documents.addAll(contents.strayDocuments(scan.documents()));
        report.part(documents, scan.documents().size() + " documents are as they were kept");
        for (LogEntry kept : scan.clockSetBack()) {
            report.remark("Entry " + kept.number() + " is dated " + kept.draft().at()
                    + ", before the one in front of it: the clock was set back");
        }
        if (signed) {
            handBacks(scan.handedBack());
        } else {
            report.remark("No hand-back is signed: an older program kept this log");
        }
    }

    private List<Refusal> missing(Set<String> named, String word, Finding finding) throws SQLException {
        List<Refusal> faults = new ArrayList<>();
        for (String hash : named) {
            if (finding.of(hash).isEmpty()) {
                faults.add(Fault.at(
                        place,
                        "the " + word + " " + hash + " is named by an entry and is not there, or not as it was kept",
                        "Look for it in a backup"));
            }
        }
        return faults;
    }

    private void handBacks(List<LogEntry> handedBack) throws IOException, SQLException {
        boolean anySigned = Sql.signatures(database) > 0;
        for (LogEntry kept : handedBack) {
            String stream = kept.draft().stream();
            Optional<String> line = Sql.signature(database, stream, kept.streamNumber());
            Optional<SignedHead> signed = line.flatMap(SignedHead::of).filter(SignedHead::isSound);
            if (line.isEmpty() && !anySigned) {
                report.remark("The hand-back of " + stream + " is not signed");
            } else if (line.isEmpty()) {
                report.fault(Fault.at(place, "the signature of the hand-back of " + stream + " is gone", ""));
            } else if (signed.isEmpty()
                    || signed.get().what() != SignedHead.What.HANDBACK
                    || !signed.get().head().equals(kept.streamHead())
                    || !Sql.shop(database).equals(Optional.of(signed.get().shop()))) {
                report.fault(Fault.at(
                        place,
                        "the hand-back of " + stream + " is not the one that was signed: an entry of it was changed",
                        "Compare with the printed record, or with a backup"));
            } else {
                report.sound("the hand-back of " + stream + " is as it was signed");
                keys.check(report, place, signed.get());
            }
        }
    }

    /**
     * Compares a head that was printed or backed up.
     *
     * @param job the job's stream; empty for the whole log
     * @param hash at least its first 12 digits
     * @param when in words: "when this head was printed"
     */
    void head(String job, long count, String hash, String when) throws SQLException {
        Optional<Head> there = job.isEmpty() ? Sql.headAt(database, count) : Sql.headAt(database, job, count);
        String what = "entry " + count + (job.isEmpty() ? "" : " of " + job);
        if (there.isEmpty()) {
            report.fault(Fault.at(place, what + " is not there, so something kept is gone", ""));
        } else if (there.get().hash().startsWith(hash)) {
            report.sound(what + " and all before it are as they were " + when);
        } else {
            report.fault(Fault.at(place, what + " or one before it is not what it was " + when, ""));
        }
    }

    /**
     * Compares all heads that were remembered of a place, and its log with the newest of them.
     *
     * @param name of the place as it is remembered
     */
    void remembered(String name, Head log) throws IOException, SQLException {
        Optional<String> shop = Sql.shop(database);
        if (shop.isPresent()) {
            List<RememberedHeads.Remembered> all = keys.owner().heads().binding(shop.get(), name);
            if (all.isEmpty()) {
                report.remark("No head of this shop's place is remembered in "
                        + keys.owner().root());
            } else {
                report.part(
                        OwnerCheck.all(place, all, database, log),
                        all.size() + " heads that were printed, backed up or handed back are still in the log");
            }
        }
    }
}
