package shimwright.bench.store.log;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.EntryCodec;
import shimwright.rebuild.job.Head;

/** The walk over the entries of a log, each against the two before it. */
public final class LogWalk {
    private static final int ROWS = 500;

    private final Object place;
    private final Connection database;
    private final Head walked;
    private final Map<String, Head> streams = new HashMap<>();
    private Head log;

    private LogWalk(Object place, Connection database, Head walked) {
        this.place = place;
        this.database = database;
        this.walked = walked;
        this.log = walked;
    }

    /**
     * The head that the walk comes to.
     *
     * @param place the log, for the sentence of a refusal
     * @param walked where to begin: a head that this log has
     */
    public static Outcome<Head> walk(Object place, Connection database, Head walked) throws SQLException {
        return walk(place, database, walked, Pace.full());
    }

    /** The same at a pace. Entries are asked for in parts, so that no question stays open for as long as the walk takes. */
    public static Outcome<Head> walk(Object place, Connection database, Head walked, Pace pace) throws SQLException {
        LogWalk walk = new LogWalk(place, database, walked);
        while (true) {
            Head from = walk.log;
            Optional<Refusal> fault = walk.part();
            if (fault.isPresent()) {
                return Outcome.refused(List.of(fault.get()));
            }
            if (walk.log.count() - from.count() < ROWS) {
                return Outcome.ok(walk.log);
            }
            pace.rest();
        }
    }

    private Optional<Refusal> part() throws SQLException {
        try (PreparedStatement ask = database.prepareStatement(
                "select " + EntryRow.COLUMNS + " from entry where number > ? order by number limit " + ROWS)) {
            ask.setLong(1, log.count());
            try (ResultSet rows = ask.executeQuery()) {
                while (rows.next()) {
                    Optional<Refusal> fault = take(EntryRow.of(rows));
                    if (fault.isPresent()) {
                        return fault;
                    }
                }
            }
        }
        return Optional.empty();
    }

    private Optional<Refusal> take(EntryRow row) throws SQLException {
        if (walked.count() > 0 && !streams.containsKey(row.stream())) {
            Sql.headAt(database, row.stream(), row.streamNumber() - 1)
                    .ifPresent(head -> streams.put(row.stream(), head));
        }
        Head stream = streams.getOrDefault(row.stream(), Head.EMPTY);
        if (!row.follows(log) || !row.followsInStream(stream)) {
            return Optional.of(Fault.broken(place, log.count() + 1, count(database)));
        }
        if (!EntryCodec.knows(row.type())) {
            return Optional.of(Fault.newer(place, "an entry of the type " + row.type()));
        }
        log = row.head();
        streams.put(row.stream(), row.streamHead());
        return Optional.empty();
    }

    private static long count(Connection database) throws SQLException {
        try (Statement ask = database.createStatement();
                ResultSet answer = ask.executeQuery("select count(*) from entry")) {
            return answer.next() ? answer.getLong(1) : 0;
        }
    }
}
