package shimwright.bench.desk;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.plan.BuildState;
import shimwright.rebuild.plan.Plan;
import shimwright.rebuild.plan.Planner;
import shimwright.rebuild.plan.search.SearchBudget;
import shimwright.rebuild.plan.search.SearchObserver;
import shimwright.rebuild.rules.BuildStateFromLog;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.workbench.Workbench;

/** The plan of each job as its bench stands: laid at once, kept until something changes, looked at longer when asked. */
public final class PlanCache {
    /** Seconds for which a plan stands while a clock runs. */
    private static final long SLICE = 300;

    /** Plans that are held in memory. */
    private static final long PLANS = 100;

    private final Clock clock;
    private final SearchBudget first;
    private final SearchBudget longer;
    private final Recent<Laid> laid = new Recent<>(PLANS, one -> 1);
    private final Map<String, Looking> looking = new ConcurrentHashMap<>();

    /**
     * Plans of no job yet.
     *
     * @param first spent before a page is shown
     * @param longer spent when asked to look longer
     */
    PlanCache(Clock clock, SearchBudget first, SearchBudget longer) {
        this.clock = clock;
        this.first = first;
        this.longer = longer;
    }

    /** A plan and what it was laid for; the time counts where a clock runs or something is awaited. */
    private record Laid(
            Unit unit,
            Map<String, String> sides,
            BuildState present,
            List<Job.Said<Entry.Sent>> awaited,
            Instant time,
            Outcome<Plan> plan) {
        boolean holds(Unit of, Job job, Instant now) {
            return unit.equals(of)
                    && sides.equals(job.sides())
                    && present.done().equals(List.copyOf(job.stepsDone()))
                    && awaited.equals(job.awaited())
                    && time.equals(now);
        }

        List<String> order() {
            return plan instanceof Outcome.Ok<Plan> ok
                    ? ok.value().ahead().stream().map(Step::id).toList()
                    : List.of();
        }
    }

    /** A longer look that is under way. */
    public static final class Looking {
        private final Instant since;
        private volatile SearchObserver.Progress progress = new SearchObserver.Progress(Double.POSITIVE_INFINITY, 0, 0);
        private volatile boolean stopped;

        private Looking(Instant since) {
            this.since = since;
        }

        /** When it began. */
        public Instant since() {
            return since;
        }

        /** How far it is. */
        public SearchObserver.Progress progress() {
            return progress;
        }
    }

    /**
     * The plan from here; laid again when a step was done or undone or the way changed, and while a clock runs every few
     * minutes, starting from the one before.
     *
     * @param bench as it lies there; its moment is the start
     */
    Outcome<Plan> of(Workbench bench) {
        Job job = bench.job();
        Unit unit = bench.unit();
        Instant now = bench.now();
        boolean ticks = !bench.timers().isEmpty() || !job.awaited().isEmpty();
        Instant time = ticks ? Instant.ofEpochSecond(now.getEpochSecond() / SLICE * SLICE) : Instant.EPOCH;
        Laid before = laid.get(job.id());
        if (before != null && before.holds(unit, job, time)) {
            return before.plan();
        }
        stop(job.id());
        List<String> hint = before == null ? List.of() : before.order();
        BuildState present = BuildStateFromLog.present(job, unit, now, clock.getZone());
        Outcome<Plan> plan = Planner.lay(unit, job.sides(), present, first, SearchObserver.nobody(), hint);
        laid.put(job.id(), new Laid(unit, job.sides(), present, job.awaited(), time, plan));
        return plan;
    }

    /** Looks longer for a better plan of a job, beside everything else; what is found counts if the bench is still the same. */
    public void look(String job) {
        Laid from = laid.get(job);
        Looking one = new Looking(clock.instant());
        if (from == null || !from.plan().isOk() || looking.putIfAbsent(job, one) != null) {
            return;
        }
        SearchObserver watch = new SearchObserver(() -> one.stopped, progress -> one.progress = progress);
        Thread thread = new Thread(
                () -> {
                    try {
                        Outcome<Plan> found =
                                Planner.lay(from.unit(), from.sides(), from.present(), longer, watch, from.order());
                        if (found.isOk()) {
                            found(job, from, found);
                        }
                    } finally {
                        looking.remove(job, one);
                    }
                },
                "looks for a better plan");
        thread.setDaemon(true);
        thread.start();
    }

    /** A plan found while nothing changed takes the place of the one before. */
    private void found(String job, Laid from, Outcome<Plan> plan) {
        synchronized (laid) {
            if (from.equals(laid.get(job))) {
                laid.put(job, new Laid(from.unit(), from.sides(), from.present(), from.awaited(), from.time(), plan));
            }
        }
    }

    /** The look that is under way for a job. */
    public Optional<Looking> looking(String job) {
        return Optional.ofNullable(looking.get(job));
    }

    /** Ends a look with what it has. */
    public void stop(String job) {
        looking(job).ifPresent(one -> one.stopped = true);
    }
}
