package shimwright.bench.desk;

import java.time.Instant;
import shimwright.rebuild.job.JobLog;

/** What lay on a screen until its bench could be reached again: when it counts as done, and how it is signed. */
final class SentLater {
    private static final int HOUR = 60;
    private static final int TWO_DAYS = 2 * 24 * HOUR;

    private SentLater() {}

    /**
     * When it was typed: dated back by as long as it waited, but never before what is kept already, nor after now.
     *
     * @param now by the clock of the bench
     */
    static Instant at(Desk.Signed signed, Instant now, JobLog log) {
        Instant then = now.minus(signed.waited());
        return signed.waited().isZero()
                ? now
                : log.lastKept()
                        .filter(last -> last.isAfter(then))
                        .map(last -> last.isAfter(now) ? now : last)
                        .orElse(then);
    }

    /** Who, and how much later it was sent than done: its time is told by the clock of the screen, and every paper says so. */
    static String signature(Desk.Signed signed) {
        long minutes = signed.waited().toMinutes();
        if (minutes < 1) {
            return signed.by();
        }
        String later = minutes < 2 * HOUR
                ? minutes + " min"
                : minutes < TWO_DAYS ? minutes / HOUR + " h" : minutes / (24 * HOUR) + " days";
        return signed.by() + ", sent " + later + " later";
    }
}
