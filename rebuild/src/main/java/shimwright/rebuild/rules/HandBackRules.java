package shimwright.rebuild.rules;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.Reopened;
import shimwright.rebuild.record.Findings;
import shimwright.rebuild.record.Standings;
import shimwright.rebuild.reuse.RunTogether;
import shimwright.rebuild.rules.HoldPoints.CheckStanding;
import shimwright.rebuild.rules.HoldPoints.Standing;
import shimwright.rebuild.supply.HeldUp;
import shimwright.rebuild.supply.Need;
import shimwright.rebuild.supply.Needs;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Phase;
import shimwright.rebuild.unit.model.UnitType.WorkedOut;
import shimwright.rebuild.workbench.Workbench;

/** What forbids the hand-back, and what may still be kept after it. */
final class HandBackRules {
    private HandBackRules() {}

    /** Whether an entry may be kept although the unit was handed back. */
    static boolean afterwards(Job job, Entry.OfJob entry) {
        if (entry instanceof Entry.EntryStruck struck) {
            return job.entries().stream()
                    .filter(kept -> kept.draft().id().equals(struck.entry()))
                    .map(LogEntry::body)
                    .anyMatch(body ->
                            remark(body) || body instanceof Entry.HandedBack || body instanceof Entry.EntryStruck);
        }
        return remark(entry)
                || (entry instanceof Entry.UnitMoved && job.unitFile().isEmpty());
    }

    static boolean remark(Entry entry) {
        return entry instanceof Entry.FollowedUp
                || entry instanceof Entry.FollowUpPlanned
                || entry instanceof Entry.Returned
                || entry instanceof Entry.ReturnExplained
                || entry instanceof Entry.NoteMade
                || entry instanceof Entry.PictureAdded
                || entry instanceof Entry.PictureMarked
                || entry instanceof Entry.CostSaid
                || entry instanceof Entry.HoursSaid;
    }

    static List<Refusal> followedUp(Workbench bench, Entry.FollowedUp e) {
        if (!bench.job().closed()) {
            return Rules.one("", "job", "this unit is not handed back yet", "Make a note instead");
        }
        return Rules.needed(e.said(), "said", "what was said", "Say what the owner said, or what you saw");
    }

    static List<Refusal> planned(Workbench bench, Entry.FollowUpPlanned e) {
        return notBefore(bench, e.day(), "followUp", "the day to ask the owner");
    }

    static List<Refusal> returned(Workbench bench, Entry.Returned e) {
        List<Refusal> refusals = new ArrayList<>(notBefore(bench, e.day(), "day", "the day on which it came back"));
        // and a day ends up to 12 hours later
        if (e.day().isAfter(bench.now().atOffset(ZoneOffset.UTC).toLocalDate().plusDays(1))) {
            refusals.addAll(Rules.one(
                    "day", "the day on which it came back", e.day() + " is still to come", "Look at the date"));
        }
        refusals.addAll(Rules.needed(e.said(), "said", "what it does", "Say what the owner says it does"));
        refusals.addAll(ofTheUnit(bench, e.items()));
        return refusals;
    }

    static List<Refusal> explained(Workbench bench, Entry.ReturnExplained e) {
        List<Refusal> refusals = new ArrayList<>(
                Rules.needed(e.name(), "name", "what was the cause", "Say what was found, or that nothing was"));
        refusals.addAll(ofTheUnit(bench, e.items()));
        if (!bench.job().end().returned().containsKey(e.returned())) {
            refusals.addAll(
                    Rules.one("returned", "return", "nothing says that it came back then", "Load the page again"));
        }
        return refusals;
    }

    private static List<Refusal> notBefore(Workbench bench, LocalDate day, String key, String place) {
        Said<Entry.HandedBack> back = bench.job().handedBack();
        if (back == null) {
            return Rules.one("", "job", "this unit is not handed back yet", "Hand it back first");
        }
        // a day begins up to 14 hours earlier somewhere than in UTC
        LocalDate from = back.at().atOffset(ZoneOffset.UTC).toLocalDate().minusDays(1);
        return day.isBefore(from)
                ? Rules.one(key, place, day + " is before the unit was handed back", "Look at the date")
                : List.of();
    }

