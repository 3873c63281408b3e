package shimwright.bench.web.shop;

import shimwright.bench.desk.JobOnBench;
import shimwright.bench.desk.JobSummary;

/**
 * A job as it lies on the bench.
 *
 * @param where what is next, in words
 * @param done steps done
 * @param total steps in all; 0 where that is not known
 */
public record JobCard(
        String job, String number, String owner, boolean closed, String unitName, String where, int done, int total) {
    private static final String HANDED_BACK = "Handed back";

    /**
     * What its entries alone say: neither unit file nor plan is asked for.
     *
     * @param model maker and model of the unit; empty where that is not at hand yet, and comes with what is next
     */
    static JobCard of(JobSummary line, String model) {
        return of(line, model, line.closed() ? HANDED_BACK : "Open it to see what is next");
    }

    /** A job whose unit file is not here. */
    static JobCard offShelf(JobSummary line) {
        return of(line, line.unitType() + " " + line.variant(), "its unit type is not on this shelf");
    }

    private static JobCard of(JobSummary line, String unitName, String where) {
        return new JobCard(line.job(), line.number(), line.owner(), line.closed(), unitName, where, line.done(), 0);
    }

    /** The whole of it, with the step that its plan names. */
    static JobCard of(JobOnBench bench) {
        int done = (int) bench.order().steps().keySet().stream()
                .filter(bench.job().stepsDone()::contains)
                .count();
        return new JobCard(
                bench.job().id(),
                bench.job().opened().number(),
                bench.job().opened().owner(),
                bench.job().closed(),
                bench.unit().type().maker() + " " + bench.unit().variantName(),
                where(bench, done),
                done,
                bench.order().steps().size());
    }

    private static String where(JobOnBench bench, int done) {
        if (bench.job().closed()) {
            return HANDED_BACK;
        }
        if (bench.built()) {
            return "Built; hand it back";
        }
        return done == 0
                ? "Strip and inspect"
                : bench.next().map(step -> "Next: " + step.todo()).orElse("The plan has a fault");
    }

    /** Where it goes on. */
    public String tab() {
        if (closed) {
            return "record";
        }
        return done == 0 ? "strip" : "build";
    }
}
