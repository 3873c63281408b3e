package shimwright.bench.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import shimwright.rebuild.job.Fold;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.JobLog;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.job.Summaries;

/** Jobs and shop as the log has them now; a fold goes on where it stood, and nothing is folded twice. */
final class FoldCache {
    private final JobLog log;
    private final Optional<Summaries> summaries;
    private final Map<String, Going> jobs = new ConcurrentHashMap<>();
    private final Map<String, Summaries.Summary> known = new ConcurrentHashMap<>();
    private volatile @Nullable Stock stock;

    /**
     * The streams of a log.
     *
     * @param summaries where the lines of jobs are kept for the next start; empty where each start works them out
     */
    FoldCache(JobLog log, Optional<Summaries> summaries) {
        this.log = log;
        this.summaries = summaries;
        summaries.ifPresent(kept -> kept.all().forEach(summary -> known.put(summary.stream(), summary)));
    }

    /** A stream and how far it was read. */
    private final class Going {
        private final String name;
        private final Fold fold = new Fold();
        private Head head = Head.EMPTY;
        private Optional<Job> job = Optional.empty();
        private Set<String> pieces = Set.of();

        private Going(String name) {
            this.name = name;
        }

        private synchronized Optional<Job> job() {
            Head now = log.head(name);
            if (!now.equals(head)) {
                List<LogEntry> more = log.read(name, head);
                fold.take(more);
                head = Head.of(more);
                job = fold.job();
                pieces = job.map(Job::piecesIn).orElse(Set.of());
            }
            return job;
        }

        private synchronized Set<String> pieces() {
            job();
            return pieces;
        }
    }

    /** The shop's entries, what is in the units, and the shop that comes of both. */
    private record Stock(Head head, Map<String, String> taken, Shop shop) {}

    /** The job of a stream; empty where there is none. */
    Optional<Job> job(String stream) {
        if (stream.equals(JobLog.SHOP) || log.head(stream).equals(Head.EMPTY)) {
            return Optional.empty();
        }
        return jobs.computeIfAbsent(stream, Going::new).job();
    }

    /** Names of all jobs, in order of their first entry. */
    List<String> names() {
        return log.streams().stream().filter(name -> !name.equals(JobLog.SHOP)).toList();
    }

    /**
     * The line of each job, in order of their first entry. A job is folded for it only where its stream went on since
     * its line was last worked out.
     */
    synchronized List<JobSummary> lines() {
        List<JobSummary> lines = new ArrayList<>();
        List<Summaries.Summary> changed = new ArrayList<>();
        for (String name : names()) {
            Optional<JobSummary> line = Optional.ofNullable(known.get(name))
                    .filter(summary -> summary.head().equals(log.head(name)))
                    .flatMap(summary -> JobSummary.read(name, summary.text()));
            if (line.isEmpty()) {
                Optional<Job> job = job(name);
                line = job.map(JobSummary::of);
                if (job.isPresent() && line.isPresent()) {
                    changed.add(new Summaries.Summary(
                            name, job.get().head(), line.get().text()));
                }
            }
            line.ifPresent(lines::add);
        }
        if (!changed.isEmpty()) {
            changed.forEach(summary -> known.put(summary.stream(), summary));
            summaries.ifPresent(kept -> kept.keep(log.head(), changed));
        }
        return lines;
    }

    /** The shop as lines of jobs show it: to be looked at, not to be decided on. */
    Shop shopListed() {
        Map<String, String> taken = new LinkedHashMap<>();
        lines().forEach(line -> line.pieces().forEach(piece -> taken.put(piece, line.number())));
        return shop(taken);
    }

    /** Drawer and gauges as they are now; the same value while nothing of it changes. */
    Shop shop() {
        Map<String, String> taken = new LinkedHashMap<>();
        for (String name : names()) {
            Going going = jobs.computeIfAbsent(name, Going::new);
            Set<String> pieces = going.pieces();
            if (!pieces.isEmpty()) {
                String number = going.job().map(job -> job.opened().number()).orElse(name);
                pieces.forEach(piece -> taken.put(piece, number));
            }
        }
        return shop(taken);
    }

    private Shop shop(Map<String, String> taken) {
        Head head = log.head(JobLog.SHOP);
        Stock before = stock;
        if (before != null && before.head().equals(head) && before.taken().equals(taken)) {
            return before.shop();
        }
        Shop shop = Shop.of(log.read(JobLog.SHOP), taken);
        stock = new Stock(head, taken, shop);
        return shop;
    }
}
