package shimwright.bench.store.log;

import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Draft;
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
        return ask(database -> {
            StreamReader reader = new StreamReader(stream, after);
            Sql.stream(database, stream, after.count(), reader::take);
            // the head it had, not the head it has: another entry may come between two questions
            if (reader.found.isEmpty()
                    && !Sql.headAt(database, stream, after.count()).equals(Optional.of(after))) {
                throw damaged(stream, after);
            }
            return Collections.unmodifiableList(reader.found);
        });
    }

    /**
     * Takes the rows of a stream one by one, if each follows from the one before. Nothing of a row is held but its entry, and
     * what stands in every row is held once: a stream may be long.
     */
    private static final class StreamReader {
        private final String stream;
        private final List<LogEntry> found = new ArrayList<>();
        private final Map<String, String> once = new HashMap<>();
        private Head head;

        StreamReader(String stream, Head after) {
            this.stream = stream;
            this.head = after;
        }

        /** Throws {@link StoreFailure} where it does not follow: the file was damaged after it was opened. */
        void take(EntryRow row) {
            if (!row.followsInStream(head)) {
                throw damaged(stream, head);
            }
            head = row.streamHead();
            LogEntry kept = row.kept();
            Draft draft = kept.draft();
            Draft lean =
                    new Draft(stream, draft.id(), draft.at(), once(draft.by()), once(draft.device()), draft.body());
            found.add(new LogEntry(kept.number(), kept.streamNumber(), lean, kept.chain(), kept.streamChain()));
        }

        private String once(String text) {
            String known = once.putIfAbsent(text, text);
            return known == null ? text : known;
        }
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

    /** When the last entry was kept; empty for a log without any. */
    public Optional<Instant> lastKept() {
        return ask(database -> Sql.entryAt(database, Sql.head(database).count()))
                .map(EntryRow::at);
    }

    /** How far a stream goes. */
    public Head head(String stream) {
        return ask(database -> Sql.head(database, stream));
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
