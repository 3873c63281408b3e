package shimwright.bench.web;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import shimwright.bench.text.Digest;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.clearance.Session;
import shimwright.rebuild.clearance.Sessions;
import shimwright.rebuild.job.Draft;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Fold;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.JobLog;
import shimwright.rebuild.job.Kept;
import shimwright.rebuild.job.PictureStore;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.plan.Order;
import shimwright.rebuild.plan.Plan;
import shimwright.rebuild.plan.Timers;
import shimwright.rebuild.plan.search.Budget;
import shimwright.rebuild.rules.Rules;
import shimwright.rebuild.unit.model.Unit;

/** What the pages do: look at folds, keep entries. */
public final class Desk {
    private final JobLog log;
    private final PictureStore pictures;
    private final Shelf shelf;
    private final Clock clock;
    private final Map<String, Known> known = new ConcurrentHashMap<>();

    private final Plans plans;

    private volatile @Nullable Stock stock;

    /** The shop's entries and how far they went when they were read. */
    private record Stock(Head head, List<Kept> entries) {}

    /** A fold and how far its stream went when it was made. */
    private record Known(Head head, Job job) {}

    public Desk(JobLog log, PictureStore pictures, Shelf shelf, Clock clock) {
        this.log = log;
        this.pictures = pictures;
        this.shelf = shelf;
        this.clock = clock;
        this.plans = new Plans(clock, Budget.page(), Budget.proof());
    }

    /** A job with its unit, its plan and the clocks that run. */
    public record OnBench(Job job, Unit unit, Order order, Outcome<Plan> plan, List<Timers.Timer> timers) {
        /** The step to do now; empty when all are done or no plan can be laid. */
        public Optional<shimwright.rebuild.unit.model.Step> next() {
            return plan instanceof Outcome.Ok<Plan> ok ? ok.value().next() : Optional.empty();
        }

        /** True once every step is done. */
        public boolean built() {
            return plan instanceof Outcome.Ok<Plan> ok && ok.value().ahead().isEmpty();
        }
    }

    public Shelf shelf() {
        return shelf;
    }

    Plans plans() {
        return plans;
    }

    public PictureStore pictures() {
        return pictures;
    }

    /** How far the whole log goes. */
    Head head() {
        return log.head();
    }

    public Instant now() {
        return clock.instant();
    }

    /** The job of a stream; folded again only when its stream has grown. */
    private Optional<Job> job(String stream) {
        if (stream.equals(JobLog.SHOP)) {
            return Optional.empty();
        }
        Head head = log.head(stream);
        Known before = known.get(stream);
        if (before != null && before.head().equals(head)) {
            return Optional.of(before.job());
        }
        Optional<Job> job = Fold.job(log.read(stream));
        job.ifPresent(j -> known.put(stream, new Known(j.head(), j)));
        return job;
    }

    /** All jobs, the newest first. */
    public List<Job> jobs() {
        List<Job> jobs = new ArrayList<>();
        for (String stream : log.streams()) {
            if (!stream.equals(JobLog.SHOP)) {
                job(stream).ifPresent(job -> jobs.add(0, job));
            }
        }
        return jobs;
    }

    public Shop shop() {
        List<Job> jobs = jobs();
        Head head = log.head(JobLog.SHOP);
        Stock before = stock;
        if (before == null || !before.head().equals(head)) {
            before = new Stock(head, log.read(JobLog.SHOP));
            stock = before;
        }
        return Shop.of(before.entries(), jobs);
    }

    /** The job with everything around it; empty where there is none or its unit type is not on the shelf. */
    public Optional<OnBench> bench(String jobId) {
        return job(jobId)
                .flatMap(job -> shelf.unit(job.opened().unitType(), job.opened().variant())
                        .map(file -> around(job, job.unit(file))));
    }

    private OnBench around(Job job, Unit unit) {
        Order order = Order.of(unit, job.sides());
        // a clock that a step left out of this job would stop is not shown: nothing could ever end it
        List<Timers.Timer> timers = Timers.running(unit, job.doneAt(), clock.instant()).stream()
                .filter(timer -> order.steps().containsKey(timer.closes()))
                .toList();
        boolean ticks = !timers.isEmpty() || !job.awaited().isEmpty();
        return new OnBench(job, unit, order, plans.of(job, unit, ticks), timers);
    }

    /** The session of a clearance as it stands. */
    public Session session(OnBench bench, String clearance) {
        return Sessions.of(bench.unit(), bench.job(), shop(), clearance);
    }

    /**
     * Keeps an entry of a job, unless a rule forbids it.
     *
     * @param unit for a job that is not open yet; any other job knows its own
     */
    public Outcome<Kept> keep(String jobId, @Nullable Unit unit, String entryId, String by, Entry.OfJob entry) {
        if (jobId.equals(JobLog.SHOP)) {
            return Outcome.refused("job", "there is no such job", "Look in the shop for its number");
        }
        return log.append(new Draft(jobId, entryId, clock.instant(), by, entry), stream -> {
            Unit of = stream.isEmpty() ? unit : unitOf(stream);
            return of == null
                    ? List.of(new Refusal("job", "there is no such job", "Look in the shop for its number"))
                    : entry instanceof Entry.JobOpened
                            ? List.<Refusal>of()
                            : Rules.check(
                                    new shimwright.rebuild.workbench.Workbench(
                                            Fold.job(stream).orElseThrow(),
                                            new shimwright.rebuild.workbench.PinnedUnit("", of.type()),
                                            shop(),
                                            clock.instant(),
                                            java.time.ZoneOffset.UTC),
                                    entry);
        });
    }

    private @Nullable Unit unitOf(List<Kept> stream) {
        return Fold.job(stream)
                .flatMap(job -> shelf.unit(job.opened().unitType(), job.opened().variant()))
                .orElse(null);
    }

    /** Keeps an entry of the shop. */
    public Outcome<Kept> keepInShop(String entryId, String by, Entry.OfShop entry) {
        return log.append(
                new Draft(JobLog.SHOP, entryId, clock.instant(), by, entry), stream -> shopRules(stream, entry));
    }

    private static List<Refusal> shopRules(List<Kept> stream, Entry.OfShop entry) {
        if (entry instanceof Entry.ShimAdded added) {
            Set<String> ids = Shop.of(stream, List.of()).pieces().keySet();
            if (ids.contains(added.piece())) {
                return List.of(new Refusal(
                        "piece", "a piece " + added.piece() + " is already in the drawer", "Give it another tag"));
            }
        }
        return List.of();
    }

    /**
     * A job's id, made from its number: letters and digits of ASCII in lower case, the rest a dash. A number with letters or
     * digits of another alphabet also carries the beginning of its SHA-256, so that two of them differ.
     */
    public String freeJobId(String number) {
        String lower = java.text.Normalizer.normalize(number.strip(), java.text.Normalizer.Form.NFC)
                .toLowerCase(java.util.Locale.ROOT);
        String base = "job-" + lower.replaceAll("[^a-z0-9]+", "-");
        String plain = base.replaceAll("-+$", "");
        boolean lost = lower.codePoints().anyMatch(c -> c > 0x7F && Character.isLetterOrDigit(c));
        boolean empty = plain.equals("job");
        return lost || empty ? plain + "-" + Digest.sha256(lower).substring(0, 8) : plain;
    }
}
