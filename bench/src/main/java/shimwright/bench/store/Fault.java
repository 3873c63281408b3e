package shimwright.bench.store;

import java.nio.file.Path;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Head;

/** What can be wrong with a data folder, each with its sentence. */
final class Fault {
    /** The option that opens a log whose head file is missing or says more. */
    static final String ACCEPT = "--accept-log";

    private static final String RESTORE =
            "Nothing was written. Keep this folder as it is and restore the newest backup into a new one";

    private Fault() {}

    static Refusal shorter(Path folder, Head head, Head log) {
        long missing = head.count() - log.count();
        return at(
                folder,
                "the job log lost its end: %d entries were kept, %d are there, %s missing"
                        .formatted(head.count(), log.count(), missing == 1 ? "1 is" : missing + " are"),
                RESTORE + ". To go on without what is missing, start once with " + ACCEPT);
    }

    static Refusal other(Path folder, Head head) {
        return at(
                folder,
                "this is not the job log that was kept here: entry %d is another than the head file says"
                        .formatted(head.count()),
                RESTORE);
    }

    static Refusal broken(Path folder, long number, long count) {
        return at(
                folder,
                "the job log was changed or damaged after it was kept: entry %d of %d does not follow from the one before"
                        .formatted(number, count),
                RESTORE);
    }

    static Refusal damaged(Path folder, String why) {
        return at(folder, "the job log cannot be read: " + why, RESTORE);
    }

    static Refusal guard(Path folder) {
        return at(folder, "the job log's tables are not as this program made them", RESTORE);
    }

    static Refusal newer(Path folder, String what) {
        return at(
                folder,
                "the job log holds " + what + " that this program does not know: a newer one wrote it",
                "Nothing was written. Use the newer program");
    }

    static Refusal headMissing(Path folder, Head log) {
        return at(
                folder,
                "the head file is missing, so nobody can tell whether all entries are there; the job log ends at entry %d"
                        .formatted(log.count()),
                "Nothing was written. Compare that number with your newest record or backup. If it is right, as after"
                        + " copying the log back by hand, start once with " + ACCEPT);
    }

    static Refusal headTorn(Path folder, Head log) {
        return at(
                folder,
                "the head file is damaged, so nobody can tell whether all entries are there; the job log ends at entry %d"
                        .formatted(log.count()),
                "Nothing was written. Compare that number with your newest record or backup. If it is right, start once"
                        + " with " + ACCEPT);
    }

    static Refusal inUse(Path folder) {
        return at(
                folder,
                "another Shimwright is working in this folder",
                "Stop that one first, or use its address in the browser");
    }

    static Refusal notWritable(Path folder, String why) {
        return at(folder, "this folder cannot be used: " + why, "Make room or rights, or name another folder");
    }

    static Refusal notKept(String why) {
        return new Refusal("", "not kept: " + why, "Nothing was lost. Put that right and post it again");
    }

    static Refusal headNotWritten(String why) {
        return new Refusal(
                "",
                "kept, but the head file could not be written: " + why,
                "Put that right and post it again; it will not be kept twice");
    }

    static Refusal at(Path folder, String fact, String hint) {
        return new Refusal(folder.toString(), fact, hint);
    }
}
