package shimwright.rebuild.act;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.ParsedQuantity;
import shimwright.mechanics.quantity.Quantities;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.rules.ClockRules;
import shimwright.rebuild.unit.model.Fastener;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.workbench.Workbench;

/** Steps of the build: done, undone, left out, added. */
public final class StepActs {
    private static final double DAY = 24 * 3600;

    private StepActs() {}

    /** A step is done; with a reason also where a wait has not ended or a window has run out. */
    @MakesEntries({Entry.StepDone.class, Entry.TimeOverruled.class})
    public record Done(
            @ActInput(value = "step", missing = "Go back to the build page")
            String step,

            @ActInput("note") String note,

            @ActInput("torques that were read or set, by fastener")
            Map<String, String> torques,

            @ActInput("whether such a torque was read or set on the wrench: read or set; needed with one")
            String torqueIs,

            @ActInput("reason") String time)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            Optional<Step> found = bench.step(step);
            if (found.isEmpty()) {
                return refused(step);
            }
            String how = trial(bench, step) ? Entry.Tightened.TRIAL : Entry.Tightened.NOMINAL;
            Outcome<List<Entry.Tightened>> bolts =
                    tightened(bench.unit(), found.get(), new Torques(torques, torqueIs), how, around);
            return bolts.map(tightened -> {
                Entry.StepDone done =
                        new Entry.StepDone(step, note, found.get().todo(), tightened, used(bench.unit(), found.get()));
                return with(bench, overruled(bench, step, time), done, "Kept");
            });
        }
    }

    private static <T> Outcome<T> refused(String step) {
        return Outcome.refused(new Refusal(
                "step",
                "step " + step,
                "this unit has no such step with the choices taken, or it is left out",
                "Go back to the build page"));
    }

    private static ActResult with(Workbench bench, List<Entry> before, Entry last, String said) {
        List<Entry> entries = new ArrayList<>(before);
        entries.add(last);
        return new ActResult(bench.job().id(), entries, said);
    }

    /** Waits and windows that the step would break are overruled where a reason is typed; without one the rules refuse the step. */
    private static List<Entry> overruled(Workbench bench, String step, String because) {
        if (because.isBlank()) {
            return List.of();
        }
        return ClockRules.broken(bench, step).stream()
                .<Entry>map(broken -> new Entry.TimeOverruled(
                        step, broken.what(), broken.timer().name(), Map.of("by", broken.seconds()), because))
                .toList();
    }

    private static List<String> used(Unit unit, Step step) {
        return step.consumables().stream().map(id -> unit.consumable(id).name()).toList();
    }

    /** True where the step takes a reading with trial pieces or only makes it ready: what it tightens comes apart again. */
    private static boolean trial(Workbench bench, String step) {
        List<Step> waiting = bench.order().waiting(step);
        boolean reads =
                bench.step(step).filter(s -> s.phase() == Step.Phase.TRIAL).isPresent();
        return reads || (!waiting.isEmpty() && waiting.stream().allMatch(next -> next.phase() == Step.Phase.TRIAL));
    }

    /** Torques that were typed by fastener, and whether they were read or set. */
    private record Torques(Map<String, String> typed, String read) {
        boolean saysNot() {
            return typed.values().stream().anyMatch(text -> !text.isBlank())
                    && !read.equals("read")
                    && !read.equals("set");
        }

        String of(String fastener) {
            return typed.getOrDefault(fastener, "").strip();
        }

        String how(String fastener) {
            return (read.equals("read") ? Entry.Tightened.READ : Entry.Tightened.SET) + ": " + of(fastener);
        }
    }

    private static Outcome<List<Entry.Tightened>> tightened(
            Unit unit, Step step, Torques torques, String how, ActContext around) {
        List<Refusal> strange = torques.typed().keySet().stream()
                .filter(id -> !step.fasteners().contains(id))
                .map(id -> new Refusal(
                        "torques." + id, "fastener " + id, "this step tightens no such fastener", "Look at the step"))
                .toList();
        Outcome<List<Entry.Tightened>> read = Outcome.all(step.fasteners().stream()
                .map(id -> tightenedOne(step, unit.fastener(id), torques, how, around))
                .toList());
        List<Refusal> refusals = new ArrayList<>(strange);
        if (torques.saysNot()) {
            refusals.add(new Refusal(
                    "torqueIs",
                    "torque as typed",
                    "nobody says whether it was read or set",
                    "Choose: as read, or as the wrench was set"));
        }
        refusals.addAll(read.refusals());
        return refusals.isEmpty() ? read : Outcome.refused(refusals);
    }

    private static Outcome<Entry.Tightened> tightenedOne(
            Step step, Fastener fastener, Torques torques, String how, ActContext around) {
        String typed = torques.of(fastener.id());
        if (typed.isEmpty()) {
            return Outcome.ok(tightened(step, fastener, fastener.torque(), how));
        }
        return Quantities.parse(
                        typed,
                        Kind.TORQUE,
                        around.units().display(Kind.TORQUE).unit(),
                        "",
                        TypedReadings.range(Kind.TORQUE))
                .placed("torques." + fastener.id(), "torque of " + fastener.where())
                .map(ParsedQuantity::si)
                .map(si -> tightened(step, fastener, si, torques.how(fastener.id())));
    }

    private static Entry.Tightened tightened(Step step, Fastener fastener, double torque, String how) {
        return new Entry.Tightened(
                fastener.id(), fastener.where(), step.tightens(fastener), fastener.thread(), torque, how);
    }

    /** Steps were done before anybody marked them, and are said in one go. */
    @MakesEntries(Entry.StepsStood.class)
    public record StoodDone(
            @ActInput(value = "steps", missing = "Say which are done")
            List<String> steps,

            @ActInput("note") String note)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            List<Entry.StepDone> stood = new ArrayList<>();
            for (String id : steps) {
                Optional<Step> found = bench.step(id);
                if (found.isEmpty()) {
                    return refused(id);
                }
                String how = trial(bench, id) ? Entry.Tightened.TRIAL : Entry.Tightened.BEFORE;
                List<Entry.Tightened> tightened = found.get().fasteners().stream()
                        .map(bolt -> bench.unit().fastener(bolt))
                        .map(bolt -> tightened(found.get(), bolt, bolt.torque(), how))
                        .toList();
                stood.add(new Entry.StepDone(id, "", found.get().todo(), tightened, used(bench.unit(), found.get())));
            }
            return IntakeActs.kept(bench, new Entry.StepsStood(stood, note), "Kept: done already");
        }
    }

    /** A step was done although steps that it waits for were not. */
    @MakesEntries({Entry.StepJumped.class, Entry.TimeOverruled.class})
    public record DoneOutOfOrder(
            @ActInput(value = "step", missing = "Go back to the build page")
            String step,

            @ActInput(value = "reason", missing = "Say how it came about; it stands on the record")
            String reason)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            return bench.step(step).isEmpty()
                    ? refused(step)
                    : Outcome.ok(with(
                            bench,
                            overruled(bench, step, reason),
                            new Entry.StepJumped(step, reason),
                            "Kept: done out of order, it stands on the record"));
        }
    }

    /** A step is undone again. */
    @MakesEntries(Entry.StepUndone.class)
    public record Undo(
            @ActInput(value = "step", missing = "Go back to the build page")
            String step,

            @ActInput(value = "reason", missing = "Say why it was undone")
            String reason)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            return IntakeActs.kept(bench, new Entry.StepUndone(step, reason), "Kept: undone");
        }
    }

    /** A step is left out of this job. */
    @MakesEntries(Entry.StepLeftOut.class)
    public record LeaveOut(
            @ActInput(value = "step", missing = "Go back to the build page")
            String step,

            @ActInput(value = "reason", missing = "Say why it is left out; it stands on the record")
            String reason)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            return IntakeActs.kept(
                    bench, new Entry.StepLeftOut(step, reason), "Kept: left out, it stands on the record");
        }
    }

    /** A step that was left out is to be done after all. */
    @MakesEntries(Entry.StepTakenUp.class)
    public record TakeUp(
            @ActInput(value = "step", missing = "Go back to the plan")
            String step,

            @ActInput("reason") String reason) implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            return IntakeActs.kept(bench, new Entry.StepTakenUp(step, reason), "Kept: it is to be done after all");
        }
    }

    /** A step of this job's own. */
    @MakesEntries(Entry.StepAdded.class)
    public record AddStep(
            @ActInput(value = "step", missing = "Go back to the plan")
            String step,

            @ActInput(value = "what to do", missing = "Say what is to be done")
            String todo,

            @ActInput(value = "station", missing = "Choose where it is done")
            String at,

            @ActInput(value = "time", missing = "Say how long it takes", kind = Kind.TIME, least = 0, most = DAY)
            double duration,

            @ActInput("steps before it") List<String> after,
            @ActInput("steps after it") List<String> before,

            @ActInput(value = "reason", missing = "Say why it is needed; it stands on the record")
            String reason)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            return IntakeActs.kept(
                    bench,
                    new Entry.StepAdded(step, todo, at, duration, steps(bench, after), steps(bench, before), reason),
                    "Kept: your own step, it stands in the plan");
        }

        /** Steps by what was typed, capitals or not; one that the unit does not have stays as typed and is refused. */
        private static List<String> steps(Workbench bench, List<String> typed) {
            return typed.stream()
                    .flatMap(text -> Stream.of(text.split("[\\s,;]+")))
                    .filter(text -> !text.isEmpty())
                    .map(text -> bench.order().steps().keySet().stream()
                            .filter(text::equalsIgnoreCase)
                            .findFirst()
                            .orElse(text))
                    .toList();
        }
    }

    /** A step cannot be done now. */
    @MakesEntries(Entry.StepCannot.class)
    public record CannotNow(
            @ActInput(value = "step", missing = "Go back to the build page")
            String step,

            @ActInput(value = "reason", missing = "Say what stands in the way")
            String reason)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            return IntakeActs.kept(bench, new Entry.StepCannot(step, reason), "Kept");
        }
    }

    /** A clock is started by hand, so that every screen shows it and the step is held to it. */
    @MakesEntries(Entry.ClockStarted.class)
    public record StartClock(
            @ActInput(value = "step", missing = "Go back to the build page")
            String step,

            @ActInput(value = "what runs", missing = "Say what it is, such as: hub in the oven", longest = 100)
            String clock,

            @ActInput(
                    value = "minutes",
                    missing = "Say how many minutes it runs",
                    least = 0.05,
                    most = StartClock.LONGEST)
            double minutes,

            @ActInput("the step must be done by then, or waits until then")
            String ends)
            implements Act.OfJob {
        private static final String BY_THEN = "by";

        /** A fortnight; nothing on the bench takes longer that a clock is of use for. */
        private static final double LONGEST = 14 * 24 * 60.0;

        private static final double MINUTE = 60;

        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            if (!ends.isEmpty() && !ends.equals(BY_THEN)) {
                return Outcome.refused(Refusal.of(
                        "ends",
                        "\"" + ends + "\" is not known",
                        "Say " + BY_THEN
                                + " where the step must be done by then, or nothing where it waits until then"));
            }
            return IntakeActs.kept(
                    bench,
                    new Entry.ClockStarted(step, clock, minutes * MINUTE, ends.equals(BY_THEN)),
                    "The clock runs");
        }
    }

    /** One side of a choice between possible orders is taken. */
    @MakesEntries(Entry.ChoiceTaken.class)
    public record TakeSide(
            @ActInput(value = "choice", missing = "Go back to the plan")
            String choice,

            @ActInput(value = "side", missing = "Choose one")
            String side,

            @ActInput("reason") String reason)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            return IntakeActs.kept(bench, new Entry.ChoiceTaken(choice, side, reason), "Kept: the plan follows");
        }
    }
}
