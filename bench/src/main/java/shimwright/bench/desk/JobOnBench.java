package shimwright.bench.desk;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.clearance.Session;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.learn.Memories;
import shimwright.rebuild.learn.Taught;
import shimwright.rebuild.plan.BuildState;
import shimwright.rebuild.plan.Order;
import shimwright.rebuild.plan.Plan;
import shimwright.rebuild.plan.Timers;
import shimwright.rebuild.rules.BuildStateFromLog;
import shimwright.rebuild.rules.ShopWeights;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.workbench.Workbench;

/** A job on its bench with its plan, which is laid when it is first asked for. */
public final class JobOnBench {
    private final Workbench bench;
    private final Supplier<PlanCache.Shown> planner;
    private final Supplier<Lessons> earlier;
    private volatile @Nullable Lessons lessons;
    private volatile PlanCache.@Nullable Shown shown;

    JobOnBench(Workbench bench, Supplier<PlanCache.Shown> planner, Supplier<Lessons> earlier) {
        this.bench = bench;
        this.planner = planner;
        this.earlier = earlier;
    }

    /** What the newest earlier jobs of the type knew, by the place where it matters. */
    public Memories earlier() {
        return lessons().memories();
    }

    /** All that earlier jobs of the type teach, as far as they are read. */
    public Taught taught() {
        return lessons().taught();
    }

    /** False while earlier jobs of the type are still being read. */
    public boolean earlierRead() {
        return lessons().all();
    }

    private Lessons lessons() {
        Lessons known = lessons;
        if (known == null) {
            known = earlier.get();
            lessons = known;
        }
        return known;
    }

    /** The bench as a value. */
    public Workbench bench() {
        return bench;
    }

    /** The job on the bench. */
    public Job job() {
        return bench.job();
    }

    /** The unit in the variant of the job. */
    public Unit unit() {
        return bench.unit();
    }

    /** The shop as its log has it. */
    public Shop shop() {
        return bench.shop();
    }

    /** The steps of this job with what each waits for. */
    public Order order() {
        return bench.order();
    }

    /** The clocks that run now. */
    public List<Timers.Timer> timers() {
        return bench.timers();
    }

    /** The setting of a clearance as it stands. */
    public Session session(String clearance) {
        return bench.session(clearance);
    }

    /** The plan from here. */
    public Outcome<Plan> plan() {
        return shown().plan();
    }

    /** True while a better plan than this one is looked for of itself. */
    public boolean improving() {
        return shown().improving();
    }

    private PlanCache.Shown shown() {
        PlanCache.Shown known = shown;
        if (known == null) {
            known = planner.get();
            shown = known;
        }
        return known;
    }

    /** What is done, on its way and weighed, as a plan starts from it. */
    public BuildState present() {
        return BuildStateFromLog.present(job(), unit(), bench.now(), bench.zone())
                .weighing(ShopWeights.of(shop().facts()));
    }

    /** The step to do now; empty when all are done or no plan can be laid. */
    public Optional<Step> next() {
        return plan() instanceof Outcome.Ok<Plan> ok ? ok.value().next() : Optional.empty();
    }

    /** True once every step is done. */
    public boolean built() {
        return bench.job().stepsDone().containsAll(order().steps().keySet());
    }
}
