package shimwright.rebuild.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Fold;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Kept;
import shimwright.rebuild.job.Reopened;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.plan.Order;
import shimwright.rebuild.plan.Planner;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Phase;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType.Choice;

/** What forbids an entry. Asked with the stream as it stands, just before the entry is kept. */
public final class Rules {
    private Rules() {}

    /**
     * Every reason why the entry cannot be kept now.
     *
     * @param stream the job's entries
     * @param file the job's unit as its file has it
     * @param shop drawer and gauges
     * @param entry what is to be kept
     */
    public static List<Refusal> check(List<Kept> stream, Unit file, Shop shop, Entry.OfJob entry) {
        Optional<Job> found = Fold.job(stream);
        if (entry instanceof Entry.JobOpened) {
            return found.isEmpty()
                    ? List.of()
                    : one("job", "this job is already open", "Open a new job for another unit");
        }
        if (found.isEmpty()) {
            return one("job", "there is no such job", "Open it first, or look in the shop for its number");
        }
        Job job = found.get();
        if (job.closed()
                && !(entry instanceof Entry.FollowedUp)
                && !(entry instanceof Entry.NoteMade)
                && !(entry instanceof Entry.PictureAdded)) {
            return one(
                    "job " + job.opened().number(),
                    "this unit was handed back and its record stands",
                    "Add a note or a follow-up, or open a new job");
        }
        Unit unit = job.unit(file);
        Optional<List<Refusal>> ofStep = StepRules.check(job, unit, shop, entry);
        if (ofStep.isPresent()) {
            return ofStep.get();
        }
        if (entry instanceof Entry.PackIn e) {
            return known(unit, e.clearance());
        }
        if (entry instanceof Entry.RoundRead e) {
            return early(job, unit, e.clearance(), e.phase());
        }
        if (entry instanceof Entry.ClearanceAccepted e) {
            return early(job, unit, e.clearance(), e.phase());
        }
        if (entry instanceof Entry.RoundStruck e) {
            return struck(job, e);
        }
        if (entry instanceof Entry.HoldOverruled e && e.reason().isBlank()) {
            return one("reason", "nothing typed", "Say why it may be passed; it stands on the record");
        }
        if (entry instanceof Entry.ChoiceTaken e) {
            return choice(job, unit, e);
        }
        if (entry instanceof Entry.Sent e) {
            return OrderRules.sent(job, unit, e);
        }
        if (entry instanceof Entry.CameBack e) {
            return OrderRules.cameBack(job, e);
        }
        if (entry instanceof Entry.HandedBack) {
            return handBack(job, unit);
        }
        return List.of();
    }

    static List<Refusal> one(String place, String fact, String hint) {
        return List.of(new Refusal(place, fact, hint));
    }

    private static List<Refusal> known(Unit unit, String clearance) {
        return unit.type().clearances().stream().anyMatch(c -> c.id().equals(clearance))
                ? List.of()
                : one("clearance " + clearance, "this unit has no such clearance", "Go back to the clearances");
    }

    /** A reading taken before the steps that lead to it would tell of another state of the unit. */
    private static List<Refusal> early(Job job, Unit unit, String clearance, Phase phase) {
        Order order = Order.of(unit, job.sides());
        List<Step> reading = unit.stepsReading(clearance, phase).stream()
                .filter(step -> order.steps().containsKey(step.id()))
                .toList();
        if (reading.isEmpty() || reading.stream().anyMatch(step -> order.free(step.id(), job.stepsDone()))) {
            return known(unit, clearance);
        }
        String names = StepRules.named(
                order.waitsFor(reading.get(0).id(), job.stepsDone()).keySet());
        return one(
                "clearance " + clearance,
                "its reading waits for " + names,
                "Do these first, or mark them done if they are");
    }

    private static List<Refusal> struck(Job job, Entry.RoundStruck e) {
        boolean there = job.rounds().values().stream()
                .flatMap(List::stream)
                .anyMatch(round -> round.id().equals(e.entry()));
        if (!there) {
            return one("reading", "there is no such reading that counts", "It may have been struck already");
        }
        return e.reason().isBlank()
                ? one("reason", "nothing typed", "Say why the reading does not count; it stays in the record")
                : List.of();
    }

    private static List<Refusal> choice(Job job, Unit unit, Entry.ChoiceTaken e) {
        String place = "choice " + e.choice();
        Optional<Choice> choice = unit.type().choices().stream()
                .filter(c -> c.id().equals(e.choice()))
                .findFirst();
        if (choice.isEmpty()) {
            return one(place, "this unit has no such choice", "Go back to the plan");
        }
        Set<String> sides = choice.get().sides().keySet();
        if (!sides.contains(e.side())) {
            return one(place, "it has no side " + e.side(), "Take " + String.join(" or ", sides));
        }
        Map<String, String> taken = new LinkedHashMap<>(job.sides());
        taken.put(e.choice(), e.side());
        return Planner.lay(unit, taken, job.stepsDone()).refusals();
    }

    private static List<Refusal> handBack(Job job, Unit unit) {
        Order order = Order.of(unit, job.sides());
        List<Refusal> refusals = new ArrayList<>();
        List<String> left = order.steps().keySet().stream()
                .filter(id -> !job.stepsDone().contains(id))
                .toList();
        if (!left.isEmpty()) {
            refusals.add(new Refusal(
                    "hand-back",
                    left.size() + (left.size() == 1 ? " step is" : " steps are") + " not done: "
                            + String.join(", ", left),
                    "Finish the build first"));
        }
        job.accepted()
                .forEach((id, accepted) -> Reopened.since(job, unit, id, accepted)
                        .ifPresent(why ->
                                refusals.add(new Refusal("clearance " + id, why, "Read it again and accept it"))));
        return refusals;
    }
}
