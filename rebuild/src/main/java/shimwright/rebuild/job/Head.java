package shimwright.rebuild.job;

import java.util.List;

/** How far a log or a stream goes: how many entries and the hash of the last; hash of nothing is 64 zeros. */
public record Head(long count, String hash) {
    /** The head of an empty log. */
    public static final Head EMPTY = new Head(0, "0".repeat(64));

    /** The head of a whole stream. */
    public static Head of(List<LogEntry> stream) {
        return stream.isEmpty() ? EMPTY : stream.get(stream.size() - 1).streamHead();
    }
}
