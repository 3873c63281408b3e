package shimwright.bench.web.record;

import java.util.List;
import java.util.stream.IntStream;
import shimwright.bench.desk.JobOnBench;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.plan.Plan;
import shimwright.rebuild.rules.HoldPoints;
import shimwright.rebuild.rules.HoldPoints.CheckStanding;
import shimwright.rebuild.rules.HoldPoints.Standing;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Fastener;
import shimwright.rebuild.unit.model.Step;

/**
 * What is still to be done, in its order, with what is read and tightened at it: for whoever writes on paper first.
 *
 * @param rows a step each
 */
public record BenchSheet(List<Row> rows) {
    private static final int FEWEST = 3;

    public BenchSheet {
        rows = List.copyOf(rows);
    }

    /**
     * A step with what is written down at it.
     *
     * @param checks of its hold point that a person reads or says
     * @param clearances that are read at it; one or none
     */
    public record Row(Step step, List<CheckStanding> checks, List<Clearance> clearances, List<Fastener> fasteners) {
        /** True where everything that is read at it is kept. */
        public boolean read() {
            return checks.stream().allMatch(check -> check.standing() == Standing.ACCEPTED);
        }
    }

    /** Of a job as it stands: by its plan, or in the order of the unit file where no plan can be laid. */
    static BenchSheet of(JobOnBench bench) {
        Outcome<Plan> plan = bench.plan();
        List<Step> ahead = plan instanceof Outcome.Ok<Plan> ok
                ? ok.value().ahead()
                : bench.order().steps().values().stream()
                        .filter(step -> !bench.job().stepsDone().contains(step.id()))
                        .toList();
        return new BenchSheet(ahead.stream().map(step -> row(bench, step)).toList());
    }

    private static Row row(JobOnBench bench, Step step) {
        return new Row(
                step,
                HoldPoints.of(bench.bench(), step).stream()
                        .filter(standing -> standing.check().asked())
                        .toList(),
                bench.unit().type().clearances().stream()
                        .filter(clearance -> clearance.id().equals(step.clearance()))
                        .toList(),
                step.fasteners().stream().map(bench.unit()::fastener).toList());
    }

    /** The rounds that have a line, from 1: as many as count as proof, and never fewer than three. */
    public static List<Integer> rounds(Clearance clearance) {
        return upTo(Math.max(FEWEST, clearance.rounds()));
    }

    /** The indicators or places of a round, from 1. */
    public static List<Integer> places(Clearance clearance) {
        return upTo(Math.max(1, clearance.indicators()));
    }

    private static List<Integer> upTo(int most) {
        return IntStream.rangeClosed(1, most).boxed().toList();
    }
}
