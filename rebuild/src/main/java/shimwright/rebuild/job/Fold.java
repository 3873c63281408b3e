package shimwright.rebuild.job;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import shimwright.rebuild.job.Job.Place;
import shimwright.rebuild.job.Job.Position;
import shimwright.rebuild.job.Job.Said;

/** Entries to job. Everything that is shown or printed of a job comes from here. */
public final class Fold {
    private final Map<String, Said<Entry.Judged>> judged = new LinkedHashMap<>();
    private final Map<String, Said<Entry.ChoiceTaken>> choices = new LinkedHashMap<>();
    private final Map<String, Said<Entry.StepDone>> done = new LinkedHashMap<>();
    private final Map<String, Said<Entry.StepJumped>> jumped = new LinkedHashMap<>();
    private final Map<String, Said<Entry.StepLeftOut>> leftOut = new LinkedHashMap<>();
    private final Map<String, Said<Entry.StepAdded>> added = new LinkedHashMap<>();
    private final Map<String, Said<Entry.StepCannot>> cannot = new LinkedHashMap<>();
    private final Map<String, Said<Entry.CheckRead>> checks = new LinkedHashMap<>();
    private final Map<String, Said<Entry.HoldOverruled>> holdsOverruled = new LinkedHashMap<>();
    private final Map<Place, Said<Entry.PackIn>> packsIn = new LinkedHashMap<>();
    private final Map<Place, List<Said<Entry.RoundRead>>> rounds = new LinkedHashMap<>();
    private final Map<String, String> struck = new HashMap<>();
    private final Map<Position, Said<Entry.PackChosen>> chosen = new LinkedHashMap<>();
    private final Map<String, Said<Entry.ClearanceAccepted>> accepted = new LinkedHashMap<>();
    private final Map<String, List<Said<Entry.NoteMade>>> notes = new LinkedHashMap<>();
    private final Map<String, List<Said<Entry.PictureAdded>>> pictures = new LinkedHashMap<>();
    private final List<Said<Entry.TakenOff>> takenOff = new ArrayList<>();
    private final List<Said<Entry.Found>> found = new ArrayList<>();
    private final Map<String, Said<Entry.Sent>> sent = new LinkedHashMap<>();
    private final Map<String, Said<Entry.CameBack>> cameBack = new LinkedHashMap<>();
    private @Nullable Said<Entry.JobOpened> opened;
    private @Nullable Said<Entry.HandedBack> handedBack;

    private Fold() {}

    /**
     * The job of a stream.
     *
     * @param stream the entries of one job in order
     * @return empty when the stream has no entries
     */
    public static Optional<Job> job(List<Kept> stream) {
        if (stream.isEmpty()) {
            return Optional.empty();
        }
        Fold fold = new Fold();
        stream.forEach(fold::take);
        return fold.finish(stream);
    }

    private static <E extends Entry> Said<E> said(Kept kept, E what) {
        return new Said<>(
                kept.draft().id(),
                kept.number(),
                kept.draft().at(),
                kept.draft().by(),
                what);
    }

    private void take(Kept kept) {
        if (kept.body() instanceof Entry.OfJob entry) {
            if (!takeStory(kept, entry) && !takeStep(kept, entry)) {
                takeBuild(kept, entry);
            }
        }
    }

    private boolean takeStory(Kept kept, Entry.OfJob entry) {
        if (entry instanceof Entry.JobOpened e) {
            opened = opened == null ? said(kept, e) : opened;
        } else if (entry instanceof Entry.TakenOff e) {
            takenOff.add(said(kept, e));
        } else if (entry instanceof Entry.Found e) {
            found.add(said(kept, e));
        } else if (entry instanceof Entry.Judged e) {
            judged.put(e.limit().isBlank() ? e.what() : e.limit(), said(kept, e));
        } else if (entry instanceof Entry.Sent e) {
            sent.put(kept.draft().id(), said(kept, e));
        } else if (entry instanceof Entry.CameBack e) {
            cameBack.put(e.sent(), said(kept, e));
        } else if (entry instanceof Entry.NoteMade e) {
            notes.computeIfAbsent(e.about(), a -> new ArrayList<>()).add(said(kept, e));
        } else if (entry instanceof Entry.PictureAdded e) {
            pictures.computeIfAbsent(e.about(), a -> new ArrayList<>()).add(said(kept, e));
        } else if (entry instanceof Entry.HandedBack e) {
            handedBack = said(kept, e);
        } else {
            return entry instanceof Entry.FollowedUp;
        }
        return true;
    }

