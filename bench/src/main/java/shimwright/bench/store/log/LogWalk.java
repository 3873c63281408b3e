package shimwright.bench.store.log;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.job.EntryCodec;
import shimwright.rebuild.job.Head;

/** The walk over the entries of a log, each against the two before it. */
public final class LogWalk {
    private static final int ROWS = 500;

    private LogWalk() {}

    /**
     * The head that the walk comes to.
     *
     * @param place the log, for the sentence of a refusal
     * @param walked where to begin: a head that this log has
     */
    public static Outcome<Head> walk(Object place, Connection database, Head walked) throws SQLException {
        Head log = walked;
        Map<String, Head> streams = new HashMap<>();
        try (PreparedStatement ask = database.prepareStatement(
                "select " + EntryRow.COLUMNS + " from entry where number > ? order by number")) {
            ask.setLong(1, walked.count());
            ask.setFetchSize(ROWS);
            try (ResultSet rows = ask.executeQuery()) {
                while (rows.next()) {
                    EntryRow row = EntryRow.of(rows);
                    if (walked.count() > 0 && !streams.containsKey(row.stream())) {
                        Sql.headAt(database, row.stream(), row.streamNumber() - 1)
                                .ifPresent(head -> streams.put(row.stream(), head));
                    }
                    Head stream = streams.getOrDefault(row.stream(), Head.EMPTY);
                    if (!row.follows(log) || !row.followsInStream(stream)) {
                        return Outcome.refused(List.of(Fault.broken(place, log.count() + 1, count(database))));
                    }
                    if (!EntryCodec.knows(row.type())) {
                        return Outcome.refused(List.of(Fault.newer(place, "an entry of the type " + row.type())));
                    }
                    log = row.head();
                    streams.put(row.stream(), row.streamHead());
                }
            }
        }
        return Outcome.ok(log);
    }

    private static long count(Connection database) throws SQLException {
        try (Statement ask = database.createStatement();
                ResultSet answer = ask.executeQuery("select count(*) from entry")) {
            return answer.next() ? answer.getLong(1) : 0;
        }
    }
}
