package shimwright.bench.desk;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import shimwright.rebuild.job.Fold;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.JobLog;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.job.StoreFailure;
import shimwright.rebuild.job.Summaries;

/**
 * Jobs and shop as the log has them now. Of every job its line is at hand, of those that were asked for last the job itself;
 * a fold goes on where it stood, and what other benches kept is taken in from the end of the log.
 */
final class FoldCache {
    /** Entries of all folded jobs together that are held in memory. */
    private static final long ENTRIES = 35_000;

    private static final int AT_ONCE = 500;

    /** Where more came than this, each stream is asked for its head instead of reading what came. */
    private static final int MANY = 20_000;

    /** Lines that may be worked out anew at the next start. */
    private static final int LINES_AT_RISK = 200;

    private final JobLog log;
    private final Optional<Summaries> summaries;
    private volatile @Nullable ReadingAnew anew;
    private volatile boolean stopped;
    private final Recent<Going> jobs = new Recent<>(ENTRIES, Going::size);

    private final Map<String, Summaries.Summary> unwritten = new LinkedHashMap<>();
    private final Map<String, JobSummary> known = new LinkedHashMap<>();
    private Head seen = Head.EMPTY;
    private @Nullable List<JobSummary> lines;
    private Set<String> names = Set.of();
    private Map<String, String> taken = Map.of();
    private @Nullable Stock stock;
    private @Nullable ShopSummary shopSummary;

    /**
     * The streams of a log.
     *
     * @param summaries where the lines of jobs are kept for the next start; empty where each start works them out
     */
    FoldCache(JobLog log, Optional<Summaries> summaries) {
        this.log = log;
        this.summaries = summaries;
        summaries.ifPresent(this::begin);
        if (log.head().count() - seen.count() > MANY) {
            anew = new ReadingAnew(0, log.streams().size());
        }
    }

    /** How far a shop is read whose lines were not kept, or were kept by another version of the program; empty once all is at hand. */
    Optional<ReadingAnew> readingAnew() {
        return Optional.ofNullable(anew);
    }

    /** Lets a shop be closed that is still being read: what was read is kept, the rest is read at the next start. */
    void stop() {
        stopped = true;
    }

    private void begin(Summaries kept) {
        Head upTo = kept.upTo();
        for (Summaries.Summary summary : kept.all()) {
            if (summary.stream().equals(JobLog.SHOP)) {
                shopSummary = ShopSummary.read(summary.head(), summary.text()).orElse(null);
                continue;
            }
            Optional<JobSummary> line = JobSummary.read(summary.stream(), summary.head(), summary.text());
            if (line.isEmpty()) {
                known.clear();
                return;
            }
            known.put(summary.stream(), line.get());
        }
        seen = known.isEmpty() || !had(upTo) ? Head.EMPTY : upTo;
        listed(true);
    }

    /** Whether the log had this head once. */
    private boolean had(Head head) {
        try {
            log.since(head, 1);
            return true;
        } catch (StoreFailure anotherLog) {
            return false;
        }
    }