    private static List<Refusal> ofTheUnit(Workbench bench, List<String> items) {
        return items.stream()
                .filter(id -> bench.unit().type().items().stream()
                        .noneMatch(item -> item.id().equals(id)))
                .map(id -> new Refusal(
                        "items", "part " + id, "this unit has no such part", "Choose from the list, or leave it empty"))
                .toList();
    }

    /** A unit whose owner declined goes back as it is: nothing need be finished or decided. */
    static List<Refusal> handedBack(Workbench bench, Entry.HandedBack e) {
        Job job = bench.job();
        List<Refusal> refusals = new ArrayList<>(
                Rules.needed(e.warranty(), "warranty", "warranty", "Say what you stand behind and for how long"));
        if (job.money().declined()) {
            return refusals;
        }
        List<String> left = bench.order().steps().keySet().stream()
                .filter(id -> !job.stepsDone().contains(id))
                .toList();
        if (!left.isEmpty()) {
            refusals.add(Refusal.at(
                    "hand-back",
                    left.size() + (left.size() == 1 ? " step is" : " steps are") + " not done: "
                            + String.join(", ", left),
                    "Finish the build first"));
        }
        job.accepted()
                .forEach((id, accepted) -> Reopened.since(job, bench.unit(), id, accepted)
                        .ifPresent(why ->
                                refusals.add(Refusal.at("clearance " + id, why, "Read it again and accept it"))));
        for (Step step : bench.order().steps().values()) {
            if (job.stepsDone().contains(step.id()) && step.phase() != Phase.TRIAL) {
                holds(bench, step, refusals);
            }
        }
        Set<String> stood = job.stepsStood();
        for (Need need : stood.isEmpty() ? List.<Need>of() : Needs.of(bench.unit(), job)) {
            bench.order().steps().values().stream()
                    .filter(step -> stood.contains(step.id()) && HeldUp.fits(step, need.items()))
                    .findFirst()
                    .ifPresent(step -> refusals.add(Refusal.at(
                            "step " + step.id(),
                            "it was said to be done before, and " + need.name() + " must be new",
                            "Undo it and do it with the new part, or say that the new one lies here")));
        }
        for (Entry.Found found : Findings.undecided(job)) {
            if (!known(bench, found.limit())) {
                refusals.add(undecided(found.what(), found));
            }
        }
        for (Standings.Standing standing : Standings.undecided(bench.unit(), job)) {
            standing.found()
                    .ifPresent(found -> refusals.add(undecided(
                            found.what().what()
                                    + (found.what().piece().isEmpty()
                                            ? ""
                                            : ", " + standing.piece().name()),
                            found.what())));
        }
        RunTogether.asked(bench.unit(), job)
                .forEach(asked -> refusals.add(Refusal.at(
                        asked.item().name(), asked.sentence(), "Say under Inspect what becomes of it as well")));
        Standings.fittedBefore(bench.unit(), job)
                .forEach(fitted -> refusals.add(Refusal.at(
                        fitted.item().name(),
                        fitted.sentence(),
                        "Undo the step and fit what it is to be, or decide again under Inspect")));
        return refusals;
    }

    private static boolean known(Workbench bench, String limit) {
        return limit.startsWith(Entry.Found.TRADE)
                || bench.unit().type().wearLimits().stream()
                        .anyMatch(wear -> wear.id().equals(limit));
    }

    private static Refusal undecided(String place, Entry.Found found) {
        String how = Findings.isOut(found) ? "found outside its limit" : "not proven within its limit";
        return Refusal.at(
                place, "it was " + how + " and nothing was decided since", "Say under Inspect what becomes of it");
    }

    private static void holds(Workbench bench, Step step, List<Refusal> refusals) {
        for (CheckStanding standing : HoldPoints.of(bench, step)) {
            boolean open = standing.standing() != Standing.ACCEPTED && standing.standing() != Standing.OVERRULED;
            boolean said = refusals.stream()
                    .anyMatch(r ->
                            r.place().equals("clearance " + standing.check().clearance()));
            // that all are signed is what is asked here, one by one
            if (open && !said && standing.check().workedOut() != WorkedOut.HOLD_POINTS) {
                refusals.add(Refusal.at(
                        "hold point " + step.hold() + " at step " + step.id(),
                        "it does not stand any more: " + standing.check().what(),
                        "Read it again, or pass it with your reason"));
            }
        }
    }
}
