package shimwright.rebuild.demo;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import shimwright.rebuild.job.Draft;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Fold;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Kept;

/** A list of entries as a log would give them back: numbered, a quarter of an hour apart, without a disk. */
public final class Stream {
    public static final Instant BEGIN = Instant.parse("2031-03-03T08:00:00Z");
    public static final Duration APART = Duration.ofMinutes(15);

    private final String name;
    private final List<Kept> kept = new ArrayList<>();

    public Stream(String name) {
        this.name = name;
    }

    /** The entries laid one behind the other. */
    public static Stream of(Entry... entries) {
        Stream stream = new Stream("job-1");
        for (Entry entry : entries) {
            stream.add(entry);
        }
        return stream;
    }

    public Kept add(Entry entry) {
        return add("entry-" + (kept.size() + 1), "the workshop", entry);
    }

    public Kept add(String id, String by, Entry entry) {
        long number = kept.size() + 1L;
        Instant at = BEGIN.plus(APART.multipliedBy(number));
        String hash = "%064x".formatted(number);
        Kept one = new Kept(number, number, new Draft(name, id, at, by, entry), hash, hash);
        kept.add(one);
        return one;
    }

    public List<Kept> entries() {
        return List.copyOf(kept);
    }

    public Job job() {
        return Fold.job(kept).orElseThrow();
    }
}
