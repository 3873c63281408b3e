package shimwright.rebuild.rules;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.Mistakes;
import shimwright.rebuild.workbench.Workbench;

/** What forbids striking an entry that was a mistake. */
final class StrikeRules {
    /** Entries that can be struck; every other has a way back of its own, or is one itself. */
    private static final Set<Class<? extends Entry>> STRIKABLE = Set.of(
            Entry.ComplaintSaid.class,
            Entry.SuspectLooked.class,
            Entry.TakenOff.class,
            Entry.TakenOffCorrected.class,
            Entry.Found.class,
            Entry.Judged.class,
            Entry.Weighed.class,
            Entry.ChoiceTaken.class,
            Entry.StepCannot.class,
            Entry.ClockStarted.class,
            Entry.StepAdded.class,
            Entry.StepsStood.class,
            Entry.Sent.class,
            Entry.CameBack.class,
            Entry.SentBack.class,
            Entry.DueMoved.class,
            Entry.LiesHere.class,
            Entry.Quoted.class,
            Entry.OwnerAnswered.class,
            Entry.CostSaid.class,
            Entry.HoursSaid.class,
            Entry.CheckRead.class,
            Entry.HoldOverruled.class,
            Entry.PackIn.class,
            Entry.PackChosen.class,
            Entry.ClearanceAccepted.class,
            Entry.SheetWorked.class,
            Entry.NoteMade.class,
            Entry.PictureAdded.class,
            Entry.PictureMarked.class,
            Entry.FollowedUp.class,
            Entry.FollowUpPlanned.class,
            Entry.Returned.class,
            Entry.ReturnExplained.class);

    private StrikeRules() {}

    /** Whether an entry of this type can be struck whenever nothing stands on it; every other only while it is the last. */
    static boolean strikable(Entry entry) {
        return STRIKABLE.contains(entry.getClass());
    }

    static List<Refusal> struck(Workbench bench, Entry.EntryStruck e) {
        Job job = bench.job();
        Optional<LogEntry> found = job.entries().stream()
                .filter(kept -> kept.draft().id().equals(e.entry()))
                .findFirst();
        if (found.isEmpty()) {
            return Rules.one("struck", "entry", "this job has no such entry", "Load the page again");
        }
        Set<String> mistakes = Mistakes.of(job);
        if (mistakes.contains(e.entry())) {
            return Rules.one("struck", "entry", "it is struck already", "Nothing more is to be done");
        }
        Entry body = found.get().body();
        if (body instanceof Entry.JobOpened) {
            return Rules.one("struck", "entry", "this cannot be struck", "Correct it under the intake");
        }
        boolean last = last(job, mistakes, found.get());
        if (!last && !strikable(body)) {
            return Rules.one(
                    "struck",
                    "entry",
                    "something was kept after it, so it cannot be struck any more",
                    "Undo the step, or correct it where it was entered");
        }
        List<Refusal> refusals =
                new ArrayList<>(Rules.reason(e.reason(), "Say why it does not count; it stays in the record"));
        standingOn(bench, body)
                .filter(step -> !last)
                .ifPresent(step -> refusals.add(new Refusal(
                        "struck",
                        "step " + step,
                        "it stands done on what this says",
                        "Undo the step first, then strike it")));
        orderedAnew(job, body)
                .ifPresent(what -> refusals.add(new Refusal(
                        "struck", "order", what + " was ordered anew", "Strike the newer order first, then this")));
        return refusals;
    }

    /**
     * True where nothing that counts was kept after an entry but remarks: a wrong tap that is seen at once. The job is then as
     * if it had never been.
     */
    private static boolean last(Job job, Set<String> mistakes, LogEntry entry) {
        return job.entries().stream()
                .filter(kept -> kept.number() > entry.number())
                .filter(kept -> !mistakes.contains(kept.draft().id()))
                .allMatch(kept -> HandBackRules.remark(kept.body())
                        || (kept.body() instanceof Entry.EntryStruck struck && later(job, struck.entry(), entry)));
    }

    /** True where a strike took back something kept after an entry. */
    private static boolean later(Job job, String struck, LogEntry entry) {
        return job.entries().stream()
                .anyMatch(kept -> kept.draft().id().equals(struck) && kept.number() > entry.number());
    }

    /** What took the place of something that went back; empty where nothing did, or the entry is of another kind. */
    private static Optional<String> orderedAnew(Job job, Entry entry) {
        return entry instanceof Entry.SentBack back
                ? Optional.ofNullable(job.sent().get(back.sent()))
                        .flatMap(was -> job.sent().values().stream()
                                .filter(other -> other.number() > was.number())
                                .filter(other -> !job.supply().sentBack().containsKey(other.id()))
                                .filter(other -> !Collections.disjoint(
                                        other.what().items(), was.what().items()))
                                .map(other -> other.what().what())
                                .findFirst())
                : Optional.empty();
    }

    /** The step that stands done on what an entry says; empty where none does. */
    private static Optional<String> standingOn(Workbench bench, Entry entry) {
        Job job = bench.job();
        String step = "";
        if (entry instanceof Entry.StepsStood stood) {
            return StoodSteps.standingOn(bench, stood);
        }
        if (entry instanceof Entry.CheckRead read) {
            step = read.step();
        } else if (entry instanceof Entry.HoldOverruled overruled) {
            step = overruled.step();
        } else if (entry instanceof Entry.StepAdded added) {
            step = added.step();
        }
        return Optional.of(step).filter(job.stepsDone()::contains);
    }

    static List<Refusal> roundStruck(Workbench bench, Entry.RoundStruck e) {
        boolean there = bench.job().rounds().values().stream()
                .flatMap(List::stream)
                .anyMatch(round -> round.id().equals(e.entry()));
        if (!there) {
            return Rules.one(
                    "struck", "reading", "there is no such reading that counts", "It may have been struck already");
        }
        return Rules.reason(e.reason(), "Say why the reading does not count; it stays in the record");
    }
}
