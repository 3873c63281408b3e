package shimwright.bench.desk;

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
import shimwright.rebuild.job.Kept;
import shimwright.rebuild.job.Shop;

/** Jobs and shop as the log has them now; a fold goes on where it stood, and nothing is folded twice. */
final class Streams {
    private final JobLog log;
    private final Map<String, Going> jobs = new ConcurrentHashMap<>();
    private volatile @Nullable Stock stock;

    Streams(JobLog log) {
        this.log = log;
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
                List<Kept> more = log.read(name, head);
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
