// size: all that a job is, one value with its parts
package shimwright.rebuild.job;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Phase;
import shimwright.rebuild.unit.model.Unit;

/**
 * A job as its entries make it; every map keeps the order of the log.
 *
 * @param id the job's stream
 * @param head how far the job's stream goes, and its hash
 * @param intake how the unit came in and on which unit file it stands
 * @param inspection what came off, what was found and decided
 * @param supply what was ordered or sent out, and what came of it
 * @param money what it may cost, what the owner said to that, and what it cost
 * @param build steps, hold points and the clocks that were overruled
 * @param setting clearances
 * @param remarks notes and pictures
 * @param end hand-back and what came after
 * @param entries the whole log of the job
 */
public record Job(
        String id,
        Head head,
        Intake intake,
        Inspection inspection,
        Supply supply,
        Money money,
        Build build,
        Setting setting,
        Remarks remarks,
        End end,
        List<LogEntry> entries) {

    /** An entry with its envelope: who said it, when, and its place in the log. */
    public record Said<E extends Entry>(String id, long number, Instant at, String by, E what) {}

    /** A clearance at one of its readings. */
    public record Place(String clearance, Phase phase) {}

    /** A shim position of a clearance. */
    public record Position(String clearance, String position) {}

    /**
     * How the unit came in.
     *
     * @param opened with later corrections
     * @param at when
     * @param moved the latest move to another unit file or variant; null where it stands as it was opened
     */
    public record Intake(
            Entry.JobOpened opened, Instant at, @Nullable Said<Entry.UnitMoved> moved) {}

    /**
     * What is complained of, what came off, what was found and decided.
     *
     * @param complaint the latest; null where nobody said
     * @param looked the latest look at each suspect, by its id
     * @param takenOff the strip-down in order
     * @param found findings in order
     * @param judged the latest verdict, by wear limit or, without one, by item; of one piece with "/" and the piece
     * @param weighed what is said of what a verdict hangs on, under the same keys; of the job as a whole under an empty one
     */
    public record Inspection(
            @Nullable Said<Entry.ComplaintSaid> complaint,
            Map<String, Said<Entry.SuspectLooked>> looked,
            List<Said<Entry.TakenOff>> takenOff,
            List<Said<Entry.Found>> found,
            Map<String, Said<Entry.Judged>> judged,
            Map<String, Said<Entry.Weighed>> weighed) {}

    /**
     * What was ordered or sent out.
     *
     * @param sent by the entry that says so
     * @param cameBack what came of it the last time, by the same entry
     * @param sentBack what went back, by the same entry
     * @param here what lay here already
     */
    public record Supply(
            Map<String, Said<Entry.Sent>> sent,
            Map<String, Said<Entry.CameBack>> cameBack,
            Map<String, Said<Entry.SentBack>> sentBack,
            List<Said<Entry.LiesHere>> here) {}

    /**
     * What it may cost, what the owner said to that, and what it cost.
     *
     * @param quoted the latest; null where the owner was not told
     * @param answered the latest answer to whatever was told; null where there is none
     * @param costs the latest about each thing, by what it is about
     * @param hours to be paid for; null where nobody said
     */
    public record Money(
            @Nullable Said<Entry.Quoted> quoted,
            @Nullable Said<Entry.OwnerAnswered> answered,
            Map<String, Said<Entry.CostSaid>> costs,
            @Nullable Said<Entry.HoursSaid> hours) {

        /** True where the owner wants it back as it is. */
        public boolean declined() {
            return answered != null && answered.what().says() == Entry.OwnerSays.DECLINED;
        }
    }

    /**
     * The build.
     *
     * @param choices side taken, by choice
     * @param done steps that stand done, each with the entry that says so
     * @param jumped steps that stand done although steps they wait for were not
     * @param leftOut steps left out of this job
     * @param added steps of this job's own
     * @param started clocks started by hand, in order; gone with a step that was undone
     * @param cannot steps that could not be done when last tried and are not done since
     * @param checks the latest reading of each check, by "step/check"; gone with a step that was undone
     * @param holdsOverruled hold points passed by decision, by step
     * @param clocks waits cut short and windows overrun, in order
     */
    public record Build(
            Map<String, Said<Entry.ChoiceTaken>> choices,
            Map<String, Said<Entry.StepDone>> done,
            Map<String, Said<Entry.StepJumped>> jumped,
            Map<String, Said<Entry.StepLeftOut>> leftOut,
            Map<String, Said<Entry.StepAdded>> added,
            List<Said<Entry.ClockStarted>> started,
            Map<String, Said<Entry.StepCannot>> cannot,
            Map<String, Said<Entry.CheckRead>> checks,
            Map<String, Said<Entry.HoldOverruled>> holdsOverruled,
            List<Said<Entry.TimeOverruled>> clocks) {}

    /**
     * The clearances.
     *
     * @param packsIn pieces that were in for a reading, by clearance and phase
     * @param rounds rounds that count, by clearance and phase
     * @param struck reason by the id of the entry that no longer counts
     * @param chosen packs chosen, by clearance and position, the latest
     * @param accepted the latest acceptance by clearance
     */
    public record Setting(
            Map<Place, Said<Entry.PackIn>> packsIn,
            Map<Place, List<Said<Entry.RoundRead>>> rounds,
            Map<String, String> struck,
            Map<Position, Said<Entry.PackChosen>> chosen,
            Map<String, Said<Entry.ClearanceAccepted>> accepted) {}

    /**
     * Notes and pictures by what they are about, marks by the entry of their picture, and worksheets, the latest of each by
     * "about/sheet".
     */
    public record Remarks(
            Map<String, List<Said<Entry.NoteMade>>> notes,
            Map<String, List<Said<Entry.PictureAdded>>> pictures,
            Map<String, List<Said<Entry.PictureMarked>>> marks,
            Map<String, Said<Entry.SheetWorked>> worked) {}

    /**
     * The hand-back, once it happened, and what became of the unit after.
     *
     * @param planned the day on which the owner is to be asked, as said last; null where nobody said one
     * @param returned each time that it came back, by the entry that says so
     * @param explained what it was found to have then, the latest, by the same entry
     */
    public record End(
            @Nullable Said<Entry.HandedBack> handedBack,
            List<Said<Entry.FollowedUp>> followedUp,
            @Nullable Said<Entry.FollowUpPlanned> planned,
            Map<String, Said<Entry.Returned>> returned,
            Map<String, Said<Entry.ReturnExplained>> explained) {

        /** The day on which the owner is to be asked; empty where nobody said one, or it was done since. */
        public Optional<Said<Entry.FollowUpPlanned>> toAsk() {
            return Optional.ofNullable(planned)
                    .filter(said -> followedUp.stream().noneMatch(asked -> asked.number() > said.number()));
        }
    }

    /** The entry that opened the job. */
    public Entry.JobOpened opened() {
        return intake.opened();
    }

    /** When the job was opened. */
    public Instant openedAt() {
        return intake.at();
    }

    /** The variant that the job stands on now. */
    public String variant() {
        Said<Entry.UnitMoved> moved = intake.moved();
        return moved == null ? opened().variant() : moved.what().variant();
    }

    /** The content hash of the unit file that the job stands on; empty for a job older than that. */
    public String unitFile() {
        Said<Entry.UnitMoved> moved = intake.moved();
        return moved == null ? opened().unitFile() : moved.what().unitFile();
    }

    /** The strip-down in order. */
    public List<Said<Entry.TakenOff>> takenOff() {
        return inspection.takenOff();
    }

    /** Findings in order. */
    public List<Said<Entry.Found>> found() {
        return inspection.found();
    }

    /** The latest verdict, by wear limit or, without one, by item. */
    public Map<String, Said<Entry.Judged>> judged() {
        return inspection.judged();
    }

    /** What was ordered or sent out, by the entry that says so. */
    public Map<String, Said<Entry.Sent>> sent() {
        return supply.sent();
    }

    /** What came of it the last time, by the entry that ordered it. */
    public Map<String, Said<Entry.CameBack>> cameBack() {
        return supply.cameBack();
    }

    /** The side taken, by choice. */
    public Map<String, Said<Entry.ChoiceTaken>> choices() {
        return build.choices();
    }

    /** The steps that stand done, each with the entry that says so. */
    public Map<String, Said<Entry.StepDone>> done() {
        return build.done();
    }

    /** The steps that stand done although steps they wait for were not. */
    public Map<String, Said<Entry.StepJumped>> jumped() {
        return build.jumped();
    }

    /** The steps left out of this job. */
    public Map<String, Said<Entry.StepLeftOut>> leftOut() {
        return build.leftOut();
    }

    /** The steps of this job's own. */
    public Map<String, Said<Entry.StepAdded>> added() {
        return build.added();
    }

    /** The clocks started by hand. */
    public List<Said<Entry.ClockStarted>> started() {
        return build.started();
    }

    /** The steps that could not be done when last tried and are not done since. */
    public Map<String, Said<Entry.StepCannot>> cannot() {
        return build.cannot();
    }

    /** The latest reading of each check, by "step/check". */
    public Map<String, Said<Entry.CheckRead>> checks() {
        return build.checks();
    }

    /** The hold points passed by decision, by step. */
    public Map<String, Said<Entry.HoldOverruled>> holdsOverruled() {
        return build.holdsOverruled();
    }

    /** The pieces that were in for a reading, by clearance and phase. */
    public Map<Place, Said<Entry.PackIn>> packsIn() {
        return setting.packsIn();
    }

    /** The rounds that count, by clearance and phase. */
    public Map<Place, List<Said<Entry.RoundRead>>> rounds() {
        return setting.rounds();
    }

    /** The reason by the id of the entry that no longer counts. */
    public Map<String, String> struck() {
        return setting.struck();
    }

    /** The packs chosen last, by clearance and position. */
    public Map<Position, Said<Entry.PackChosen>> chosen() {
        return setting.chosen();
    }

    /** The latest acceptance, by clearance. */
    public Map<String, Said<Entry.ClearanceAccepted>> accepted() {
        return setting.accepted();
    }

    /** Notes by what they are about. */
    public Map<String, List<Said<Entry.NoteMade>>> notes() {
        return remarks.notes();
    }

    /** Pictures by what they are about. */
    public Map<String, List<Said<Entry.PictureAdded>>> pictures() {
        return remarks.pictures();
    }

    /** What was drawn on a picture, in order. */
    public List<Said<Entry.PictureMarked>> marksOn(Said<Entry.PictureAdded> picture) {
        return remarks.marks().getOrDefault(picture.id(), List.of());
    }

    /** The picture that an entry added, where it counts. */
    public Optional<Said<Entry.PictureAdded>> picture(String entry) {
        return remarks.pictures().values().stream()
                .flatMap(List::stream)
                .filter(said -> said.id().equals(entry))
                .findFirst();
    }

    /** Worksheets worked out for this job, the latest of each by "about/sheet". */
    public Map<String, Said<Entry.SheetWorked>> worked() {
        return remarks.worked();
    }

    /** The hand-back; null where it has not happened. */
    public @Nullable Said<Entry.HandedBack> handedBack() {
        return end.handedBack();
    }

    /** The steps that stand done. */
    public Set<String> stepsDone() {
        return done().keySet();
    }

    /** Those of them that were said to have been done before, with whatever was at hand. */
    public Set<String> stepsStood() {
        Set<String> said = entries.stream()
                .filter(kept -> kept.body() instanceof Entry.StepsStood)
                .map(kept -> kept.draft().id())
                .collect(Collectors.toSet());
        return done().entrySet().stream()
                .filter(done -> said.contains(done.getValue().id()))
                .map(Map.Entry::getKey)
                .collect(Collectors.toSet());
    }

    /** The side taken, by choice. */
    public Map<String, String> sides() {
        Map<String, String> sides = new LinkedHashMap<>();
        choices().forEach((choice, said) -> sides.put(choice, said.what().side()));
        return sides;
    }

    /** The unit as this job builds it: the file's, without the steps left out and with the job's own. */
    public Unit unit(Unit file) {
        if (leftOut().isEmpty() && added().isEmpty()) {
            return file;
        }
        List<Step> own = new ArrayList<>();
        List<List<String>> before = new ArrayList<>();
        added().values().forEach(said -> {
            Entry.StepAdded e = said.what();
            own.add(Step.own(e.step(), e.todo(), e.at(), e.duration(), e.after()));
            e.before().forEach(later -> before.add(List.of(e.step(), later)));
        });
        return file.tailored(own, before, List.copyOf(leftOut().keySet()));
    }

    /** When each step that stands done was done. */
    public Map<String, Instant> doneAt() {
        Map<String, Instant> at = new LinkedHashMap<>();
        done().forEach((step, said) -> at.put(step, said.at()));
        return at;
    }

    /** What was ordered or sent out and is not here yet, or came and may not go in. */
    public List<Said<Entry.Sent>> awaited() {
        return sent().values().stream()
                .filter(said -> !arrived(said.id()) && !supply.sentBack().containsKey(said.id()))
                .toList();
    }

    /** Whether what was ordered or sent out came and may go in. */
    public boolean arrived(String sent) {
        Said<Entry.CameBack> back = cameBack().get(sent);
        return back != null && back.what().good();
    }

    /** What is awaited that this step fits. */
    public List<Said<Entry.Sent>> awaited(Step step) {
        return awaited().stream()
                .filter(said -> said.what().items().stream()
                        .anyMatch(item ->
                                step.installs().contains(item) || step.builds().contains(item)))
                .toList();
    }

    /** True once the unit was handed back. */
    public boolean closed() {
        return handedBack() != null;
    }

    /** The rounds that count for a clearance at one of its readings. */
    public List<Said<Entry.RoundRead>> roundsOf(String clearance, Phase phase) {
        return rounds().getOrDefault(new Place(clearance, phase), List.of());
    }

    /** The pieces chosen for a clearance, by position. */
    public Map<String, Entry.PackChosen> packOf(String clearance) {
        Map<String, Entry.PackChosen> pack = new LinkedHashMap<>();
        chosen().forEach((position, said) -> {
            if (position.clearance().equals(clearance)) {
                pack.put(position.position(), said.what());
            }
        });
        return pack;
    }

    /** A check of a step's hold point as last read; empty where it was not. */
    public Optional<Said<Entry.CheckRead>> check(String step, String check) {
        return Optional.ofNullable(checks().get(step + "/" + check));
    }

    /** The pack that stands in a position, whichever clearance it was chosen for. */
    public Optional<Said<Entry.PackChosen>> packIn(String position) {
        return chosen().entrySet().stream()
                .filter(e -> e.getKey().position().equals(position))
                .map(Map.Entry::getValue)
                .max(Comparator.comparingLong(Said::number));
    }

    /** The pieces of the drawer that are in this unit, see {@link FittedPieces}. */
    public Set<String> piecesIn() {
        Set<String> in = new LinkedHashSet<>();
        FittedPieces.now(this).values().forEach(pieces -> pieces.forEach(piece -> in.add(piece.piece())));
        return in;
    }
}
