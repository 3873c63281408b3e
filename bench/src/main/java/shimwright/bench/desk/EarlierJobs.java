package shimwright.bench.desk;

import java.util.List;
import java.util.Optional;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.StoreFailure;
import shimwright.rebuild.learn.Memories;

/**
 * What the last jobs of a type that were handed back teach. Each is read once for each head of its stream; one that is still built is not
 * among them, since nobody knows yet how it ended.
 */
final class EarlierJobs {
    private static final int MOST = 10;
    /** Jobs of which the memories are held. */
    private static final long HELD = 200;

    private final FoldCache streams;
    private final Recent<Known> known = new Recent<>(HELD, one -> 1);

    private record Known(Head head, Memories memories) {}

    EarlierJobs(FoldCache streams) {
        this.streams = streams;
    }

    /**
     * What they teach, the newest first.
     *
     * @param lines of all jobs, the newest first
     * @param job which is itself not among them
     */
    Memories of(List<JobSummary> lines, String unitType, String job) {
        List<JobSummary> earlier = lines.stream()
                .filter(line -> line.closed()
                        && line.unitType().equals(unitType)
                        && !line.job().equals(job))
                .limit(MOST)
                .toList();
        return earlier.isEmpty()
                ? Memories.NONE
                : Memories.joined(
                        earlier.stream().flatMap(line -> of(line).stream()).toList());
    }

    private Optional<Memories> of(JobSummary line) {
        Known before = known.get(line.job());
        if (before != null && before.head().equals(line.head())) {
            return Optional.of(before.memories());
        }
        Optional<Memories> read = read(line.job());
        read.ifPresent(memories -> known.put(line.job(), new Known(line.head(), memories)));
        return read;
    }

    /** A job whose entries cannot be read teaches nothing; its own pages say what is wrong with it. */
    private Optional<Memories> read(String job) {
        try {
            return streams.job(job).map(Memories::of);
        } catch (StoreFailure damaged) {
            return Optional.empty();
        }
    }
}
