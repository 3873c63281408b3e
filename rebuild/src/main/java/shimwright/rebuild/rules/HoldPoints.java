package shimwright.rebuild.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.clearance.BacklashSlope;
import shimwright.rebuild.clearance.Reading.Measured;
import shimwright.rebuild.clearance.Session;
import shimwright.rebuild.clearance.Sessions;
import shimwright.rebuild.clearance.SharedShims;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.unit.model.Quantity;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Phase;
import shimwright.rebuild.unit.model.UnitType.Check;
import shimwright.rebuild.workbench.Workbench;

/** Hold points: what is still to be read and accepted before a step counts as done. */
public final class HoldPoints {
    private HoldPoints() {}

    /** How a check of a hold point stands. */
    public enum Standing {
        /** Nothing read yet. */
        OPEN,
        /** Read and in, or attested, or its clearance is settled or accepted. */
        ACCEPTED,
        /** Read, and not in. */
        FAILED,
        /** Read, and its uncertainty reaches over a limit. */
        NOT_PROVEN,
        /** Read and in, but the limit that it is within is a guess. */
        GUESSED,
        /** Passed by decision. */
        OVERRULED
    }

    /** One check and how it stands. */
    public record CheckStanding(Check check, Standing standing) {}

    /**
     * The checks of a step's hold point; empty where it has none.
     *
     */
    public static List<CheckStanding> of(Workbench bench, Step step) {
        if (step.hold().isBlank()) {
            return List.of();
        }
        List<CheckStanding> standings = new ArrayList<>();
        for (Check check : bench.unit().holdPoint(step.hold()).checks()) {
            standings.add(new CheckStanding(check, standing(bench, step, check)));
        }
        return List.copyOf(standings);
    }

    private static Standing standing(Workbench bench, Step step, Check check) {
        Job job = bench.job();
        if (job.holdsOverruled().containsKey(step.id())) {
            return Standing.OVERRULED;
        }
        Standing answered = switch (check.workedOut()) {
            case SLOPE -> slope(bench.session(check.clearance()).slope());
            case NO_ODD_PLACE -> places(bench.session(check.clearance()).trial().measured());
            case CHOICES -> choices(bench);
            case HOLD_POINTS -> others(bench, step);
            case NONE -> check.clearance().isBlank() ? null : clearance(bench, step, check.clearance());
        };
        if (answered != null) {
            return answered;
        }
        Said<Entry.CheckRead> read = job.check(step.id(), check.id()).orElse(null);
        if (read == null || outlived(bench, step, check, read)) {
            return Standing.OPEN;
        }
        return switch (read.what().verdict()) {
            case IN -> check.guessed() ? Standing.GUESSED : Standing.ACCEPTED;
            case OUT -> Standing.FAILED;
            case NOT_PROVEN -> Standing.NOT_PROVEN;
        };
    }

    /**
     * True where a reading was judged on what is no longer so: the check to whose reading its limits are added was read
     * otherwise since, or the job stands on another file with other limits and the step is still to be done.
     */
    private static boolean outlived(Workbench bench, Step step, Check check, Said<Entry.CheckRead> read) {
        Map<String, String> basis = read.what().basis();
        boolean open = !bench.job().stepsDone().contains(step.id());
        boolean moved = open
                && !basis.isEmpty()
                && (!basis.getOrDefault("lower", "").equals(text(check.lower()))
                        || !basis.getOrDefault("upper", "").equals(text(check.upper()))
                        || !basis.getOrDefault("spread", "").equals(text(check.spread())));
        if (moved || check.relativeTo().isEmpty()) {
            return moved;
        }
        return bench.job().checks().values().stream()
                .filter(other -> check.relativeTo()
                        .equals(other.what().hold() + "/" + other.what().check()))
                .max(Comparator.comparingLong(Said::number))
                .map(other -> other.number() > read.number())
                .orElse(true);
    }

    private static String text(Optional<Quantity> limit) {
        return limit.map(Quantity::toString).orElse("");
    }

