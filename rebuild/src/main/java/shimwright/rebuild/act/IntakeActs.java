package shimwright.rebuild.act;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.inspect.WearJudgement;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.unit.model.WearLimit;
import shimwright.rebuild.unit.model.WearLimit.Direction;
import shimwright.rebuild.workbench.PinnedUnit;
import shimwright.rebuild.workbench.Workbench;

/** Intake, inspection, notes and pictures. */
public final class IntakeActs {
    private IntakeActs() {}

    static Outcome<ActResult> kept(Workbench bench, Entry.OfJob entry, String said) {
        return Outcome.ok(new ActResult(bench.job().id(), List.of(entry), said));
    }

    /** What was written at intake is put right. */
    @MakesEntries(Entry.IntakeCorrected.class)
    public record CorrectIntake(
            @ActInput("job number") String number,
            @ActInput("owner") String owner,
            @ActInput("remark") String remark,
            @ActInput("what the owner said, a line each") String said,

            @ActInput(value = "reason", missing = "Say how it came about")
            String reason)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            Entry.JobOpened was = bench.job().opened();
            Map<String, String> facts = new LinkedHashMap<>();
            put(facts, "number", number, was.number());
            put(facts, "owner", owner, was.owner());
            put(facts, "remark", remark, was.remark());
            List<String> lines = lines(said);
            return kept(
                    bench,
                    new Entry.IntakeCorrected(facts, lines.equals(was.said()) ? List.of() : lines, reason),
                    "Put right; what stood there before stays in the log");
        }

        private static void put(Map<String, String> facts, String name, String now, String was) {
            if (!now.isBlank() && !now.equals(was)) {
                facts.put(name, now);
            }
        }
    }

    static List<String> lines(String text) {
        return text.lines().map(String::strip).filter(line -> !line.isEmpty()).toList();
    }

    /** The job moves to another unit file or variant, once it was shown what changes. */
    @MakesEntries(Entry.UnitMoved.class)
    public record MoveUnit(
            @ActInput(value = "unit file", missing = "Choose the unit file")
            String file,

            @ActInput(value = "variant", missing = "Choose the variant")
            String variant,

            @ActInput(value = "reason", missing = "Say why the job moves to it")
            String reason)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            Optional<PinnedUnit> to = around.floor().shelf().values().stream()
                    .filter(unit -> unit.hash().equals(file))
                    .findFirst();
            if (to.isEmpty() || to.get().unit(variant).isEmpty()) {
                return Outcome.refused(new Refusal(
                        "file",
                        "unit file",
                        "this shop has no such file, or it has no variant " + variant,
                        "Load the page again"));
            }
            return kept(
                    bench,
                    new Entry.UnitMoved(file, variant, UnitChanges.of(bench, to.get(), variant), reason),
                    "The job stands on the other file now");
        }
    }

    /** A wear limit was measured or looked at. */
    @MakesEntries(Entry.Found.class)
    public record Inspect(
            @ActInput(value = "limit", missing = "Go back to the inspection")
            String limit,

            @ActInput("readings") String values,
            @ActInput("as it should be") String attest,
            @ActInput("gauge") String gauge,
            @ActInput("why an unlikely size is right") String confirmed,
            @ActInput("remark") String words)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            return wearLimit(bench, limit)
                    .flatMap(wear -> wear.direction() == Direction.ATTEST ? attested(wear) : measured(wear, around))
                    .flatMap(found -> kept(bench, found, found.outcome()));
        }

        private Outcome<Entry.Found> attested(WearLimit wear) {
            if (!attest.equals("good") && !attest.equals("bad")) {
                return Outcome.refused(new Refusal(
                        "attest",
                        wear.id() + " " + wear.what(),
                        "nothing chosen",
                        "Say whether it is as it should be"));
            }
            boolean good = attest.equals("good");
            return Outcome.ok(new Entry.Found(
                    wear.id(),
                    wear.items(),
                    wear.what(),
                    List.of(),
                    Kind.NUMBER,
                    words,
                    good ? "As it should be." : "Not as it should be: rework or replace.",
                    List.of(),
                    Map.of("verdict", good ? "IN" : "OUT")));
        }

        private Outcome<Entry.Found> measured(WearLimit wear, ActContext around) {
            Kind kind = wear.kind().quantity();
            String place = wear.id() + " " + wear.what();
            return TypedReadings.parse(values, kind, wear.bareUnit(), place)
                    .flatMap(read -> TypedReadings.read(read, gauge, wear.gauge(), around))
                    .map(read -> read.confirmedBecause(confirmed))
                    .flatMap(read -> WearJudgement.of(wear, read, around.units())
                            .map(judged -> new Entry.Found(
                                    wear.id(),
                                    wear.items(),
                                    wear.what(),
                                    read.values(),
                                    kind,
                                    TypedReadings.remark(words, confirmed),
                                    judged.say(),
                                    judged.working(),
                                    basis(wear, judged))));
        }
    }

    /** A wear limit cannot be read, and why; nobody knows then that it is within, so what becomes of it is to be decided. */
    @MakesEntries(Entry.Found.class)
    public record CannotRead(
            @ActInput(value = "limit", missing = "Go back to the inspection")
            String limit,

            @ActInput(value = "why it cannot be read", missing = "Say why it cannot be read")
            String why)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            return wearLimit(bench, limit)
                    .flatMap(wear -> kept(
                            bench,
                            new Entry.Found(
                                    wear.id(),
                                    wear.items(),
                                    wear.what(),
                                    List.of(),
                                    Kind.NUMBER,
                                    why,
                                    "Could not be read: decide what becomes of it.",
                                    List.of(),
                                    Map.of("verdict", "NOT_PROVEN", "origin", wear.origin())),
                            "Kept: it could not be read"));
        }
    }

    private static Outcome<WearLimit> wearLimit(Workbench bench, String id) {
        return bench.unit().type().wearLimits().stream()
                .filter(wear -> wear.id().equals(id))
                .findFirst()
                .map(Outcome::ok)
                .orElseGet(() -> Outcome.refused(new Refusal(
                        "limit", "limit " + id, "this unit has no such limit", "Go back to the inspection")));
    }

    private static Map<String, String> basis(WearLimit wear, WearJudgement judged) {
        Map<String, String> basis = new LinkedHashMap<>();
        basis.put("verdict", judged.verdict().name());
        wear.limit().ifPresent(limit -> basis.put("limit", limit.toString()));
        basis.put("origin", wear.origin());
        return basis;
    }

    /** Something was seen that no limit of the unit file asks for. */
    @MakesEntries(Entry.Found.class)
    public record Observe(
            @ActInput(value = "item", missing = "Name the part or feature")
            String what,

            @ActInput(value = "what you saw", missing = "Say what you saw")
            String words)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            return kept(
                    bench,
                    new Entry.Found("", List.of(), what, List.of(), Kind.NUMBER, words, "Noted", List.of()),
                    "Noted");
        }
    }

    /** What becomes of an item is decided. */
    @MakesEntries(Entry.Judged.class)
    public record Decide(
            @ActInput("limit") String limit,

            @ActInput(value = "item", missing = "Say which item")
            String what,

            @ActInput(value = "verdict", missing = "Choose reuse, rework or replace")
            Entry.Decision decision,

            @ActInput(value = "reason", missing = "Say why, so that the record can be stood behind")
            String reason,

            @ActInput("agreed with the owner") String consent)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            return kept(
                    bench,
                    new Entry.Judged(limit, List.of(), what, decision, reason, consent),
                    "Kept: " + decision.name().toLowerCase(java.util.Locale.ROOT));
        }
    }

    /** A note. */
    @MakesEntries(Entry.NoteMade.class)
    public record MakeNote(
            @ActInput("what it is about") String about,

            @ActInput(value = "note", missing = "Type the note")
            String text)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            return kept(bench, new Entry.NoteMade(about.isBlank() ? "job" : about, text), "Note kept");
        }
    }

    /** A picture that is kept already. */
    @MakesEntries(Entry.PictureAdded.class)
    public record AddPicture(
            @ActInput("what it is about") String about,

            @ActInput(value = "picture", missing = "Take or choose a PNG or JPEG picture")
            String picture,

            @ActInput("media type") String mediaType,
            @ActInput(value = "bytes", least = 1) double size,
            @ActInput("caption") String caption)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            return kept(
                    bench,
                    new Entry.PictureAdded(about.isBlank() ? "job" : about, picture, mediaType, (long) size, caption),
                    "Picture kept");
        }
    }

    /** An entry that was a mistake is struck; it stays in the log. */
    @MakesEntries({Entry.EntryStruck.class, Entry.RoundStruck.class})
    public record Strike(
            @ActInput(value = "entry", missing = "Load the page again")
            String struck,

            @ActInput(value = "reason", missing = "Say why it does not count; it stays in the record")
            String reason)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            List<LogEntry> entries = bench.job().entries();
            int at = IntStream.range(0, entries.size())
                    .filter(i -> entries.get(i).draft().id().equals(struck))
                    .findFirst()
                    .orElse(-1);
            List<Entry> strikes = new ArrayList<>();
            boolean round = at >= 0 && entries.get(at).body() instanceof Entry.RoundRead;
            strikes.add(round ? new Entry.RoundStruck(struck, reason) : new Entry.EntryStruck(struck, reason));
            // what was said of clocks in the same act goes with the step
            String step = at < 0 ? "" : step(entries.get(at).body());
            while (!step.isEmpty() && --at >= 0 && overruled(entries.get(at), step)) {
                strikes.add(new Entry.EntryStruck(entries.get(at).draft().id(), reason));
            }
            return Outcome.ok(new ActResult(bench.job().id(), strikes, "Struck; it stays in the record"));
        }

        private static String step(Entry entry) {
            return entry instanceof Entry.StepDone done
                    ? done.step()
                    : entry instanceof Entry.StepJumped jumped ? jumped.step() : "";
        }

        private static boolean overruled(LogEntry kept, String step) {
            return kept.body() instanceof Entry.TimeOverruled clock
                    && clock.step().equals(step);
        }
    }
}
