package shimwright.rebuild.job;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import shimwright.rebuild.job.Job.Place;
import shimwright.rebuild.job.Job.Position;
import shimwright.rebuild.job.Job.Said;

/**
 * Entries to job. Everything that is shown or printed of a job comes from here. A fold goes on where it stood: what it
 * has taken need not be read again.
 */
public final class Fold {
    private final List<LogEntry> taken = new ArrayList<>();
    private final Set<String> mistakes = new LinkedHashSet<>();
    private final Map<String, Said<Entry.SuspectLooked>> looked = new LinkedHashMap<>();
    private final Map<String, Said<Entry.Judged>> judged = new LinkedHashMap<>();
    private final Map<String, Said<Entry.Weighed>> weighed = new LinkedHashMap<>();
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
    private final Map<String, List<Said<Entry.PictureMarked>>> marks = new LinkedHashMap<>();
    private final Map<String, Said<Entry.SheetWorked>> worked = new LinkedHashMap<>();
    private final List<Said<Entry.TakenOff>> takenOff = new ArrayList<>();
    private final List<Said<Entry.Found>> found = new ArrayList<>();
    private final Map<String, Said<Entry.Sent>> sent = new LinkedHashMap<>();
    private final Map<String, Said<Entry.CameBack>> cameBack = new LinkedHashMap<>();
    private final Map<String, Said<Entry.SentBack>> sentBack = new LinkedHashMap<>();
    private final List<Said<Entry.LiesHere>> here = new ArrayList<>();
    private final List<Said<Entry.ClockStarted>> started = new ArrayList<>();
    private final List<Said<Entry.TimeOverruled>> clocks = new ArrayList<>();
    private final List<Said<Entry.FollowedUp>> followedUp = new ArrayList<>();
    private final Map<String, Said<Entry.Returned>> returned = new LinkedHashMap<>();
    private final Map<String, Said<Entry.ReturnExplained>> explained = new LinkedHashMap<>();
    private @Nullable Said<Entry.JobOpened> opened;
    private @Nullable Said<Entry.UnitMoved> moved;
    private @Nullable Said<Entry.ComplaintSaid> complaint;
    private final Map<String, Said<Entry.CostSaid>> costs = new LinkedHashMap<>();
    private @Nullable Said<Entry.HandedBack> handedBack;
    private @Nullable Said<Entry.FollowUpPlanned> planned;
    private @Nullable Said<Entry.Quoted> quoted;
    private @Nullable Said<Entry.OwnerAnswered> answered;
    private @Nullable Said<Entry.HoursSaid> hours;

    /** A fold that has taken nothing yet. */
    public Fold() {}

    /**
     * The job of a stream.
     *
     * @param stream the entries of one job in order
     * @return empty when the stream has no entries
     */
    public static Optional<Job> job(List<LogEntry> stream) {
        if (stream.isEmpty()) {
            return Optional.empty();
        }
        Fold fold = new Fold();
        fold.take(stream);
        return fold.job();
    }

    /**
     * Takes further entries of the same stream, in order.
     *
     * @param more entries that follow those taken before
     */
    public void take(List<LogEntry> more) {
        boolean again = false;
        for (LogEntry kept : more) {
            taken.add(kept);
            again |= kept.body() instanceof Entry.EntryStruck;
        }
        if (again) {
            mistakes.clear();
            mistakes.addAll(Mistakes.of(taken));
            clear();
            taken.forEach(this::takeOne);
        } else {
            more.forEach(this::takeOne);
        }
    }

    /** How many entries were taken. */
    public int size() {
        return taken.size();
    }

    /** Room for one: of most things there is one note, one picture, one round. */
    private static <T> List<T> few() {
        return new ArrayList<>(1);
    }

    private void clear() {
        List.of(looked, judged, weighed, choices, done, jumped, leftOut, added, cannot, checks, holdsOverruled)
                .forEach(Map::clear);
        List.of(
                        packsIn, rounds, struck, chosen, accepted, notes, pictures, marks, worked, sent, cameBack,
                        sentBack, costs)
                .forEach(Map::clear);
        List.of(takenOff, found, here, started, clocks, followedUp).forEach(List::clear);
        List.of(returned, explained).forEach(Map::clear);
        opened = null;
        moved = null;
        complaint = null;
        handedBack = null;
        planned = null;
        quoted = null;
        answered = null;
        hours = null;
    }

