package shimwright.rebuild.job;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The heads on which an act was decided: it is kept only while they are still the heads.
 *
 * @param streams the head of every stream that was looked at; {@link Head#EMPTY} for one that has no entries
 * @param log the head of the whole log, where everything in it was looked at
 */
public record Heads(Map<String, Head> streams, Optional<Head> log) {
    /** An act that rests on nothing, such as the first entry of a new job in a test. */
    public static final Heads NOTHING = new Heads(Map.of(), Optional.empty());

    public Heads {
        streams = Map.copyOf(streams);
    }

    /** An act that rests on one stream. */
    public static Heads of(String stream, Head head) {
        return NOTHING.and(stream, head);
    }

    /** An act that rests on the whole log: anything kept since forbids it. */
    public static Heads ofLog(Head head) {
        return new Heads(Map.of(), Optional.of(head));
    }

    /** The same and one stream more. */
    public Heads and(String stream, Head head) {
        Map<String, Head> more = new LinkedHashMap<>(streams);
        more.put(stream, head);
        return new Heads(more, log);
    }
}
