package shimwright.bench.store.log;

import shimwright.bench.store.sign.RememberedHeads.Remembered;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Head;

/** What can be wrong with a data folder, each with its sentence. */
public final class Fault {
    /** The option that opens a log whose head file is missing or says more. */
    static final String ACCEPT = "--accept-log";

    private static final String RESTORE =
            "Nothing was written. Keep this folder as it is and restore the newest backup into a new one";

    private Fault() {}

    /** The log goes less far than the head that was kept beside it. */
    public static Refusal shorter(Object folder, Head head, Head log) {
        long missing = head.count() - log.count();
        return at(
                folder,
                "the job log lost its end: %d entries were kept, %d are there, %s missing"
                        .formatted(head.count(), log.count(), missing == 1 ? "1 is" : missing + " are"),
                RESTORE + ". To go on without what is missing, start once with " + ACCEPT);
    }

    /** The log has another entry where the head file beside it has one. */
    public static Refusal other(Object folder, Head head) {
        return at(
                folder,
                "this is not the job log that was kept here: entry %d is another than the head file says"
                        .formatted(head.count()),
                RESTORE);
    }

    static Refusal broken(Object folder, long number, long count) {
        return at(
                folder,
                "the job log was changed or damaged after it was kept: entry %d of %d does not follow from the one before"
                        .formatted(number, count),
                RESTORE);
    }

    /** The store cannot be read. */
    public static Refusal damaged(Object folder, String why) {
        return at(folder, "the job log cannot be read: " + why, RESTORE);
    }

    /** The tables are not as this program made them. */
    public static Refusal guard(Object folder) {
        return at(folder, "the job log's tables are not as this program made them", RESTORE);
    }

    /** The store was written by a later program. */
    public static Refusal newer(Object folder, String what) {
        return at(
                folder,
                "the job log holds " + what + " that this program does not know: a newer one wrote it",
                "Nothing was written. Use the newer program");
    }

    /** There is a log and no head beside it. */
    public static Refusal headMissing(Object folder, Head log) {
        return at(
                folder,
                "the head file is missing, so nobody can tell whether all entries are there; the job log ends at entry %d"
                        .formatted(log.count()),
                "Nothing was written. Compare that number with your newest record or backup. If it is right, as after"
                        + " copying the log back by hand, start once with " + ACCEPT);
    }

    /** The head beside the log cannot be read. */
    public static Refusal headTorn(Object folder, Head log) {
        return at(
                folder,
                "the head file is damaged, so nobody can tell whether all entries are there; the job log ends at entry %d"
                        .formatted(log.count()),
                "Nothing was written. Compare that number with your newest record or backup. If it is right, start once"
                        + " with " + ACCEPT);
    }

    static Refusal gone(Object folder) {
        return at(
                folder,
                "the job log and its head file are gone, but pictures or documents of a shop lie here",
                RESTORE + ". To begin an empty shop here all the same, start once with " + ACCEPT);
    }

    static Refusal rolledBack(Object folder, Remembered remembered, Head log) {
        return at(
                folder,
                "the job log lost its end: entry %d was there %s (%s), this one goes to entry %d"
                        .formatted(
                                remembered.head().count(), remembered.occasion().words(), remembered.at(), log.count()),
                RESTORE + ". To go on without what is missing, start once with " + ACCEPT);
    }

    static Refusal madeAnew(Object folder, Remembered remembered) {
        return at(
                folder,
                "this is not the job log that was kept here: entry %d%s is another than it was %s (%s)"
                        .formatted(
                                remembered.head().count(),
                                remembered.stream().isEmpty() ? "" : " of " + remembered.stream(),
                                remembered.occasion().words(),
                                remembered.at()),
                RESTORE);
    }

    static Refusal otherShop(Object folder) {
        return at(
                folder,
                "another shop's job log was kept here before: this one begins with another entry",
                RESTORE + ". If you put this shop here yourself, start once with " + ACCEPT);
    }

    /** The folder with the keys and heads outside the shop cannot be used. */
    public static Refusal ownerFolder(Object folder, String why) {
        return at(
                folder,
                "the owner's folder, which holds the key that signs, cannot be used: " + why,
                "Make it readable for this user alone, or name another with --owner DIR");
    }

    /** The log was found damaged while the program ran. */
    public static Refusal spoilt(Refusal found) {
        return Refusal.at(
                found.place(),
                "not kept, because the job log was found damaged while the program ran: " + found.fact(),
                "Stop the program and restore the newest backup into a new folder");
    }

    /** Another program has the folder open. */
    public static Refusal inUse(Object folder) {
        return at(
                folder,
                "another Shimwright is working in this folder",
                "Stop that one first, or use its address in the browser");
    }

    /** The folder cannot be written. */
    public static Refusal notWritable(Object folder, String why) {
        return at(folder, "this folder cannot be used: " + why, "Make room or rights, or name another folder");
    }

    /** An entry was not kept. */
    public static Refusal notKept(String why) {
        return Refusal.at("", "not kept: " + why, "Nothing was lost. Put that right and post it again");
    }

    /** An entry was kept and the head beside the log was not. */
    public static Refusal headNotWritten(String why) {
        return Refusal.at(
                "",
                "kept, but the head file could not be written: " + why,
                "Put that right and post it again; it will not be kept twice");
    }

    /** A fault of a folder, in words. */
    public static Refusal at(Object folder, String fact, String hint) {
        return Refusal.at(folder.toString(), fact, hint);
    }
}
