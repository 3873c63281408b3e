package shimwright.bench.store.log;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.LogEntry;

/** An entry as its columns hold it. */
public record EntryRow(long number, long streamNumber, EntryText written, String hash, String streamHash) {
    /** The columns in the order in which {@link #of(ResultSet)} reads them. */
    public static final String COLUMNS =
            "number, stream, stream_number, id, at, by_whom, device, type, body, hash, stream_hash";

    /** The row that follows both heads. */
    public static EntryRow after(Head log, Head stream, EntryText written) {
        return new EntryRow(log.count() + 1, stream.count() + 1, written, written.hash(log), written.hash(stream));
    }

    /** The row under the cursor; a column that holds nothing reads as empty text, which no hash fits. */
    public static EntryRow of(ResultSet rows) throws SQLException {
        return new EntryRow(
                rows.getLong(1),
                rows.getLong(3),
                new EntryText(
                        text(rows, 2),
                        text(rows, 4),
                        text(rows, 5),
                        text(rows, 6),
                        text(rows, 7),
                        text(rows, 8),
                        text(rows, 9)),
                text(rows, 10),
                text(rows, 11));
    }

    private static String text(ResultSet rows, int column) throws SQLException {
        String text = rows.getString(column);
        return text == null ? "" : text;
    }

    String stream() {
        return written.stream();
    }

    String type() {
        return written.type();
    }

    /** When it was kept; what it says is not read. */
    Instant at() {
        return Instant.parse(written.at());
    }

    /** Whether this row is the one that follows {@code log} in the whole log. */
    boolean follows(Head log) {
        return number == log.count() + 1 && hash.equals(written.hash(log));
    }

    /** Whether this row is the one that follows {@code head} in its stream. */
    boolean followsInStream(Head head) {
        return streamNumber == head.count() + 1 && streamHash.equals(written.hash(head));
    }

    /** How far the log goes with it. */
    public Head head() {
        return new Head(number, hash);
    }

    /** How far its stream goes with it. */
    public Head streamHead() {
        return new Head(streamNumber, streamHash);
    }

    /** The entry as the house knows it. */
    public LogEntry kept() {
        return new LogEntry(number, streamNumber, written.draft(), hash, streamHash);
    }
}
