package shimwright.rebuild.workbench;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import shimwright.rebuild.clearance.Session;
import shimwright.rebuild.clearance.Sessions;
import shimwright.rebuild.job.Draft;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Fold;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.plan.Order;
import shimwright.rebuild.plan.Timers;
import shimwright.rebuild.plan.backout.LastCallCost;
import shimwright.rebuild.supply.HeldUp;
import shimwright.rebuild.supply.Need;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/**
 * A job as it lies on the bench at one moment. Sessions are worked out when first asked for and kept with it; nothing of it
 * ever changes.
 */
public final class Workbench {
    private final Job job;
    private final PinnedUnit file;
    private final Unit unit;
    private final Shop shop;
    private final Instant now;
    private final ZoneId zone;
    private final Order order;
    private final Map<String, Session> sessions;
    private final Map<String, LastCallCost> lastCalls;
    private volatile @Nullable List<Timers.Timer> timers;
    private volatile @Nullable Map<String, List<Need>> heldUp;

    /**
     * A job with everything around it.
     *
     * @param file the unit file that the job stands on; must have the job's variant
     * @param shop drawer and gauges
     * @param now the moment, for clocks
     * @param zone in which the shop's days begin
     */
    public Workbench(Job job, PinnedUnit file, Shop shop, Instant now, ZoneId zone) {
        this.job = job;
        this.file = file;
        this.sessions = new ConcurrentHashMap<>();
        this.lastCalls = new ConcurrentHashMap<>();
        this.unit = job.unit(file.unit(job.variant()).orElseThrow());
        this.shop = shop;
        this.now = now;
        this.zone = zone;
        this.order = Order.of(unit, job.sides());
    }

    private Workbench(Workbench same, Map<String, LastCallCost> lastCalls, Instant now) {
        this.job = same.job;
        this.file = same.file;
        this.sessions = same.sessions;
        this.lastCalls = lastCalls;
        this.unit = same.unit;
        this.shop = same.shop;
        this.now = now;
        this.zone = same.zone;
        this.order = same.order;
        this.heldUp = same.heldUp;
    }

    /** The job on the bench, as its log has it. */
    public Job job() {
        return job;
    }

    /** The unit file that the job stands on. */
    public PinnedUnit file() {
        return file;
    }

    /** The unit as this job builds it. */
    public Unit unit() {
        return unit;
    }

    /** The shop as its log has it: gauges, drawer, facts. */
    public Shop shop() {
        return shop;
    }

    /** The moment at which the bench was looked at. */
    public Instant now() {
        return now;
    }

    /** The time zone of the shop, for days and evenings. */
    public ZoneId zone() {
        return zone;
    }

    /** The steps of this job with what each waits for. */
    public Order order() {
        return order;
    }

    /** The clearance of that id; empty where this unit has none. */
    public Optional<Clearance> clearance(String id) {
        return unit.type().clearances().stream().filter(c -> c.id().equals(id)).findFirst();
    }

    /**
     * How the setting of a clearance stands.
     *
     * @param clearance must be one of the unit
     */
    public Session session(String clearance) {
        Session known = sessions.get(clearance);
        if (known == null) {
            known = Sessions.of(unit, job, shop, clearance);
            sessions.put(clearance, known);
        }
        return known;
    }

    /**
     * What a step that is not done yet shuts in, by the usual tariff.
     *
     * @param step must be one of those to be done
     */
    public LastCallCost lastCall(String step) {
        LastCallCost known = lastCalls.get(step);
        if (known == null) {
            known = LastCallCost.by(unit, job.sides(), List.copyOf(job.stepsDone()), step)
                    .orElseThrow();
            lastCalls.put(step, known);
        }
        return known;
    }

    /** The step of that id among those to be done; empty for one that the unit has not, or that is left out. */
    public Optional<Step> step(String id) {
        return Optional.ofNullable(order.steps().get(id));
    }

    /** Waits and windows that run; one that only a step left out of this job would end is not among them. */
    public List<Timers.Timer> timers() {
        List<Timers.Timer> known = timers;
        if (known == null) {
            known = Stream.concat(Timers.running(unit, job.doneAt(), now).stream(), byHand())
                    .filter(timer -> order.steps().containsKey(timer.closes()))
                    .toList();
            timers = known;
        }
        return known;
    }

    /** Those started by hand at steps that are not done; a wait that has ended still says so. */
    private Stream<Timers.Timer> byHand() {
        return job.started().stream()
                .filter(said -> !job.stepsDone().contains(said.what().step()))
                .map(said -> new Timers.Timer(
                        said.what().name(),
                        said.at(),
                        said.at().plusMillis(Math.round(said.what().seconds() * 1000)),
                        said.what().mustEnd(),
                        said.what().step(),
                        said.what().step()));
    }

    /** What must be new for each step, and is neither ordered nor here. */
    public Map<String, List<Need>> heldUp() {
        Map<String, List<Need>> known = heldUp;
        if (known == null) {
            Map<String, List<Need>> byStep = new LinkedHashMap<>(HeldUp.of(unit, job));
            byStep.keySet().retainAll(order.steps().keySet());
            known = Collections.unmodifiableMap(byStep);
            heldUp = known;
        }
        return known;
    }

    /** The same bench at another moment; sessions, order and last calls know no clock and are kept. */
    public Workbench at(Instant moment) {
        return new Workbench(this, lastCalls, moment);
    }

    /** The same bench with what was worked out for an earlier one of the job, as far as nothing has changed that it depends on. */
    public Workbench following(Workbench before) {
        boolean stands = before.unit.equals(unit)
                && before.job.sides().equals(job.sides())
                && List.copyOf(before.job.stepsDone()).equals(List.copyOf(job.stepsDone()));
        return stands ? new Workbench(this, before.lastCalls, now) : this;
    }

    /** The bench as it would lie once an entry were kept, for judging one that goes with it. */
    public Workbench after(Entry.OfJob entry) {
        long number = job.head().count() + 1;
        List<LogEntry> entries = new ArrayList<>(job.entries());
        long last = entries.get(entries.size() - 1).number();
        Draft draft = new Draft(job.id(), "to-be-kept-" + number, now, "", entry);
        entries.add(new LogEntry(
                last + 1, number, draft, job.head().hash(), job.head().hash()));
        return new Workbench(Fold.job(entries).orElseThrow(), file, shop, now, zone);
    }
}
