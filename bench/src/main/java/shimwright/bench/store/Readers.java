package shimwright.bench.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.Kept;
import shimwright.rebuild.job.StoreFailure;

/** Connections that read, lent one at a time; they never wait for the writer. */
final class Readers implements AutoCloseable {
    private static final int KEPT_OPEN = 4;

    private final DataFolder files;
    private final Deque<Connection> idle = new ArrayDeque<>();

    Readers(DataFolder files) {
        this.files = files;
    }

    /** A question to the log. */
    interface Question<T> {
        T of(Connection database) throws SQLException;
    }

    /**
     * The answer as the log stands now.
     *
     * @throws StoreFailure when the disk does not answer
     */
    <T> T ask(Question<T> question) {
        try {
            Connection database = lend();
            try {
                return question.of(database);
            } finally {
                giveBack(database);
            }
        } catch (SQLException failed) {
            throw new StoreFailure(
                    new Refusal("", "the job log cannot be read: " + Sql.why(failed), "Nothing was changed"), failed);
        }
    }

    List<Kept> read(String stream, Head after) {
        List<Row> rows = ask(database -> {
            List<Row> found = Sql.stream(database, stream, after.count());
            if (found.isEmpty() && !after.equals(Sql.head(database, stream))) {
                throw damaged(stream, after);
            }
            return found;
        });
        return sound(rows, stream, after).stream().map(Row::kept).toList();
    }

    Optional<Kept> find(String id) {
        return ask(database -> Sql.entry(database, id)).map(Row::kept);
    }

    List<String> streams() {
        return ask(Sql::streams);
    }

    Head head() {
        return ask(Sql::head);
    }

    Head head(String stream) {
        return ask(database -> Sql.head(database, stream));
    }

    /**
     * The rows of one stream if each follows from the one before.
     *
     * @throws StoreFailure when one does not: the file was damaged after it was opened
     */
    private static List<Row> sound(List<Row> rows, String stream, Head after) {
        Head head = after;
        for (Row row : rows) {
            if (!row.followsInStream(head)) {
                throw damaged(stream, head);
            }
            head = row.streamHead();
        }
        return rows;
    }

    private static StoreFailure damaged(String stream, Head sound) {
        return new StoreFailure(new Refusal(
                stream,
                "entry %d of this job was changed or damaged while the program ran".formatted(sound.count() + 1),
                "Stop the program and restore the newest backup into a new folder"));
    }

    private Connection lend() throws SQLException {
        synchronized (idle) {
            if (!idle.isEmpty()) {
                return idle.pop();
            }
        }
        return Sql.toRead(files.database());
    }

    private void giveBack(Connection database) throws SQLException {
        synchronized (idle) {
            if (idle.size() < KEPT_OPEN) {
                idle.push(database);
                return;
            }
        }
        database.close();
    }

    @Override
    public void close() throws SQLException {
        synchronized (idle) {
            for (Connection database : idle) {
                database.close();
            }
            idle.clear();
        }
    }
}
