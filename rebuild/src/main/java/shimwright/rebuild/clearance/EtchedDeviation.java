package shimwright.rebuild.clearance;

import java.util.List;
import java.util.Optional;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Unit;

/** The deviation that the maker etched on a part moves limits and aim of its clearance. */
public final class EtchedDeviation {
    private EtchedDeviation() {}

    /** The digits as read at the check that the clearance names; empty where it needs none or they are not read yet. */
    static Optional<Integer> digits(Clearance clearance, Job job) {
        if (clearance.etchedStep() == 0) {
            return Optional.empty();
        }
        return job.checks().values().stream()
                .map(Said::what)
                .filter(read -> (read.hold() + "/" + read.check()).equals(clearance.etchedBy()))
                .map(Entry.CheckRead::values)
                .filter(values -> !values.isEmpty())
                .reduce((first, second) -> second)
                .map((List<Double> values) -> (int) Math.round(values.get(0)));
    }

    /** True where the clearance needs them and they are not read yet. */
    static boolean missing(Clearance clearance, Job job) {
        return clearance.etchedStep() != 0 && digits(clearance, job).isEmpty();
    }

    static Refusal refusal(Clearance clearance) {
        return new Refusal(
                "hold",
                "hold point " + clearance.etchedBy(),
                "the deviation etched on the part is not read yet, and it moves the limits",
                "Read it first; without it no limit can be named");
    }

    /** The clearance of a job: limits and aim moved by what is etched, where that is read. */
    public static Clearance of(Clearance clearance, Job job) {
        return moved(clearance, digits(clearance, job));
    }

    /** The unit with the limits of a job, for whoever draws them; not for a session, which moves them itself. */
    public static Unit drawn(Unit unit, Job job) {
        List<Clearance> moved =
                unit.type().clearances().stream().map(c -> of(c, job)).toList();
        return moved.equals(unit.type().clearances()) ? unit : unit.withClearances(moved);
    }

    /** The clearance with limits and aim moved by the etched digits. */
    static Clearance moved(Clearance c, Optional<Integer> digits) {
        return digits.map(d -> c.movedBy(d * c.etchedStep())).orElse(c);
    }
}
