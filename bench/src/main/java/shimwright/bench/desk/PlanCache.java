package shimwright.bench.desk;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.plan.BuildState;
import shimwright.rebuild.plan.Plan;
import shimwright.rebuild.plan.Planner;
import shimwright.rebuild.plan.Weights;
import shimwright.rebuild.plan.search.SearchBudget;
import shimwright.rebuild.plan.search.SearchObserver;
import shimwright.rebuild.rules.BuildStateFromLog;
import shimwright.rebuild.rules.ShopWeights;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.workbench.Workbench;

/**
 * The plan of each job as its bench stands. What is left of the order from before is shown at once, a better one is looked for
 * behind and stands once it is found; only where there is no order from before, or none that can go on, is a page's search waited
 * for. A plan is kept until something changes, and looked at longer when asked.
 */
public final class PlanCache {
    /** Seconds for which a plan stands while a clock runs. */
    private static final long SLICE = 300;

    /** Milliseconds that a bench must lie still before a better plan is looked for behind it. */
    private static final long PAUSE = 300;

    /** Plans that are held in memory. */
    private static final long PLANS = 100;

    private final Clock clock;
    private final SearchBudget first;
    private final SearchBudget longer;
    private final Recent<Laid> laid = new Recent<>(PLANS, one -> 1);
    private final Map<String, Looking> looking = new ConcurrentHashMap<>();
    private final Executor behind;

    /**
     * Plans of no job yet.
     *
     * @param first spent behind a page, on every plan
     * @param longer spent when asked to look longer
     * @param behind where plans are made better
     */
    PlanCache(Clock clock, SearchBudget first, SearchBudget longer, Executor behind) {
        this.clock = clock;
        this.first = first;
        this.longer = longer;
        this.behind = behind;
    }

    /**
     * One plan after the other, in a thread of its own that keeps no program from ending; a little later, so that nothing is
     * looked for where the next act follows at once.
     */
    static Executor behind() {
        Executor one = Executors.newSingleThreadExecutor(work -> {
            Thread thread = new Thread(work, "makes plans better");
            thread.setDaemon(true);
            return thread;
        });
        return CompletableFuture.delayedExecutor(PAUSE, TimeUnit.MILLISECONDS, one);
    }

    /** A plan, what it was laid for, and whether a better one is still looked for; the time counts where a clock runs or something is awaited. */
    private record Laid(
            Unit unit,
            Map<String, String> sides,
            BuildState present,
            List<Job.Said<Entry.Sent>> awaited,
            Set<String> heldUp,
            Instant time,
            Outcome<Plan> plan,
            boolean settled) {
        boolean holds(Workbench bench, Instant now, Weights weights) {
            Job job = bench.job();
            return unit.equals(bench.unit())
                    && heldUp.equals(bench.heldUp().keySet())
                    && sides.equals(job.sides())
                    && present.done().equals(List.copyOf(job.stepsDone()))
                    && awaited.equals(job.awaited())
                    && present.weights().equals(weights)
                    && time.equals(now);
        }

        boolean sameBench(Laid other) {
            return unit.equals(other.unit)
                    && sides.equals(other.sides)
                    && present.equals(other.present)
                    && awaited.equals(other.awaited)
                    && heldUp.equals(other.heldUp)
                    && time.equals(other.time);
        }

        Laid better(Outcome<Plan> found) {
            return new Laid(unit, sides, present, awaited, heldUp, time, found, true);
        }

        List<String> order() {
            return plan instanceof Outcome.Ok<Plan> ok
                    ? ok.value().ahead().stream().map(Step::id).toList()
                    : List.of();
        }
    }

    /**
     * What is to be shown.
     *
     * @param plan as it stands
     * @param improving true where a better one is looked for of itself
     */
    public record Shown(Outcome<Plan> plan, boolean improving) {}

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
     * The plan from here; another one when a step was done or undone or the way changed, and while a clock runs every few
     * minutes, starting from the one before.
     *
     * @param bench as it lies there; its moment is the start
     */
    Shown of(Workbench bench) {
        Job job = bench.job();
        Unit unit = bench.unit();
        Instant now = bench.now();
        boolean ticks = !bench.timers().isEmpty() || !job.awaited().isEmpty();
        Instant time = ticks ? Instant.ofEpochSecond(now.getEpochSecond() / SLICE * SLICE) : Instant.EPOCH;
        Weights weights = ShopWeights.of(bench.shop().facts());
        Laid before = laid.get(job.id());
        if (before != null && before.holds(bench, time, weights)) {
            return new Shown(before.plan(), !before.settled());
        }
        stop(job.id());
        List<String> hint = before == null ? List.of() : before.order();
        BuildState present =
                BuildStateFromLog.present(job, unit, now, clock.getZone()).weighing(weights);
        Optional<Plan> onward = hint.isEmpty() ? Optional.empty() : Planner.onward(unit, job.sides(), present, hint);
        Outcome<Plan> plan = onward.map(Outcome::ok)
                .orElseGet(() -> Planner.lay(unit, job.sides(), present, first, SearchObserver.nobody(), hint));
        Laid from = new Laid(
                unit,
                job.sides(),
                present,
                job.awaited(),
                Set.copyOf(bench.heldUp().keySet()),
                time,
                plan,
                onward.isEmpty());
        laid.put(job.id(), from);
        if (onward.isPresent()) {
            behind.execute(() -> improve(job.id(), from));
        }
        return new Shown(plan, onward.isPresent());
    }

    @SuppressWarnings("ReferenceEquality") // the very plan that was shown, not one that looks like it
    private void improve(String job, Laid from) {
        if (laid.get(job) == from) {
            SearchObserver watch = new SearchObserver(() -> laid.get(job) != from, progress -> {});
            Outcome<Plan> found = Planner.lay(from.unit(), from.sides(), from.present(), first, watch, from.order());
            laid.change(job, now -> now == from ? from.better(found) : now);
        }
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
                            laid.change(job, now -> now.sameBench(from) ? now.better(found) : now);
                        }
                    } finally {
                        looking.remove(job, one);
                    }
                },
                "looks for a better plan");
        thread.setDaemon(true);
        thread.start();
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