    private static <E extends Entry> Said<E> said(LogEntry kept, E what) {
        return new Said<>(
                kept.draft().id(),
                kept.number(),
                kept.draft().at(),
                kept.draft().by(),
                what);
    }

    private void takeOne(LogEntry kept) {
        if (kept.body() instanceof Entry.OfJob entry
                && !mistakes.contains(kept.draft().id())) {
            if (!takeIntake(kept, entry)
                    && !takeMoney(kept, entry)
                    && !takeEnd(kept, entry)
                    && !takeStory(kept, entry)
                    && !takeStep(kept, entry)) {
                takeBuild(kept, entry);
            }
        }
    }

    private boolean takeIntake(LogEntry kept, Entry.OfJob entry) {
        if (entry instanceof Entry.JobOpened e) {
            opened = opened == null ? said(kept, e) : opened;
        } else if (entry instanceof Entry.IntakeCorrected e) {
            Said<Entry.JobOpened> before = opened;
            opened = before == null ? null : corrected(before, e);
        } else if (entry instanceof Entry.UnitMoved e) {
            moved = said(kept, e);
        } else if (entry instanceof Entry.ComplaintSaid e) {
            complaint = said(kept, e);
        } else if (entry instanceof Entry.SuspectLooked e) {
            looked.put(e.suspect(), said(kept, e));
        } else {
            return false;
        }
        return true;
    }

    private static Said<Entry.JobOpened> corrected(Said<Entry.JobOpened> said, Entry.IntakeCorrected now) {
        Entry.JobOpened was = said.what();
        return new Said<>(
                said.id(),
                said.number(),
                said.at(),
                said.by(),
                new Entry.JobOpened(
                        now.facts().getOrDefault("number", was.number()),
                        was.unitType(),
                        was.variant(),
                        now.facts().getOrDefault("owner", was.owner()),
                        now.said().isEmpty() ? was.said() : now.said(),
                        was.tellTales(),
                        was.overruledBecause(),
                        now.facts().getOrDefault("remark", was.remark()),
                        was.unitFile()));
    }

    private boolean takeMoney(LogEntry kept, Entry.OfJob entry) {
        if (entry instanceof Entry.Quoted e) {
            quoted = said(kept, e);
        } else if (entry instanceof Entry.OwnerAnswered e) {
            answered = said(kept, e);
        } else if (entry instanceof Entry.CostSaid e) {
            costs.put(e.about(), said(kept, e));
        } else if (entry instanceof Entry.HoursSaid e) {
            hours = said(kept, e);
        } else {
            return false;
        }
        return true;
    }

    private boolean takeStory(LogEntry kept, Entry.OfJob entry) {
        if (entry instanceof Entry.TakenOff e) {
            takenOff.add(said(kept, e));
        } else if (entry instanceof Entry.TakenOffCorrected e) {
            takenOff.replaceAll(said -> said.id().equals(e.takenOff())
                    ? new Said<>(said.id(), said.number(), said.at(), said.by(), e.now())
                    : said);
        } else if (entry instanceof Entry.Found e) {
            found.add(said(kept, e));
        } else if (entry instanceof Entry.Judged e) {
            String about = e.limit().isBlank() ? e.what() : e.limit();
            judged.put(e.piece().isEmpty() ? about : about + "/" + e.piece(), said(kept, e));
        } else if (entry instanceof Entry.Weighed e) {
            weighed.put(e.piece().isEmpty() ? e.limit() : e.limit() + "/" + e.piece(), said(kept, e));
        } else if (entry instanceof Entry.Sent e) {
            sent.put(kept.draft().id(), said(kept, e));
        } else if (entry instanceof Entry.CameBack e) {
            cameBack.put(e.sent(), said(kept, e));
        } else if (entry instanceof Entry.SentBack e) {
            sentBack.put(e.sent(), said(kept, e));
        } else if (entry instanceof Entry.LiesHere e) {
            here.add(said(kept, e));
        } else if (entry instanceof Entry.DueMoved e) {
            sent.computeIfPresent(e.sent(), (id, was) -> due(was, e));
        } else if (entry instanceof Entry.NoteMade e) {
            notes.computeIfAbsent(e.about(), a -> few()).add(said(kept, e));
        } else if (entry instanceof Entry.PictureAdded e) {
            pictures.computeIfAbsent(e.about(), a -> few()).add(said(kept, e));
        } else if (entry instanceof Entry.PictureMarked e) {
            marks.computeIfAbsent(e.on(), a -> few()).add(said(kept, e));
        } else if (entry instanceof Entry.SheetWorked e) {
            worked.put(e.about() + "/" + e.sheet(), said(kept, e));
        } else {
            return false;
        }
        return true;
    }

