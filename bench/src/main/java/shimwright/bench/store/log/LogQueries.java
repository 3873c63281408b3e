package shimwright.bench.store.log;

import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.StoreFailure;

/** The questions that are asked of a log; they never wait for the writer. */
public final class LogQueries implements AutoCloseable {
    private final Connections connections;

    public LogQueries(Connections connections) {
        this.connections = connections;
    }

    /**
     * The answer as the log stands now.
     *
     * @throws StoreFailure when the store does not answer
     */
    public <T> T ask(Connections.Question<T> question) {
        try {
            return connections.ask(question);
        } catch (SQLException failed) {
            throw new StoreFailure(
                    Refusal.at("", "the job log cannot be read: " + Sql.why(failed), "Nothing was changed"), failed);
        }
    }

    /** The entries of a stream after a head, in order. */
    public List<LogEntry> read(String stream, Head after) {
        List<EntryRow> rows = ask(database -> {
            List<EntryRow> found = Sql.stream(database, stream, after.count());
            // the head it had, not the head it has: another entry may come between two questions
            if (found.isEmpty() && !Sql.headAt(database, stream, after.count()).equals(Optional.of(after))) {
                throw damaged(stream, after);
            }
            return found;
        });
        return sound(rows, stream, after).stream().map(EntryRow::kept).toList();
    }

    /** The entries of the whole log after a head, in order, at most so many. */
    public List<LogEntry> since(Head after, int atMost) {
        List<EntryRow> rows = ask(database -> {
            if (!Sql.headAt(database, after.count()).equals(Optional.of(after))) {
                throw damaged("the log", after);
            }
            return Sql.since(database, after.count(), atMost);
        });
        Head head = after;
        for (EntryRow row : rows) {
            if (!row.follows(head)) {
                throw damaged("the log", head);
            }
            head = row.head();
        }
        return rows.stream().map(EntryRow::kept).toList();
    }

    /** The entry of that id; empty where there is none. */
    public Optional<LogEntry> find(String id) {
        return ask(database -> Sql.entry(database, id)).map(EntryRow::kept);
    }

    /** The streams of the log, in the order in which they began. */
    public List<String> streams() {
        return ask(Sql::streams);
    }

    /** How far the whole log goes. */
    public Head head() {
        return ask(Sql::head);
    }

    /** How far a stream goes. */
    public Head head(String stream) {
        return ask(database -> Sql.head(database, stream));
    }

    /**
     * The rows of one stream if each follows from the one before.
     *
     * @throws StoreFailure when one does not: the file was damaged after it was opened
     */
    private static List<EntryRow> sound(List<EntryRow> rows, String stream, Head after) {
        Head head = after;
        for (EntryRow row : rows) {
            if (!row.followsInStream(head)) {
                throw damaged(stream, head);
            }
            head = row.streamHead();
        }
        return rows;
    }

    private static StoreFailure damaged(String stream, Head sound) {
        return new StoreFailure(Refusal.at(
                stream,
                "entry %d here was changed or damaged while the program ran".formatted(sound.count() + 1),
                "Stop the program and restore the newest backup into a new folder"));
    }

    @Override
    public void close() throws SQLException {
        connections.close();
    }
}
