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
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.workbench.PinnedUnit;
import shimwright.rebuild.workbench.Workbench;

/** Intake, observations, notes and pictures. */
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