    private static Standing slope(@Nullable BacklashSlope slope) {
        return slope == null ? Standing.OPEN : slope.believed() ? Standing.ACCEPTED : Standing.FAILED;
    }

    private static Standing places(@Nullable Measured measured) {
        return measured == null ? Standing.OPEN : measured.outliers().isEmpty() ? Standing.ACCEPTED : Standing.FAILED;
    }

    private static Standing choices(Workbench bench) {
        List<Session.@Nullable Forecast> forecasts = SharedShims.groups(bench.unit()).stream()
                .flatMap(List::stream)
                .map(clearance -> bench.session(clearance).forecast())
                .toList();
        if (forecasts.isEmpty() || forecasts.stream().anyMatch(Objects::isNull)) {
            return Standing.OPEN;
        }
        return forecasts.stream().noneMatch(forecast -> forecast == null || forecast.stale())
                ? Standing.ACCEPTED
                : Standing.FAILED;
    }

    /** How the hold points of all other steps stand, together; those of trial readings answer to the steps after them. */
    private static Standing others(Workbench bench, Step own) {
        return bench.order().steps().values().stream()
                        .filter(step -> !step.equals(own) && step.phase() != Phase.TRIAL)
                        .flatMap(step -> of(bench, step).stream())
                        .map(CheckStanding::standing)
                        .allMatch(standing -> standing == Standing.ACCEPTED || standing == Standing.OVERRULED)
                ? Standing.ACCEPTED
                : Standing.OPEN;
    }

    private static Standing clearance(Workbench bench, Step step, String clearance) {
        Session session = bench.session(clearance);
        if (step.phase() == Phase.TRIAL) {
            return session.trialReadSince(Sessions.before(bench.job(), step)) ? Standing.ACCEPTED : Standing.OPEN;
        }
        Said<Entry.ClearanceAccepted> accepted = session.accepted();
        if (accepted == null) {
            return Standing.OPEN;
        }
        boolean again = step.phase() == Phase.AGAIN && accepted.what().phase() != Phase.AGAIN;
        boolean guess = session.clearance().guessed();
        return again ? Standing.OPEN : guess ? Standing.GUESSED : Standing.ACCEPTED;
    }

    /** Refusals for torques of the step that are a guess, where nobody typed a word about it. */
    static List<Refusal> guessedTorques(Workbench bench, Step step, String note) {
        if (!note.isBlank()) {
            return List.of();
        }
        return step.fasteners().stream()
                .flatMap(id -> bench.unit().type().fasteners().stream()
                        .filter(fastener -> fastener.id().equals(id) && fastener.guessed()))
                .map(fastener -> new Refusal(
                        "note",
                        "torque of " + fastener.where(),
                        "it is a guess",
                        "Look it up and write where it comes from, or type why it will do"))
                .toList();
    }

    /** Refusals for everything of the step's hold point that is not accepted yet. */
    public static List<Refusal> open(Workbench bench, Step step) {
        List<Refusal> refusals = new ArrayList<>();
        for (CheckStanding standing : of(bench, step)) {
            String place = "hold point " + step.hold();
            if (standing.standing() == Standing.OPEN) {
                refusals.add(Refusal.at(
                        place, "not read yet: " + standing.check().what(), "Read it before the step counts as done"));
            } else if (standing.standing() == Standing.FAILED) {
                refusals.add(Refusal.at(
                        place,
                        "read and not within limits: " + standing.check().what(),
                        "Mend it and read again, or pass it with your reason"));
            } else if (standing.standing() == Standing.GUESSED) {
                refusals.add(Refusal.at(
                        place,
                        "read and within, but the limit is a guess: "
                                + standing.check().what(),
                        "Look the limit up and write where it comes from, or pass it with your reason"));
            } else if (standing.standing() == Standing.NOT_PROVEN) {
                refusals.add(Refusal.at(
                        place,
                        "read, but the uncertainty of the gauge reaches over the limit: "
                                + standing.check().what(),
                        "Read it with a finer gauge, or pass it with your reason"));
            }
        }
        return refusals;
    }
}
