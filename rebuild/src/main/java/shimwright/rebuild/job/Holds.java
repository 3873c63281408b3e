package shimwright.rebuild.job;

import java.util.ArrayList;
import java.util.List;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.unit.Step;
import shimwright.rebuild.unit.Step.Phase;
import shimwright.rebuild.unit.Unit;
import shimwright.rebuild.unit.UnitType.Check;
import shimwright.rebuild.unit.UnitType.HoldPoint;

/** Hold points: what is still to be read and accepted before a step counts as done. */
public final class Holds {
    private Holds() {}

    /** How a check of a hold point stands. */
    public enum Standing {
        /** Nothing read yet. */
        OPEN,
        /** Read and in, or attested, or its clearance is accepted. */
        ACCEPTED,
        /** Read, and not in. */
        FAILED,
        /** Passed by decision. */
        OVERRULED
    }

    /** One check and how it stands. */
    public record CheckStanding(Check check, Standing standing) {}

    /** The checks of a step's hold point; empty where it has none. */
    public static List<CheckStanding> of(Job job, Unit unit, Step step) {
        if (step.hold().isBlank()) {
            return List.of();
        }
        HoldPoint hold = unit.holdPoint(step.hold());
        List<CheckStanding> standings = new ArrayList<>();
        for (Check check : hold.checks()) {
            standings.add(new CheckStanding(check, standing(job, unit, step, hold, check)));
        }
        return List.copyOf(standings);
    }

    private static Standing standing(Job job, Unit unit, Step step, HoldPoint hold, Check check) {
        if (job.holdsOverruled().containsKey(hold.id())) {
            return Standing.OVERRULED;
        }
        if (!check.clearance().isBlank()) {
            return clearance(job, unit, step, check.clearance());
        }
        Said<Entry.CheckRead> read = job.checks().get(hold.id() + "/" + check.id());
        if (read == null) {
            return Standing.OPEN;
        }
        boolean met = read.what().verdict() == Verdict.IN;
        return met ? Standing.ACCEPTED : Standing.FAILED;
    }

    private static Standing clearance(Job job, Unit unit, Step step, String clearance) {
        if (step.phase() == Phase.TRIAL) {
            return job.packOf(clearance).isEmpty() ? Standing.OPEN : Standing.ACCEPTED;
        }
        Said<Entry.ClearanceAccepted> accepted = job.accepted().get(clearance);
        if (accepted == null || Reopened.since(job, unit, clearance, accepted).isPresent()) {
            return Standing.OPEN;
        }
        boolean again = step.phase() == Phase.AGAIN && accepted.what().phase() != Phase.AGAIN;
        return again ? Standing.OPEN : Standing.ACCEPTED;
    }

    /** Refusals for everything of the step's hold point that is not accepted yet. */
    public static List<Refusal> open(Job job, Unit unit, Step step) {
        List<Refusal> refusals = new ArrayList<>();
        for (CheckStanding standing : of(job, unit, step)) {
            String place = "hold point " + step.hold();
            if (standing.standing() == Standing.OPEN) {
                refusals.add(new Refusal(place, "not read yet: " + standing.check().what(), "Read it before the step counts as done"));
            } else if (standing.standing() == Standing.FAILED) {
                refusals.add(new Refusal(
                        place,
                        "read and not within limits: " + standing.check().what(),
                        "Mend it and read again, or pass it with your reason"));
            }
        }
        return refusals;
    }
}