    /** A stream and how far it was read. */
    private final class Going {
        private final String name;
        private final Fold fold = new Fold();
        private Head head = Head.EMPTY;
        private Optional<Job> job = Optional.empty();

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
            }
            return job;
        }

        private synchronized boolean at(Head of) {
            return head.equals(of);
        }

        private int size() {
            return fold.size();
        }
    }

    /** The shop's entries, what is in the units, and the shop that comes of both. */
    private record Stock(Head head, List<LogEntry> stream, Map<String, String> taken, Shop shop, String mark) {}

    /** The job of a stream; empty where there is none. */
    Optional<Job> job(String stream) {
        if (stream.equals(JobLog.SHOP) || log.head(stream).equals(Head.EMPTY)) {
            return Optional.empty();
        }
        return jobs.of(stream, Going::new).job();
    }

    /** Whether a job as its line has it is held in memory. */
    boolean atHand(JobSummary line) {
        Going going = jobs.get(line.job());
        return going != null && going.at(line.head());
    }

    /** Names of all jobs, in order of their first entry. */
    synchronized Set<String> names() {
        catchUp();
        return names;
    }

    /** The line of each job, in order of their first entry. */
    synchronized List<JobSummary> lines() {
        catchUp();
        write(1);
        List<JobSummary> listed = lines;
        if (listed == null) {
            // a post does not ask for them: they are listed when somebody looks
            listed = List.copyOf(known.values());
            lines = listed;
        }
        return listed;
    }

    /** Drawer and gauges as they are now; the same value while nothing of it changes. */
    synchronized Shop shop() {
        catchUp();
        Head head = log.head(JobLog.SHOP);
        Stock before = stock;
        if (before != null && before.head().equals(head) && before.taken().equals(taken)) {
            return before.shop();
        }
        List<LogEntry> stream = new ArrayList<>(before == null ? List.of() : before.stream());
        stream.addAll(log.read(JobLog.SHOP, before == null ? Head.EMPTY : before.head()));
        Shop shop = Shop.of(stream, taken);
        // what came while it was read belongs to it
        head = Head.of(stream);
        stock = new Stock(head, stream, taken, shop, head.count() + "-" + Integer.toHexString(taken.hashCode()));
        return shop;
    }

    /** What the first page says of the shop: its gauges, and the pieces that lie in the drawer. */
    synchronized ShopSummary shopSummary() {
        return summary().without(taken.keySet());
    }

    /** What the shop is and how it works, by name. */
    synchronized Map<String, String> facts() {
        return summary().facts();
    }

    private ShopSummary summary() {
        catchUp();
        ShopSummary there = shopSummary;
        if (there == null || !there.head().equals(log.head(JobLog.SHOP))) {
            Shop shop = shop();
            there = ShopSummary.of(Objects.requireNonNull(stock).head(), shop);
            shopSummary = there;
            unwritten.put(JobLog.SHOP, new Summaries.Summary(JobLog.SHOP, there.head(), there.text()));
            write(1);
        }
        return there;
    }

    /** A word that changes whenever the shop does, as {@link #shop} gives it. */
    synchronized String shopMark() {
        shop();
        return Objects.requireNonNull(stock).mark();
    }

    /** Takes in what came since the lines were last worked out, from whichever bench. */
    private void catchUp() {
        Head now = log.head();
        if (now.equals(seen)) {
            return;
        }
        try {
            take(now);
        } catch (StoreFailure broken) {
            // the pages say what is wrong with the log; they do not wait for it
            anew = null;
            throw broken;
        }
    }

    private void take(Head now) {
        boolean otherPieces = false;
        Set<String> changed = changed(now);
        int read = 0;
        for (String name : changed) {
            if (anew != null) {
                if (stopped) {
                    return;
                }
                anew = new ReadingAnew(read++, changed.size());
            }
            Going going = jobs.get(name);
            // a job that nobody works on is folded and forgotten
            Optional<Job> job = (going == null ? new Going(name) : going).job();
            if (job.isPresent()) {
                JobSummary line = JobSummary.of(job.get());
                JobSummary before = known.put(name, line);
                otherPieces |= before == null
                        || !before.pieces().equals(line.pieces())
                        || !before.number().equals(line.number());
                unwritten.put(name, new Summaries.Summary(name, job.get().head(), line.text()));
                // with the head that was read to before: a program that is stopped on the way goes on from here
                write(LINES_AT_RISK);
            }
        }
        seen = now;
        // how far the whole shop was read is kept also where no line of it is left to be written
        int atLeast = anew == null ? LINES_AT_RISK : 0;
        anew = null;
        listed(otherPieces);
        write(atLeast);
    }

    /** Folds of jobs that went on since the lines were last worked out, up to {@code now} at least. */
    private Set<String> changed(Head now) {
        Set<String> changed = new LinkedHashSet<>();
        if (seen.equals(Head.EMPTY) || now.count() - seen.count() > MANY) {
            for (String name : log.streams()) {
                JobSummary before = known.get(name);
                if (before == null || !before.head().equals(log.head(name))) {
                    changed.add(name);
                }
            }
        } else {
            Head from = seen;
            while (from.count() < now.count()) {
                List<LogEntry> came = log.since(from, AT_ONCE);
                came.forEach(kept -> changed.add(kept.draft().stream()));
                LogEntry last = came.get(came.size() - 1);
                from = last.head();
            }
        }
        changed.remove(JobLog.SHOP);
        return changed;
    }

    private void listed(boolean otherPieces) {
        lines = null;
        if (names.size() != known.size()) {
            names = Collections.unmodifiableSet(new LinkedHashSet<>(known.keySet()));
        }
        if (otherPieces) {
            Map<String, String> all = new LinkedHashMap<>();
            known.values().forEach(line -> line.pieces().forEach(piece -> all.put(piece, line.number())));
            taken = all;
        }
    }

    private void write(int atLeast) {
        if (unwritten.size() >= atLeast) {
            List<Summaries.Summary> changed = new ArrayList<>(unwritten.values());
            summaries.ifPresent(kept -> kept.keep(seen, changed));
            unwritten.clear();
        }
    }
}
