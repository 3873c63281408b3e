package shimwright.bench.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import shimwright.rebuild.job.Draft;
import shimwright.rebuild.job.EntryCodec;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.Kept;

/** An entry as its columns hold it. */
record Row(
        long number,
        String stream,
        long streamNumber,
        String id,
        String at,
        String by,
        String type,
        String body,
        String hash,
        String streamHash) {
    /** The columns in the order in which {@link #of(ResultSet)} reads them. */
    static final String COLUMNS = "number, stream, stream_number, id, at, by_whom, type, body, hash, stream_hash";

    /** The row that follows both heads. */
    static Row after(Head log, Head stream, Draft draft) {
        String at = draft.at().toString();
        String type = EntryCodec.typeOf(draft.body());
        String body = EntryCodec.write(draft.body());
        String[] texts = {draft.stream(), draft.id(), at, draft.by(), type, body};
        return new Row(
                log.count() + 1,
                draft.stream(),
                stream.count() + 1,
                draft.id(),
                at,
                draft.by(),
                type,
                body,
                Chain.next(log.hash(), texts),
                Chain.next(stream.hash(), texts));
    }

    /** The row under the cursor; a column that holds nothing reads as empty text, which no hash fits. */
    static Row of(ResultSet rows) throws SQLException {
        return new Row(
                rows.getLong(1),
                text(rows, 2),
                rows.getLong(3),
                text(rows, 4),
                text(rows, 5),
                text(rows, 6),
                text(rows, 7),
                text(rows, 8),
                text(rows, 9),
                text(rows, 10));
    }

    private static String text(ResultSet rows, int column) throws SQLException {
        String text = rows.getString(column);
        return text == null ? "" : text;
    }

    /** Whether this row is the one that follows {@code log} in the whole log. */
    boolean follows(Head log) {
        return number == log.count() + 1 && hash.equals(Chain.next(log.hash(), texts()));
    }

    /** Whether this row is the one that follows {@code head} in its stream. */
    boolean followsInStream(Head head) {
        return streamNumber == head.count() + 1 && streamHash.equals(Chain.next(head.hash(), texts()));
    }

    private String[] texts() {
        return new String[] {stream, id, at, by, type, body};
    }

    Head head() {
        return new Head(number, hash);
    }

    Head streamHead() {
        return new Head(streamNumber, streamHash);
    }

    Kept kept() {
        Draft draft = new Draft(stream, id, Instant.parse(at), by, EntryCodec.read(type, body));
        return new Kept(number, streamNumber, draft, hash, streamHash);
    }
}
