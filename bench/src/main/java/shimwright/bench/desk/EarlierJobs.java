package shimwright.bench.desk;

import java.util.List;
import java.util.Optional;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.StoreFailure;
import shimwright.rebuild.learn.Memories;
import shimwright.rebuild.learn.Taught;

/**
 * What the last jobs of a type that were handed back teach. Each is read once for each head of its stream; one that is still built is not
 * among them, since nobody knows yet how it ended.
 */
final class EarlierJobs {
    private static final int MOST = 10;
    /** Jobs whose numbers stand in a row. */
    private static final int MOST_IN_A_ROW = 30;
    /** Jobs of which the memories are held. */
    private static final long HELD = 200;

    private final FoldCache streams;
    private final Recent<Known> known = new Recent<>(HELD, one -> 1);
    private final ReadAhead<Taught> ahead = new ReadAhead<>(this::knows, this::of);

    private final ReadAhead<Job> jobs;

    private record Known(Head head, Taught taught) {}

    EarlierJobs(FoldCache streams) {
        this.streams = streams;
        this.jobs = new ReadAhead<>(streams::atHand, line -> streams.job(line.job()));
    }

    /**
     * The lessons of a unit type.
     *
     * @param lines of all jobs, the newest first
     * @param job which is itself not among them
     */
    Lessons of(List<JobSummary> lines, String unitType, String job) {
        List<JobSummary> wanted = lines.stream()
                .filter(line -> line.closed()
                        && line.unitType().equals(unitType)
                        && !line.job().equals(job))
                .limit(MOST_IN_A_ROW)
                .toList();
        SoFar<Taught> read = ahead.of(wanted);
        List<Memories> newest = wanted.stream()
                .limit(MOST)
                .flatMap(line -> Optional.ofNullable(read.of().get(line.job())).stream())
                .map(Taught::memories)
                .toList();
        return new Lessons(Memories.joined(newest), Taught.joined(read.values()), read.all());
    }

    /** The lines of a unit type, the newest first. */
    static List<JobSummary> newest(List<JobSummary> lines, String unitType, int most) {
        return lines.stream()
                .filter(line -> line.unitType().equals(unitType))
                .limit(most)
                .toList();
    }

    /** The jobs of a unit type as far as they are read, the newest first. */
    SoFar<Job> jobs(List<JobSummary> lines, String unitType, int most) {
        return jobs.of(newest(lines, unitType, most));
    }

    private boolean knows(JobSummary line) {
        Known before = known.get(line.job());
        return before != null && before.head().equals(line.head());
    }

    private Optional<Taught> of(JobSummary line) {
        Known before = known.get(line.job());
        if (before != null && before.head().equals(line.head())) {
            return Optional.of(before.taught());
        }
        Optional<Taught> read = read(line.job());
        read.ifPresent(taught -> known.put(line.job(), new Known(line.head(), taught)));
        return read;
    }

    /** A job whose entries cannot be read teaches nothing; its own pages say what is wrong with it. */
    private Optional<Taught> read(String job) {
        try {
            return streams.job(job).map(Taught::of);
        } catch (StoreFailure damaged) {
            return Optional.empty();
        }
    }
}
