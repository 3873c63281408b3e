// size: one wrong tap for each of the acts, and the way back from each
package shimwright.rebuild.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import shimwright.rebuild.act.Act;
import shimwright.rebuild.act.ClearanceActs;
import shimwright.rebuild.act.HandBackActs;
import shimwright.rebuild.act.HoldActs;
import shimwright.rebuild.act.InspectActs;
import shimwright.rebuild.act.IntakeActs;
import shimwright.rebuild.act.OrderActs;
import shimwright.rebuild.act.StepActs;
import shimwright.rebuild.act.StripActs;
import shimwright.rebuild.act.YesNo;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.Mistakes;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.UnitType.Check;
import shimwright.rebuild.unit.model.WearLimit;
import shimwright.rebuild.workbench.Workbench;

/** Taps that nobody meant, of every act on a job, and the acts that take one back when it is noticed. */
final class WrongTaps {
    private static final String WHY = "a wrong tap";
    private static final List<String> PHASES = List.of("trial", "final", "again", "");

    private final Random random;
    private int own;

    WrongTaps(Random random) {
        this.random = random;
    }

    private <T> T any(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    /** An act with whatever may be typed for it; empty where there is nothing to tap on. */
    Optional<Act.OfJob> any(Workbench bench) {
        return random.nextBoolean() ? ofSteps(bench, random.nextInt(11)) : ofTheRest(bench, random.nextInt(19));
    }

    private Optional<Act.OfJob> ofSteps(Workbench bench, int which) {
        Job job = bench.job();
        List<String> done = List.copyOf(job.stepsDone());
        List<String> open = bench.order().steps().keySet().stream()
                .filter(id -> !job.stepsDone().contains(id))
                .toList();
        List<String> free = open.stream()
                .filter(id -> bench.order().free(id, job.stepsDone()))
                .toList();
        if (which == 2 ? done.isEmpty() : which == 4 ? job.leftOut().isEmpty() : which != 7 && open.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                switch (which) {
                    case 0 -> new StepActs.Done(any(free.isEmpty() ? open : free), "", Map.of(), "", WHY);
                    case 1 -> new StepActs.DoneOutOfOrder(any(open), WHY);
                    case 2 -> new StepActs.Undo(any(done), WHY);
                    case 3 -> new StepActs.LeaveOut(any(open), WHY);
                    case 4 -> new StepActs.TakeUp(any(List.copyOf(job.leftOut().keySet())), WHY);
                    case 5 ->
                        new StepActs.AddStep(
                                "Z" + ++own,
                                "Wipe it once more",
                                any(List.copyOf(bench.unit().type().stations().keySet())),
                                60,
                                done.isEmpty() ? List.of() : List.of(any(done)),
                                random.nextBoolean() ? List.of() : List.of(any(open)),
                                WHY);
                    case 6 -> new StepActs.CannotNow(any(open), WHY);
                    case 7 -> choice(bench);
                    case 8, 9 -> check(bench, any(free.isEmpty() ? open : free));
                    default -> new HoldActs.PassHold(any(open), hold(bench, any(open)), WHY);
                });
    }

    private Act.OfJob choice(Workbench bench) {
        var choices = bench.unit().type().choices().stream()
                .filter(c -> !c.id().equals("this-job"))
                .toList();
        var choice = any(choices);
        return new StepActs.TakeSide(choice.id(), any(List.copyOf(choice.sides().keySet())), WHY);
    }

    private static String hold(Workbench bench, String step) {
        return bench.step(step).map(Step::hold).orElse("");
    }

    private Act.OfJob check(Workbench bench, String id) {
        Step step = bench.step(id).orElseThrow();
        if (step.hold().isBlank()) {
            return new HoldActs.ReadCheck(id, "", "", "", "yes", "", "", "");
        }
        Check check = any(bench.unit().holdPoint(step.hold()).checks());
        if (random.nextInt(3) == 0) {
            return new HoldActs.PassHold(id, step.hold(), WHY);
        }
        String number = String.valueOf(random.nextInt(90) / 10.0);
        String numbers = String.join(
                "; ",
                java.util.Collections.nCopies(
                        check.readingsEach() * check.fields().size(), number));
        return new HoldActs.ReadCheck(
                id, step.hold(), check.id(), numbers, random.nextInt(3) == 0 ? "yes" : "no", "", "it says so", "");
    }

    private Optional<Act.OfJob> ofTheRest(Workbench bench, int which) {
        Job job = bench.job();
        Clearance c = any(bench.unit().type().clearances());
        List<String> items =
                bench.unit().type().items().stream().map(i -> i.id()).toList();
        WearLimit limit = any(bench.unit().type().wearLimits());
        List<Job.Said<Entry.Sent>> awaited = job.awaited();
        if (which == 6 && awaited.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                switch (which) {
                    case 0 ->
                        new ClearanceActs.NamePieces(
                                c.id(), any(PHASES), Map.of(c.positions().get(0).id(), piece(bench, c)));
                    case 1, 2 -> new ClearanceActs.ReadRound(c.id(), any(PHASES), "", "", numbers(c));
                    case 3 -> new ClearanceActs.ChoosePack(c.id(), piece(bench, c), random.nextBoolean() ? WHY : "");
                    case 4 -> new ClearanceActs.AcceptClearance(c.id(), random.nextBoolean() ? WHY : "");
                    case 5 ->
                        new OrderActs.SendOut(
                                "a part", List.of(any(items)), "a dealer", LocalDate.of(2031, 4, 1), 2, "");
                    case 6 ->
                        new OrderActs.TakeDelivery(
                                any(awaited).id(), random.nextBoolean() ? YesNo.YES : YesNo.NO, "looked at");
                    case 7 ->
                        new InspectActs.Inspect(
                                limit.id(),
                                limit.places() == 1 ? random.nextInt(99) / 100.0 + "" : "1; 2; 3",
                                "bad",
                                "",
                                "it says so",
                                "",
                                "");
                    case 8 ->
                        new InspectActs.Decide(
                                limit.id(), limit.what(), any(List.of(Entry.Decision.values())), WHY, "", List.of());
                    case 9 -> new IntakeActs.Observe("breather", "clogged");
                    case 10 -> new StripActs.TakeOff("a cover", List.of(), "");
                    case 11 -> new IntakeActs.MakeNote("job", "not this one");
                    case 12 -> new IntakeActs.AddPicture("job", "b".repeat(64), "image/png", 10, "");
                    case 13 -> new IntakeActs.CorrectIntake("", "somebody else", "", "", WHY);
                    case 14 ->
                        new IntakeActs.MoveUnit(
                                ActBench.hash(),
                                any(List.copyOf(bench.file().type().variants().keySet())),
                                WHY);
                    case 15 -> new HandBackActs.HandBack("12 months", "", "");
                    case 16 -> new HandBackActs.FollowUp("it whines", "", "");
                    case 17 ->
                        new ClearanceActs.ChooseTogether(
                                c.id(), Map.of(c.positions().get(0).id(), piece(bench, c)), WHY);
                    default -> new IntakeActs.Strike(any(job.entries()).draft().id(), WHY);
                });
    }

    private List<String> numbers(Clearance c) {
        List<String> numbers = new ArrayList<>();
        double first = random.nextInt(80) / 100.0;
        for (int i = 0; i < c.numbers(); i++) {
            numbers.add(String.valueOf(first + (c.method() == Clearance.Method.DIFFERENCE ? 0 : i * 0.01)));
        }
        return numbers;
    }

    private String piece(Workbench bench, Clearance c) {
        String family = c.positions().get(0).family();
        List<String> fitting = bench.shop().pieces().values().stream()
                .filter(p -> p.family().equals(family))
                .map(p -> p.id())
                .toList();
        return any(fitting);
    }

    /** What takes a tap back that is noticed at once: its entries are struck, the last first. */
    static Act.OfJob atOnce(List<LogEntry> entries) {
        return new IntakeActs.Strike(entries.get(entries.size() - 1).draft().id(), WHY);
    }

    /**
     * The next act that takes a tap back which is noticed later.
     *
     * @return empty where nothing is left to be taken back: it was, or whoever goes on does what is missing anyway
     */
    static Optional<Act.OfJob> later(Workbench bench, Act.OfJob act, List<LogEntry> entries) {
        LogEntry entry = entries.get(entries.size() - 1);
        Job job = bench.job();
        Set<String> mistakes = Mistakes.of(job);
        String id = entry.draft().id();
        if (mistakes.contains(id) || job.struck().containsKey(id)) {
            return Optional.empty();
        }
        if (job.closed() && !remark(entry.body())) {
            return Optional.of(new IntakeActs.Strike(
                    Objects.requireNonNull(job.handedBack()).id(), WHY));
        }
        if (entry.body() instanceof Entry.StepDone e) {
            return stillDone(job, e.step(), id) ? Optional.of(undo(bench, e.step())) : Optional.empty();
        }
        if (entry.body() instanceof Entry.StepJumped e) {
            return stillDone(job, e.step(), id) ? Optional.of(undo(bench, e.step())) : Optional.empty();
        }
        if (entry.body() instanceof Entry.StepLeftOut e) {
            return job.leftOut().containsKey(e.step())
                    ? Optional.of(new StepActs.TakeUp(e.step(), WHY))
                    : Optional.empty();
        }
        if (entry.body() instanceof Entry.IntakeCorrected) {
            boolean right = job.opened().owner().equals("the quarry");
            return right ? Optional.empty() : Optional.of(new IntakeActs.CorrectIntake("", "the quarry", "", "", WHY));
        }
        if (entry.body() instanceof Entry.UnitMoved) {
            String right = ((Entry.JobOpened) job.entries().get(0).body()).variant();
            return job.variant().equals(right)
                    ? Optional.empty()
                    : Optional.of(new IntakeActs.MoveUnit(ActBench.hash(), right, WHY));
        }
        if (entry.body() instanceof Entry.StepUndone
                || entry.body() instanceof Entry.StepTakenUp
                || act instanceof IntakeActs.Strike) {
            return Optional.empty();
        }
        return Optional.of(standing(job, entry.body())
                .<Act.OfJob>map(step -> undo(bench, step))
                .orElseGet(() -> new IntakeActs.Strike(id, WHY)));
    }

    private static boolean remark(Entry body) {
        return body instanceof Entry.NoteMade
                || body instanceof Entry.PictureAdded
                || body instanceof Entry.PictureMarked
                || body instanceof Entry.FollowedUp;
    }

    private static boolean stillDone(Job job, String step, String entry) {
        return job.done().containsKey(step) && job.done().get(step).id().equals(entry);
    }

    /** The step that stands done on what an entry says. */
    private static Optional<String> standing(Job job, Entry body) {
        String step = body instanceof Entry.CheckRead read
                ? read.step()
                : body instanceof Entry.HoldOverruled passed
                        ? passed.step()
                        : body instanceof Entry.StepAdded added ? added.step() : "";
        return Optional.of(step).filter(job.stepsDone()::contains);
    }

    /** Undoes what stands on a step first. */
    private static Act.OfJob undo(Workbench bench, String step) {
        return bench.order().waiting(step).stream()
                .filter(on -> bench.job().stepsDone().contains(on.id()))
                .findFirst()
                .map(on -> undo(bench, on.id()))
                .orElseGet(() -> new StepActs.Undo(step, WHY));
    }
}
