// size: the one door to jobs and shop: what is asked of them and what is done to them
package shimwright.bench.desk;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.act.Act;
import shimwright.rebuild.act.ActContext;
import shimwright.rebuild.act.ActResult;
import shimwright.rebuild.act.Acts;
import shimwright.rebuild.act.LaysFile;
import shimwright.rebuild.act.ShopActs;
import shimwright.rebuild.job.AppendResult;
import shimwright.rebuild.job.Draft;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Fold;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.Heads;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.JobLog;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.PictureStore;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.job.Summaries;
import shimwright.rebuild.plan.search.SearchBudget;
import shimwright.rebuild.workbench.PinnedUnit;
import shimwright.rebuild.workbench.ShopFloor;
import shimwright.rebuild.workbench.Workbench;

/**
 * Looks at jobs as the log has them, and keeps acts. An act is decided on an immutable look at the bench, outside the writer's
 * lock, and kept only while the log is still as it was looked at; otherwise it is decided anew.
 */
public final class Desk {
    private static final Pattern JOB = Pattern.compile("/job/([^/]+)");
    private static final int TRIES = 50;

    /** Entries of all jobs together whose benches are held in memory. */
    private static final long ENTRIES = 35_000;

    private final JobLog log;
    private final PictureStore pictures;
    private final UnitShelf shelf;
    private final Clock clock;
    private final FoldCache streams;
    private final EarlierJobs earlier;
    private final PlanCache plans;
    private final UnitVersions versions;
    private final Recent<Workbench> benches =
            new Recent<>(ENTRIES, bench -> bench.job().entries().size());

    /** A desk that keeps no summaries. */
    public Desk(JobLog log, PictureStore pictures, UnitShelf shelf, Clock clock) {
        this(log, pictures, shelf, clock, Optional.empty());
    }

    /**
     * A desk on a log.
     *
     * @param summaries where the lines of jobs are kept for the next start; empty where each start works them out
     */
    public Desk(JobLog log, PictureStore pictures, UnitShelf shelf, Clock clock, Optional<Summaries> summaries) {
        this.log = log;
        this.pictures = pictures;
        this.shelf = shelf;
        this.clock = clock;
        this.streams = new FoldCache(log, summaries);
        this.earlier = new EarlierJobs(streams);
        this.versions = new UnitVersions(this, log, shelf, streams);
        this.plans = new PlanCache(clock, SearchBudget.page(), SearchBudget.proof(), PlanCache.behind());
    }

    /**
     * Who does something, and under which id.
     *
     * @param waited how long it lay on the screen on which it was typed before it could be sent; zero where it came at once
     */
    public record Signed(String id, String by, UnitSystem units, Duration waited) {
        /** Something that came at once. */
        public Signed(String id, String by, UnitSystem units) {
            this(id, by, units, Duration.ZERO);
        }
    }

    /**
     * What was kept.
     *
     * @param stream of its entries
     * @param entries in order
     * @param said a short sentence; empty for a post that was kept before
     */
    public record Done(String stream, List<LogEntry> entries, String said) {}

    /** The unit files that the shop knows. */
    public UnitShelf shelf() {
        return shelf;
    }

    /** The unit files of the shop as they were and are. */
    public UnitVersions versions() {
        return versions;
    }

    /** The plans of the jobs, laid when asked for. */
    public PlanCache plans() {
        return plans;
    }

    /** Where pictures are kept. */
    public PictureStore pictures() {
        return pictures;
    }

    /** The present moment. */
    public Instant now() {
        return clock.instant();
    }

    /** How far a large shop is read that no kept lines help with; empty where pages need not wait for it. */
    public Optional<ReadingAnew> readingAnew() {
        return streams.readingAnew();
    }

    /** No more is read for the lines of jobs, since the shop is closed. */
    public void stopReading() {
        streams.stop();
    }

    /** The line of each job, the newest first. */
    public List<JobSummary> lines() {
        List<JobSummary> lines = new ArrayList<>(streams.lines());
        Collections.reverse(lines);
        return lines;
    }

    /** The jobs of a unit type, the newest first, at most so many. */
    public List<Job> jobs(String unitType, int most) {
        return EarlierJobs.newest(lines(), unitType, most).stream()
                .flatMap(line -> streams.job(line.job()).stream())
                .toList();
    }

    /** The same, without those that are still being read behind the page. */
    public SoFar<Job> jobsSoFar(String unitType, int most) {
        return earlier.jobs(lines(), unitType, most);
    }

