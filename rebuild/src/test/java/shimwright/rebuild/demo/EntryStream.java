package shimwright.rebuild.demo;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import shimwright.rebuild.job.Draft;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Fold;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.LogEntry;

/** A list of entries as a log would give them back: numbered, a quarter of an hour apart, without a disk. */
public final class EntryStream {
    public static final Instant BEGIN = Instant.parse("2031-03-03T08:00:00Z");
    public static final Duration APART = Duration.ofMinutes(15);

    private final String name;
    private final List<LogEntry> kept = new ArrayList<>();

    public EntryStream(String name) {
        this.name = name;
    }

    /** The entries laid one behind the other. */
    public static EntryStream of(Entry... entries) {
        EntryStream stream = new EntryStream("job-1");
        for (Entry entry : entries) {
            stream.add(entry);
        }
        return stream;
    }

    /** A stream of its own that begins with the first entries of this one. */
    public EntryStream beginning(int entries) {
        EntryStream stream = new EntryStream(name);
        stream.kept.addAll(kept.subList(0, entries));
        return stream;
    }

    public LogEntry add(Entry entry) {
        return add("entry-" + (kept.size() + 1), "the workshop", entry);
    }

    public LogEntry add(String id, String by, Entry entry) {
        long number = kept.size() + 1L;
        Instant at = BEGIN.plus(APART.multipliedBy(number));
        String hash = "%064x".formatted(number);
        LogEntry one = new LogEntry(number, number, new Draft(name, id, at, by, entry), hash, hash);
        kept.add(one);
        return one;
    }

    public List<LogEntry> entries() {
        return List.copyOf(kept);
    }

    public Job job() {
        return Fold.job(kept).orElseThrow();
    }
}
