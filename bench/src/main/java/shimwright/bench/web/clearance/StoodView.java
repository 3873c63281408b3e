package shimwright.bench.web.clearance;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import shimwright.bench.desk.JobOnBench;
import shimwright.rebuild.clearance.Session;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.Mistakes;
import shimwright.rebuild.rules.StoodSteps;
import shimwright.rebuild.unit.model.Step;

/**
 * What a reading waits for and can be said to be done already, as its page shows it.
 *
 * @param before what it waits for
 * @param said the entry that said such last and still counts; empty where none does
 */
public record StoodView(StoodSteps before, Optional<LogEntry> said) {
    static StoodView of(JobOnBench bench, Session session) {
        return new StoodView(
                StoodSteps.before(
                        bench.bench(),
                        session.clearance().id(),
                        session.current().phase()),
                said(bench.job()));
    }

    private static Optional<LogEntry> said(Job job) {
        Set<String> mistakes = Mistakes.of(job);
        return job.entries().stream()
                .filter(kept -> kept.body() instanceof Entry.StepsStood stood
                        && !mistakes.contains(kept.draft().id())
                        && !Collections.disjoint(ids(stood), job.stepsDone()))
                .reduce((earlier, later) -> later);
    }

    private static List<String> ids(Entry.StepsStood stood) {
        return stood.steps().stream().map(Entry.StepDone::step).toList();
    }

    /** How many steps were said to be done, in words. */
    public String many() {
        int steps = said.map(kept -> ((Entry.StepsStood) kept.body()).steps().size())
                .orElse(0);
        return steps + (steps == 1 ? " step" : " steps");
    }

    /** What can be said, on the button. */
    public String button() {
        int steps = before.steps().size();
        return steps == 1 ? "It is done already" : "All " + steps + " are done already";
    }

    /** How many steps come before the reading, in words. */
    public String waiting() {
        return before.waiting() == 1 ? "1 step comes" : before.waiting() + " steps come";
    }

    /** The ids of what can be said, as the form sends them. */
    public String ids() {
        return before.steps().stream().map(Step::id).collect(Collectors.joining(";"));
    }
}
