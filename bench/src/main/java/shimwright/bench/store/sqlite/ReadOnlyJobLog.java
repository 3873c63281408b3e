package shimwright.bench.store.sqlite;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import shimwright.bench.store.disk.DataFolder;
import shimwright.bench.store.log.Connections;
import shimwright.bench.store.log.LogQueries;
import shimwright.bench.store.log.QueriedLog;
import shimwright.bench.store.log.Sql;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.AppendResult;
import shimwright.rebuild.job.Draft;
import shimwright.rebuild.job.Heads;

/** A data folder's job log for reading, also while another program writes it. */
public final class ReadOnlyJobLog implements QueriedLog, AutoCloseable {
    private final Path folder;
    private final LogQueries readers;

    private ReadOnlyJobLog(DataFolder files) {
        this.folder = files.root();
        this.readers = new LogQueries(new Connections(() -> Sql.toRead(files.database())));
    }

    /** Opens a log after the same checks as {@link SqliteJobLog#open}; refused where there is none. */
    public static Outcome<ReadOnlyJobLog> open(Path folder) {
        DataFolder files = new DataFolder(folder);
        if (!Files.exists(files.database()) && !Files.exists(files.head())) {
            return Outcome.refused(Refusal.at(folder.toString(), "there is no job log here", "Name a data folder"));
        }
        return new LogCheck(files).check(false).map(sound -> new ReadOnlyJobLog(files));
    }

    /** Always refused. */
    @Override
    public Outcome<AppendResult> append(List<Draft> act, Heads heads) {
        return Outcome.refused(Refusal.at(folder.toString(), "not kept: this log is open for reading only", ""));
    }

    @Override
    public LogQueries readers() {
        return readers;
    }

    @Override
    public void close() {
        try {
            readers.close();
        } catch (SQLException failed) {
            throw new IllegalStateException("the log could not be closed", failed);
        }
    }
}