    /**
     * A word that changes whenever what is shown under an address may have: a page that holds another one is out of date.
     *
     * @param path of a page; one of a job changes with that job and the drawer, any other with the whole log
     */
    public String mark(String path) {
        Matcher job = JOB.matcher(path);
        if (job.lookingAt()) {
            Head head = log.head(job.group(1));
            return head.count() + "-" + head.hash().substring(0, 12) + "-" + streams.shopMark();
        }
        Head head = log.head();
        return head.count() + "-" + head.hash().substring(0, 12);
    }

    /** The shop as its log has it now. */
    public Shop shop() {
        return streams.shop();
    }

    /** What the first page says of the shop, without reading all of it. */
    public ShopSummary shopSummary() {
        return streams.shopSummary();
    }

    /** What the shop is and how it works, by name, without reading all of it. */
    public Map<String, String> facts() {
        return streams.facts();
    }

    /** The shop outside of any job, with the unit files as another bench of it left them. */
    public ShopFloor floor() {
        versions.makeUp();
        return new ShopFloor(shop(), shelf.units(), streams.names());
    }

    /** The unit file that a job stands on; one older than that stands on the shelf's file of its unit type. */
    Optional<PinnedUnit> file(Job job) {
        Optional<PinnedUnit> file = job.unitFile().isEmpty()
                ? Optional.ofNullable(shelf.units().get(job.opened().unitType()))
                : shelf.pinned(job.unitFile());
        return file.filter(unit -> unit.unit(job.variant()).isPresent());
    }

    /** The job with everything around it; empty where there is none or its unit file is not here. */
    public Optional<JobOnBench> bench(String job) {
        return workbench(job)
                .map(bench -> new JobOnBench(
                        bench,
                        () -> plans.of(bench),
                        () -> earlier.of(
                                lines(),
                                bench.job().opened().unitType(),
                                bench.job().id())));
    }

    /** What the jobs of a unit type that were handed back teach. */
    public Lessons lessons(String unitType) {
        return earlier.of(lines(), unitType, "");
    }

    private Optional<Workbench> workbench(String id) {
        Optional<Job> found = streams.job(id);
        if (found.isEmpty()) {
            return Optional.empty();
        }
        Job job = found.get();
        return file(job).map(file -> {
            Shop shop = shop();
            Instant now = clock.instant();
            Workbench before = benches.get(id);
            if (before != null
                    && before.job().head().equals(job.head())
                    && before.shop().equals(shop)
                    && before.file().hash().equals(file.hash())) {
                return before.at(now);
            }
            Workbench anew = new Workbench(job, file, shop, now, clock.getZone());
            Workbench bench = before == null ? anew : anew.following(before);
            benches.put(id, bench);
            return bench;
        });
    }

    /**
     * Does something on a job: its entries are kept, all or none.
     *
     * @param job the job's id
     * @return refused with every reason; nothing is kept then
     */
    public Outcome<Done> act(String job, Act.OfJob act, Signed signed) {
        Optional<LogEntry> known = log.find(signed.id());
        if (known.isPresent()) {
            return repeated(job, act, signed, known.get());
        }
        for (int tries = 0; tries < TRIES; tries++) {
            Head whole = log.head();
            Optional<Workbench> bench = workbench(job);
            if (bench.isEmpty()) {
                return Outcome.refused(Refusal.at(
                        "job",
                        "there is no such job, or its unit file is not here",
                        "Look in the shop for its number"));
            }
            Instant at = SentLater.at(signed, clock.instant(), log);
            ActContext around = new ActContext(floor(), signed.units(), at);
            Heads heads = act.usesDrawer()
                    ? Heads.ofLog(whole)
                    : Heads.of(job, bench.get().job().head());
            Outcome<Optional<Done>> kept =
                    Acts.decide(bench.get().at(at), act, around).flatMap(decided -> keep(decided, signed, at, heads));
            if (!kept.isOk() || kept.orElseThrow().isPresent()) {
                return kept.map(Optional::orElseThrow);
            }
        }
        return busy();
    }

    /**
     * What is wrong with an act of which some inputs could not be read: those, and what the act refuses of the others.
     *
     * @param unread the inputs that could not be read; nothing that is said of them again
     */
    public List<Refusal> amiss(String job, Act.OfJob act, List<Refusal> unread, UnitSystem units) {
        List<Refusal> all = new ArrayList<>(unread);
        if (act.saysAllAtOnce()) {
            workbench(job)
                    .map(bench -> Acts.decide(bench, act, new ActContext(floor(), units, bench.now()))
                            .refusals())
                    .orElse(List.of())
                    .stream()
                    .filter(more -> !more.key().isEmpty()
                            && unread.stream().noneMatch(one -> one.key().equals(more.key())))
                    .forEach(all::add);
        }
        return List.copyOf(all);
    }

