package shimwright.bench;

import java.io.PrintStream;
import java.time.Clock;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import shimwright.bench.print.PdfPaper;
import shimwright.bench.store.log.OpenLog;
import shimwright.rebuild.job.StoreFailure;

/** What is seen to once a shop is open: the clock, paper, and the part of a long log that the start did not walk. */
final class LogWatch {
    private static final int PAPER_SECONDS = 5;
    private static final int SETTLE_SECONDS = 20;
    private static final int LOOK_AGAIN_SECONDS = 60;

    private LogWatch() {}

    static void begin(Serving.Running running, Clock clock, PrintStream err) {
        OpenLog log = running.log();
        log.lastKept()
                .filter(last -> last.isAfter(clock.instant()))
                .ifPresent(last -> err.println("The clock of this machine says " + clock.instant()
                        + ", but the last entry was kept at " + last
                        + ": set the clock right. What is kept now is dated"
                        + " before what was kept then, and the record will show it."));
        CompletableFuture.delayedExecutor(1, TimeUnit.SECONDS)
                .execute(() -> running.units()
                        .faults()
                        .forEach(fault -> err.println("Not on the shelf: " + fault.sentence())));
        CompletableFuture.delayedExecutor(PAPER_SECONDS, TimeUnit.SECONDS).execute(() -> settle(log));
        CompletableFuture.delayedExecutor(SETTLE_SECONDS, TimeUnit.SECONDS).execute(() -> walk(log, err));
    }

    /** Paper is made ready where there is something to print, and what the start left in memory is given back. */
    private static void settle(OpenLog log) {
        paper(log);
        // once, on a small heap: without it 15 MB of what was read are held until the heap is full
        System.gc();
    }

    /** An empty shop has paper made ready once its first entry is kept. */
    private static void paper(OpenLog log) {
        try {
            if (log.head().count() > 0) {
                PdfPaper.makeReady();
            } else {
                CompletableFuture.delayedExecutor(LOOK_AGAIN_SECONDS, TimeUnit.SECONDS)
                        .execute(() -> paper(log));
            }
        } catch (StoreFailure broken) {
            // the pages say what is wrong with the log; paper needs none of this to be right
        }
    }

    private static void walk(OpenLog log, PrintStream err) {
        try {
            log.walk().ifPresent(found -> err.println(found.sentence()));
        } catch (StoreFailure stopped) {
            err.println(stopped.refusal().sentence());
        }
    }
}
