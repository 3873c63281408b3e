package shimwright.trial;

import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.plan.BuildState;
import shimwright.rebuild.plan.Plan;
import shimwright.rebuild.plan.Planner;
import shimwright.rebuild.plan.search.SearchBudget;
import shimwright.rebuild.plan.search.SearchObserver;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.Unit;

/**
 * How long the plan of the demo unit takes from its first step, as a page asks for it and to the proof. Run like
 * {@link ShimPackBenchmark}.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class PlanBenchmark {
    /** Variant of the demo unit. */
    @Param({"A", "B"})
    public String variant = "A";

    private Unit unit = unit("A");

    /** Reads the unit. */
    @Setup
    public void read() {
        unit = unit(variant);
    }

    private static Unit unit(String variant) {
        return UnitFiles.read("example", UnitFiles.example())
                .outcome()
                .orElseThrow()
                .resolve(variant);
    }

    /** As a page asks for it. */
    @Benchmark
    public Outcome<Plan> page() {
        return lay(SearchBudget.page());
    }

    /** To the proof. */
    @Benchmark
    public Outcome<Plan> proof() {
        return lay(SearchBudget.proof());
    }

    private Outcome<Plan> lay(SearchBudget budget) {
        return Planner.lay(unit, Map.of(), BuildState.inOrder(List.of()), budget, SearchObserver.nobody(), List.of());
    }
}
