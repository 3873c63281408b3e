package shimwright.bench.store.log;

import java.util.Optional;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.JobLog;
import shimwright.rebuild.job.Signing;

/** A job log that is open, wherever it lies. */
public interface OpenLog extends JobLog, AutoCloseable {
    /** How a log is opened. */
    enum Opening {
        /** To write, as the only program that does. */
        WRITE,
        /** The same, letting a missing head file pass, or one that says more than the log holds; once, on request. */
        ACCEPT
    }

    /** What this shop signs and remembers; nothing where it was opened without an owner's folder. */
    Signing signing();

    /**
     * Walks the whole log while the program runs. Where it finds something, nothing is kept any more.
     *
     * @return what it found; empty for a sound log
     */
    Optional<Refusal> walk();

    @Override
    void close();
}