    private boolean takeEnd(LogEntry kept, Entry.OfJob entry) {
        if (entry instanceof Entry.HandedBack e) {
            handedBack = said(kept, e);
        } else if (entry instanceof Entry.FollowedUp e) {
            followedUp.add(said(kept, e));
        } else if (entry instanceof Entry.FollowUpPlanned e) {
            planned = said(kept, e);
        } else if (entry instanceof Entry.Returned e) {
            returned.put(kept.draft().id(), said(kept, e));
        } else if (entry instanceof Entry.ReturnExplained e) {
            explained.put(e.returned(), said(kept, e));
        } else {
            return false;
        }
        return true;
    }

    private static Said<Entry.Sent> due(Said<Entry.Sent> said, Entry.DueMoved now) {
        return new Said<>(
                said.id(),
                said.number(),
                said.at(),
                said.by(),
                said.what().again(said.what().to(), now.due(), now.late()));
    }

    private boolean takeStep(LogEntry kept, Entry.OfJob entry) {
        if (entry instanceof Entry.StepDone e) {
            cannot.remove(e.step());
            done.put(e.step(), said(kept, e));
        } else if (entry instanceof Entry.StepJumped e) {
            cannot.remove(e.step());
            jumped.put(e.step(), said(kept, e));
            done.put(e.step(), said(kept, new Entry.StepDone(e.step(), e.reason())));
        } else if (entry instanceof Entry.StepsStood e) {
            for (Entry.StepDone one : e.steps()) {
                cannot.remove(one.step());
                done.put(one.step(), said(kept, one));
            }
        } else if (entry instanceof Entry.ClockStarted e) {
            started.add(said(kept, e));
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
        } else if (entry instanceof Entry.TimeOverruled e) {
            clocks.add(said(kept, e));
        } else {
            return false;
        }
        return true;
    }

    private void takeBuild(LogEntry kept, Entry.OfJob entry) {
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
            rounds.computeIfAbsent(new Place(e.clearance(), e.phase()), p -> few())
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
        // what soaked or skinned over then says nothing of the next time
        started.removeIf(clock -> clock.what().step().equals(step));
    }

    private void strikeAll(Place place, String reason) {
        rounds.getOrDefault(place, List.of()).forEach(round -> struck.put(round.id(), reason));
        rounds.remove(place);
    }

    /** The job as it stands; empty before it was opened. */
    public Optional<Job> job() {
        Said<Entry.JobOpened> opening = opened;
        if (opening == null || taken.isEmpty()) {
            return Optional.empty();
        }
        LogEntry last = taken.get(taken.size() - 1);
        return Optional.of(new Job(
                last.draft().stream(),
                last.streamHead(),
                new Job.Intake(opening.what(), opening.at(), moved),
                new Job.Inspection(
                        complaint,
                        copy(looked),
                        List.copyOf(takenOff),
                        List.copyOf(found),
                        copy(judged),
                        copy(weighed)),
                new Job.Supply(copy(sent), copy(cameBack), copy(sentBack), List.copyOf(here)),
                new Job.Money(quoted, answered, copy(costs), hours),
                new Job.Build(
                        copy(choices),
                        copy(done),
                        copy(jumped),
                        copy(leftOut),
                        copy(added),
                        List.copyOf(started),
                        copy(cannot),
                        copy(checks),
                        copy(holdsOverruled),
                        List.copyOf(clocks)),
                new Job.Setting(copy(packsIn), copies(rounds), copy(struck), copy(chosen), copy(accepted)),
                new Job.Remarks(copies(notes), copies(pictures), copies(marks), copy(worked)),
                new Job.End(handedBack, List.copyOf(followedUp), planned, copy(returned), copy(explained)),
                List.copyOf(taken)));
    }

    private static <K, V> Map<K, V> copy(Map<K, V> map) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }

    private static <K, V> Map<K, List<V>> copies(Map<K, List<V>> map) {
        Map<K, List<V>> copies = new LinkedHashMap<>();
        map.forEach((key, list) -> copies.put(key, List.copyOf(list)));
        return Collections.unmodifiableMap(copies);
    }
}
