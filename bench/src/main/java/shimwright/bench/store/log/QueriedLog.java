package shimwright.bench.store.log;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.JobLog;
import shimwright.rebuild.job.LogEntry;

/** A log that is read by {@link LogQueries}, whatever database it lies in. */
public interface QueriedLog extends JobLog {
    /** What reads the log. */
    LogQueries readers();

    @Override
    default Optional<LogEntry> find(String id) {
        return readers().find(id);
    }

    @Override
    default List<LogEntry> read(String stream, Head after) {
        return readers().read(stream, after);
    }

    @Override
    default List<LogEntry> since(Head after, int atMost) {
        return readers().since(after, atMost);
    }

    @Override
    default List<String> streams() {
        return readers().streams();
    }

    @Override
    default Optional<Instant> lastKept() {
        return readers().lastKept();
    }

    @Override
    default Head head() {
        return readers().head();
    }

    @Override
    default Head head(String stream) {
        return readers().head(stream);
    }
}