    private boolean takeStep(Kept kept, Entry.OfJob entry) {
        if (entry instanceof Entry.StepDone e) {
            cannot.remove(e.step());
            done.put(e.step(), said(kept, e));
        } else if (entry instanceof Entry.StepJumped e) {
            cannot.remove(e.step());
            jumped.put(e.step(), said(kept, e));
            done.put(e.step(), said(kept, new Entry.StepDone(e.step(), e.reason())));
        } else if (entry instanceof Entry.StepCannot e) {
            cannot.put(e.step(), said(kept, e));
        } else if (entry instanceof Entry.StepUndone e) {
            undone(e.step());
        } else if (entry instanceof Entry.StepLeftOut e) {
            cannot.remove(e.step());
            leftOut.put(e.step(), said(kept, e));
        } else if (entry instanceof Entry.StepTakenUp e) {
            leftOut.remove(e.step());
        } else if (entry instanceof Entry.StepAdded e) {
            added.put(e.step(), said(kept, e));
        } else {
            return false;
        }
        return true;
    }

    private void takeBuild(Kept kept, Entry.OfJob entry) {
        if (entry instanceof Entry.ChoiceTaken e) {
            choices.put(e.choice(), said(kept, e));
        } else if (entry instanceof Entry.CheckRead e) {
            checks.put(e.step() + "/" + e.check(), said(kept, e));
        } else if (entry instanceof Entry.HoldOverruled e) {
            holdsOverruled.put(e.step(), said(kept, e));
        } else if (entry instanceof Entry.PackIn e) {
            Place place = new Place(e.clearance(), e.phase());
            Said<Entry.PackIn> before = packsIn.put(place, said(kept, e));
            if (before != null && !before.what().equals(e)) {
                strikeAll(place, "read with another pack in");
            }
        } else if (entry instanceof Entry.RoundRead e) {
            rounds.computeIfAbsent(new Place(e.clearance(), e.phase()), p -> new ArrayList<>())
                    .add(said(kept, e));
        } else if (entry instanceof Entry.RoundStruck e) {
            struck.put(e.entry(), e.reason());
            rounds.values().forEach(list -> list.removeIf(round -> round.id().equals(e.entry())));
        } else if (entry instanceof Entry.PackChosen e) {
            chosen.put(new Position(e.clearance(), e.position()), said(kept, e));
        } else if (entry instanceof Entry.ClearanceAccepted e) {
            accepted.put(e.clearance(), said(kept, e));
        }
    }

    /** What a step's hold point was passed on goes with the step: redone, it is read anew. */
    private void undone(String step) {
        done.remove(step);
        jumped.remove(step);
        holdsOverruled.remove(step);
        checks.values().removeIf(read -> read.what().step().equals(step));
    }

    private void strikeAll(Place place, String reason) {
        rounds.getOrDefault(place, List.of()).forEach(round -> struck.put(round.id(), reason));
        rounds.remove(place);
    }

    private Optional<Job> finish(List<Kept> stream) {
        Said<Entry.JobOpened> opening = opened;
        if (opening == null) {
            return Optional.empty();
        }
        Kept last = stream.get(stream.size() - 1);
        rounds.replaceAll((place, list) -> List.copyOf(list));
        notes.replaceAll((about, list) -> List.copyOf(list));
        pictures.replaceAll((about, list) -> List.copyOf(list));
        return Optional.of(new Job(
                last.draft().stream(),
                opening.what(),
                opening.at(),
                new Head(last.streamNumber(), last.streamHash()),
                List.copyOf(takenOff),
                List.copyOf(found),
                Collections.unmodifiableMap(judged),
                Collections.unmodifiableMap(sent),
                Collections.unmodifiableMap(cameBack),
                Collections.unmodifiableMap(choices),
                Collections.unmodifiableMap(done),
                Collections.unmodifiableMap(jumped),
                Collections.unmodifiableMap(leftOut),
                Collections.unmodifiableMap(added),
                Collections.unmodifiableMap(cannot),
                Collections.unmodifiableMap(checks),
                Collections.unmodifiableMap(holdsOverruled),
                Collections.unmodifiableMap(packsIn),
                Collections.unmodifiableMap(rounds),
                Collections.unmodifiableMap(struck),
                Collections.unmodifiableMap(chosen),
                Collections.unmodifiableMap(accepted),
                Collections.unmodifiableMap(notes),
                Collections.unmodifiableMap(pictures),
                handedBack,
                List.copyOf(stream)));
    }
}