    /** Does something in the shop, or opens a job. */
    public Outcome<Done> act(Act.OfShop act, Signed signed) {
        return act instanceof LaysFile lays ? versions.keep(lays, signed, () -> kept(act, signed)) : kept(act, signed);
    }

    private Outcome<Done> kept(Act.OfShop act, Signed signed) {
        Optional<LogEntry> known = log.find(signed.id());
        if (known.isPresent()) {
            return repeated(act, signed, known.get());
        }
        for (int tries = 0; tries < TRIES; tries++) {
            Head whole = log.head();
            Instant now = SentLater.at(signed, clock.instant(), log);
            Outcome<Optional<Done>> kept = Acts.decide(act, new ActContext(floor(), signed.units(), now))
                    .flatMap(decided -> keep(decided, signed, now, Heads.ofLog(whole)));
            if (!kept.isOk() || kept.orElseThrow().isPresent()) {
                return kept.map(Optional::orElseThrow);
            }
        }
        return busy();
    }

    private static Outcome<Done> busy() {
        return Outcome.refused(Refusal.at("shop", "others are keeping entries at this moment", "Press it again"));
    }

    /** Empty where the log went on meanwhile. */
    private Outcome<Optional<Done>> keep(ActResult decided, Signed signed, Instant now, Heads heads) {
        List<Draft> drafts = new ArrayList<>();
        for (Entry entry : decided.entries()) {
            String id = drafts.isEmpty() ? signed.id() : signed.id() + "-" + (drafts.size() + 1);
            drafts.add(new Draft(decided.stream(), id, now, SentLater.signature(signed), entry));
            Outcome<String> file = content(entry);
            if (!file.isOk()) {
                return Outcome.refused(file.refusals());
            }
        }
        return log.append(drafts, heads)
                .map(appended -> appended instanceof AppendResult.Entries kept
                        ? Optional.of(new Done(decided.stream(), kept.entries(), decided.said()))
                        : Optional.empty());
    }

    /** The unit file that an entry names is kept before the entry is; pictures of a unit are there already. */
    private Outcome<String> content(Entry entry) {
        if (entry instanceof Entry.JobOpened opened) {
            return shelf.keep(opened.unitFile());
        }
        if (entry instanceof Entry.UnitPictured pictured) {
            boolean there = pictured.pictures().stream()
                            .allMatch(one -> pictures.find(one.picture()).isPresent())
                    && (pictured.manifest().isEmpty()
                            || shelf.content(pictured.manifest()).isPresent());
            return there
                    ? Outcome.ok("")
                    : Outcome.refused(Refusal.of("pictures", "one of them is not kept", "Send it again"));
        }
        return entry instanceof Entry.UnitMoved moved ? shelf.keep(moved.unitFile()) : Outcome.ok("");
    }

    /** An id that is kept already: the same act on the bench as it lay then is the same post; anything else is refused. */
    private Outcome<Done> repeated(String job, Act.OfJob act, Signed signed, LogEntry known) {
        Optional<Job> now = streams.job(job);
        if (now.isPresent() && known.draft().stream().equals(job)) {
            List<LogEntry> before = now.get().entries().stream()
                    .filter(kept -> kept.number() < known.number())
                    .toList();
            Optional<Job> then = Fold.job(before);
            Outcome<ActResult> decided = then.flatMap(this::file)
                    .map(file -> new Workbench(
                            then.orElseThrow(), file, shop(), known.draft().at(), clock.getZone()))
                    .map(bench -> act.on(
                            bench,
                            new ActContext(
                                    floor(), signed.units(), known.draft().at())))
                    .orElseGet(() -> Outcome.refused(Refusal.at("job", "there is no such job", "")));
            boolean same =
                    decided.isOk() && decided.orElseThrow().entries().get(0).equals(known.body());
            if (same) {
                return Outcome.ok(new Done(job, List.of(known), ""));
            }
        }
        return otherwise();
    }

    private Outcome<Done> repeated(Act.OfShop act, Signed signed, LogEntry known) {
        Entry body = known.body();
        boolean opened = act instanceof ShopActs.OpenJob open
                && body instanceof Entry.JobOpened there
                && there.number().equals(open.number());
        Outcome<ActResult> decided =
                act.on(new ActContext(floor(), signed.units(), known.draft().at()));
        boolean same = decided.isOk() && decided.orElseThrow().entries().get(0).equals(body);
        return opened || same ? Outcome.ok(new Done(known.draft().stream(), List.of(known), "")) : otherwise();
    }

    private static Outcome<Done> otherwise() {
        return Outcome.refused(Refusal.of(
                "entry", "this entry is already kept and says something else", "Load the page again and look"));
    }
}
