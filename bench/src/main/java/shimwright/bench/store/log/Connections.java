package shimwright.bench.store.log;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayDeque;
import java.util.Deque;

/** Connections that are lent one at a time and kept open between; one on which something failed is not lent again. */
public final class Connections implements AutoCloseable {
    private static final int KEPT_OPEN = 4;

    private final Source source;
    private final Deque<Connection> idle = new ArrayDeque<>();

    /** Opens a connection. */
    public interface Source {
        Connection open() throws SQLException;
    }

    /** What is asked over a connection. */
    public interface Question<T> {
        T of(Connection database) throws SQLException;
    }

    public Connections(Source source) {
        this.source = source;
    }

    /** The answer over one connection. */
    public <T> T ask(Question<T> question) throws SQLException {
        Connection database = lend();
        boolean sound = false;
        try {
            T answer = question.of(database);
            sound = true;
            return answer;
        } finally {
            giveBack(database, sound);
        }
    }

    private Connection lend() throws SQLException {
        while (true) {
            Connection database;
            synchronized (idle) {
                if (idle.isEmpty()) {
                    break;
                }
                database = idle.pop();
            }
            // a server that was started anew has forgotten us
            if (database.isValid(1)) {
                return database;
            }
            database.close();
        }
        return source.open();
    }

    private void giveBack(Connection database, boolean sound) throws SQLException {
        synchronized (idle) {
            if (sound && idle.size() < KEPT_OPEN) {
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
