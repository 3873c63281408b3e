package shimwright.rebuild.job;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Phase;
import shimwright.rebuild.unit.model.Unit;

/**
 * A job as its entries make it; every map keeps the order of the log.
 *
 * @param id the job's stream
 * @param opened how the unit came in
 * @param openedAt when
 * @param head how far the job's stream goes, and its hash
 * @param takenOff the strip-down in order
 * @param found findings in order
 * @param judged the latest verdict, by wear limit or, without one, by item
 * @param sent what was ordered or sent out, by the entry that says so
 * @param cameBack what came of it, by the same entry
 * @param choices side taken, by choice
 * @param done steps that stand done, each with the entry that says so
 * @param jumped steps that stand done although steps they wait for were not
 * @param leftOut steps left out of this job
 * @param added steps of this job's own
 * @param cannot steps that could not be done when last tried and are not done since
 * @param checks the latest reading of each check, by "step/check"; gone with a step that was undone
 * @param holdsOverruled hold points passed by decision, by step
 * @param packsIn pieces that were in for a reading, by clearance and phase
 * @param rounds rounds that count, by clearance and phase
 * @param struck reason by the id of the entry that no longer counts
 * @param chosen packs chosen, by clearance and position, the latest
 * @param accepted the latest acceptance by clearance
 * @param notes notes by what they are about
 * @param pictures pictures by what they are about
 * @param handedBack the hand-back, once it happened
 * @param entries the whole log of the job
 */
public record Job(
        String id,
        Entry.JobOpened opened,
        Instant openedAt,
        Head head,
        List<Said<Entry.TakenOff>> takenOff,
        List<Said<Entry.Found>> found,
        Map<String, Said<Entry.Judged>> judged,
        Map<String, Said<Entry.Sent>> sent,
        Map<String, Said<Entry.CameBack>> cameBack,
        Map<String, Said<Entry.ChoiceTaken>> choices,
        Map<String, Said<Entry.StepDone>> done,
        Map<String, Said<Entry.StepJumped>> jumped,
        Map<String, Said<Entry.StepLeftOut>> leftOut,
        Map<String, Said<Entry.StepAdded>> added,
        Map<String, Said<Entry.StepCannot>> cannot,
        Map<String, Said<Entry.CheckRead>> checks,
        Map<String, Said<Entry.HoldOverruled>> holdsOverruled,
        Map<Place, Said<Entry.PackIn>> packsIn,
        Map<Place, List<Said<Entry.RoundRead>>> rounds,
        Map<String, String> struck,
        Map<Position, Said<Entry.PackChosen>> chosen,
        Map<String, Said<Entry.ClearanceAccepted>> accepted,
        Map<String, List<Said<Entry.NoteMade>>> notes,
        Map<String, List<Said<Entry.PictureAdded>>> pictures,
        @Nullable Said<Entry.HandedBack> handedBack,
        List<Kept> entries) {

    /** An entry with its envelope: who said it, when, and its place in the log. */
    public record Said<E extends Entry>(String id, long number, Instant at, String by, E what) {}

    /** A clearance at one of its readings. */
    public record Place(String clearance, Phase phase) {}

    /** A shim position of a clearance. */
    public record Position(String clearance, String position) {}

    /** The steps that stand done. */
    public Set<String> stepsDone() {
        return done.keySet();
    }

    /** The side taken, by choice. */
    public Map<String, String> sides() {
        Map<String, String> sides = new LinkedHashMap<>();
        choices.forEach((choice, said) -> sides.put(choice, said.what().side()));
        return sides;
    }

    /** The unit as this job builds it: the file's, without the steps left out and with the job's own. */
    public Unit unit(Unit file) {
        if (leftOut.isEmpty() && added.isEmpty()) {
            return file;
        }
        List<Step> own = new ArrayList<>();
        List<List<String>> before = new ArrayList<>();
        added.values().forEach(said -> {
            Entry.StepAdded e = said.what();
            own.add(Step.own(e.step(), e.todo(), e.at(), e.duration(), e.after()));
            e.before().forEach(later -> before.add(List.of(e.step(), later)));
        });
        return file.tailored(own, before, List.copyOf(leftOut.keySet()));
    }

    /** When each step that stands done was done. */
    public Map<String, Instant> doneAt() {
        Map<String, Instant> at = new LinkedHashMap<>();
        done.forEach((step, said) -> at.put(step, said.at()));
        return at;
    }

    /** What was ordered or sent out and is not here yet. */
    public List<Said<Entry.Sent>> awaited() {
        return sent.values().stream()
                .filter(said -> !cameBack.containsKey(said.id()))
                .toList();
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
        return handedBack != null;
    }

    /** The rounds that count for a clearance at one of its readings. */
    public List<Said<Entry.RoundRead>> roundsOf(String clearance, Phase phase) {
        return rounds.getOrDefault(new Place(clearance, phase), List.of());
    }

    /** The pieces chosen for a clearance, by position. */
    public Map<String, Entry.PackChosen> packOf(String clearance) {
        Map<String, Entry.PackChosen> pack = new LinkedHashMap<>();
        chosen.forEach((position, said) -> {
            if (position.clearance().equals(clearance)) {
                pack.put(position.position(), said.what());
            }
        });
        return pack;
    }

    /** A check of a step's hold point as last read; empty where it was not. */
    public Optional<Said<Entry.CheckRead>> check(String step, String check) {
        return Optional.ofNullable(checks.get(step + "/" + check));
    }

    /** The pack that stands in a position, whichever clearance it was chosen for. */
    public Optional<Said<Entry.PackChosen>> packIn(String position) {
        return chosen.entrySet().stream()
                .filter(e -> e.getKey().position().equals(position))
                .map(Map.Entry::getValue)
                .max(java.util.Comparator.comparingLong(Said::number));
    }

    /** What was overruled, as sentences with who and why, in order of the log. */
    public List<String> overruled() {
        List<String> sentences = new ArrayList<>();
        if (!opened.overruledBecause().isBlank()) {
            sentences.add("Variant " + opened.variant() + " although the tell-tales do not settle it: "
                    + opened.overruledBecause());
        }
        holdsOverruled
                .values()
                .forEach(said -> sentences.add("Hold point " + said.what().hold() + " at step "
                        + said.what().step() + " passed by " + said.by() + ": "
                        + said.what().reason()));
        jumped.values()
                .forEach(said -> sentences.add("Step " + said.what().step() + " done before a step it waits for, by "
                        + said.by() + ": " + said.what().reason()));
        leftOut.values()
                .forEach(said -> sentences.add("Step " + said.what().step() + " left out by " + said.by() + ": "
                        + said.what().reason()));
        added.values()
                .forEach(said -> sentences.add("Step " + said.what().step() + " added by " + said.by() + " ("
                        + said.what().todo() + "): " + said.what().reason()));
        chosen.values().forEach(said -> {
            if (!said.what().overruledBecause().isBlank()) {
                sentences.add("Pack of clearance " + said.what().clearance() + " chosen by " + said.by()
                        + " against the advice: " + said.what().overruledBecause());
            }
        });
        accepted.values().forEach(said -> {
            if (!said.what().overruledBecause().isBlank()) {
                sentences.add("Clearance " + said.what().clearance() + " accepted by " + said.by()
                        + " although not proven in: " + said.what().overruledBecause());
            }
        });
        return List.copyOf(sentences);
    }
}
