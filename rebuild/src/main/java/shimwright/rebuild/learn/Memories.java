package shimwright.rebuild.learn;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.Mistakes;
import shimwright.rebuild.job.PartPhoto;

/**
 * What earlier jobs knew, by the place where it matters: the step, the clearance, the wear limit or the item. What was struck is not
 * among it. Places are those of the unit file by id, so a memory of a place that the file has no longer is shown nowhere.
 *
 * @param steps what went wrong, was overruled, noted or took longer
 * @param clearances what was fitted and read in the end
 * @param limits what was read and decided
 * @param items what came wrong, was noted, or made the unit come back
 * @param photos of items and of their single pieces
 * @param whole what is to be known of the type as a whole: lessons, what the owner said after, and why one came back
 */
public record Memories(
        Map<String, List<Remembered>> steps,
        Map<String, List<Remembered>> clearances,
        Map<String, List<Remembered>> limits,
        Map<String, List<Remembered>> items,
        Map<String, List<PartPhoto>> photos,
        List<Remembered> whole) {
    /** Nothing. */
    public static final Memories NONE = new Memories(Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), List.of());

    /** Longer than this between two steps and somebody went home, or to the telephone. */
    public static final Duration AT_ONE_GO = Duration.ofMinutes(90);

    private static final int MINUTE = 60;

    /** All of several jobs, in their order. */
    public static Memories joined(List<Memories> all) {
        return new Memories(
                joinedMaps(all.stream().map(Memories::steps).toList()),
                joinedMaps(all.stream().map(Memories::clearances).toList()),
                joinedMaps(all.stream().map(Memories::limits).toList()),
                joinedMaps(all.stream().map(Memories::items).toList()),
                joinedMaps(all.stream().map(Memories::photos).toList()),
                all.stream().flatMap(one -> one.whole().stream()).toList());
    }

    private static <T> Map<String, List<T>> joinedMaps(List<Map<String, List<T>>> all) {
        Map<String, List<T>> joined = new LinkedHashMap<>();
        all.forEach(one -> one.forEach((place, memories) ->
                joined.computeIfAbsent(place, p -> new ArrayList<>()).addAll(memories)));
        return Collections.unmodifiableMap(joined);
    }

    /** What a step was like before. */
    public List<Remembered> step(String id) {
        return steps.getOrDefault(id, List.of());
    }

    /** What a clearance came to before. */
    public List<Remembered> clearance(String id) {
        return clearances.getOrDefault(id, List.of());
    }

    /** What a wear limit was read at before. */
    public List<Remembered> limit(String id) {
        return limits.getOrDefault(id, List.of());
    }

    /** What a limit was read at before, and what came of the items that it judges. */
    public List<Remembered> limit(String id, List<String> judges) {
        return Stream.concat(limit(id).stream(), items(judges).stream()).toList();
    }

    /** What a step was like before, and what came of the items that it puts in. */
    public List<Remembered> step(String id, List<String> installs) {
        return Stream.concat(step(id).stream(), items(installs).stream()).toList();
    }

    /** What came wrong, was noted, or made the unit come back, of any of the items before. */
    public List<Remembered> items(List<String> ids) {
        return ids.stream()
                .flatMap(id -> items.getOrDefault(id, List.of()).stream())
                .distinct()
                .toList();
    }

    /** What one job knows. */
    public static Memories of(Job job) {
        String number = job.opened().number();
        Map<String, List<Remembered>> clearances = new LinkedHashMap<>();
        job.setting().accepted().forEach((id, said) -> add(clearances, id, accepted(job, number, said)));
        Map<String, List<Remembered>> limits = new LinkedHashMap<>();
        for (Said<Entry.Found> said : job.found()) {
            Entry.Found found = said.what();
            if (!found.limit().isBlank()) {
                add(
                        limits,
                        found.limit(),
                        new Remembered(
                                number, found.values(), found.kind(), (found.piece() + " " + found.words()).strip()));
            }
        }
        job.judged()
                .values()
                .forEach(said -> add(
                        limits,
                        said.what().limit().isBlank()
                                ? said.what().what()
                                : said.what().limit(),
                        words(
                                number,
                                (said.what().piece() + " ").stripLeading()
                                        + said.what().decision().name().toLowerCase(Locale.ROOT) + ": "
                                        + said.what().reason())));
        Map<String, List<Remembered>> items = new LinkedHashMap<>();
        job.supply().sentBack().values().forEach(back -> {
            Said<Entry.Sent> sent = job.sent().get(back.what().sent());
            if (sent != null) {
                sent.what()
                        .items()
                        .forEach(item -> add(
                                items,
                                item,
                                words(
                                        number,
                                        sent.what().to() + " sent a wrong one: "
                                                + back.what().reason())));
            }
        });
        noted(job, number, "clearance ", clearances);
        noted(job, number, "item ", items);
        return new Memories(
                steps(job, number), clearances, limits, items, PartPhoto.of(job), whole(job, number, items));
    }

    /** Notes about places of one kind. */
    private static void noted(Job job, String number, String kind, Map<String, List<Remembered>> into) {
        job.notes().forEach((about, notes) -> {
            if (about.startsWith(kind)) {
                notes.forEach(note -> add(
                        into,
                        about.substring(kind.length()),
                        words(number, note.what().text())));
            }
        });
    }

    /** What is to be known of the type as a whole; why it came back stands with the parts as well. */
    private static List<Remembered> whole(Job job, String number, Map<String, List<Remembered>> items) {
        List<Remembered> whole = new ArrayList<>();
        job.notes()
                .getOrDefault(Entry.NoteMade.LESSON, List.of())
                .forEach(note -> whole.add(words(number, note.what().text())));
        job.end().returned().forEach((id, returned) -> {
            Said<Entry.ReturnExplained> why = job.end().explained().get(id);
            Remembered back = words(number, cameBack(returned.what(), why == null ? null : why.what()));
            whole.add(back);
            (why == null ? returned.what().items() : why.what().items()).forEach(item -> add(items, item, back));
        });
        job.end()
                .followedUp()
                .forEach(said ->
                        whole.add(words(number, "afterwards: " + said.what().said())));
        return List.copyOf(whole);
    }

    private static String cameBack(Entry.Returned returned, Entry.@Nullable ReturnExplained why) {
        String back = "came back on " + returned.day() + ": " + returned.said();
        return why == null
                ? back + "; the cause is not on the record"
                : back + "; " + why.name() + " ("
                        + why.lies().name().toLowerCase(Locale.ROOT).replace('_', ' ') + ")"
                        + (why.fitted().isEmpty() ? "" : "; fitted were " + String.join("; ", why.fitted()));
    }

    private static void add(Map<String, List<Remembered>> into, String place, Remembered memory) {
        into.computeIfAbsent(place, p -> new ArrayList<>()).add(memory);
    }

    private static Remembered words(String job, String words) {
        return new Remembered(job, List.of(), Kind.NUMBER, words);
    }

    private static Remembered accepted(Job job, String number, Said<Entry.ClearanceAccepted> said) {
        List<Entry.PieceIn> pieces = job.setting().chosen().entrySet().stream()
                .filter(chosen -> chosen.getKey().clearance().equals(said.what().clearance()))
                .flatMap(chosen -> chosen.getValue().what().pieces().stream())
                .toList();
        List<Double> values = DoubleStream.concat(
                        DoubleStream.of(said.what().value()), pieces.stream().mapToDouble(Entry.PieceIn::thickness))
                .boxed()
                .toList();
        return new Remembered(
                number,
                values,
                Kind.LENGTH,
                pieces.isEmpty() ? "accepted" : "the first is what was accepted, the others are the pieces fitted");
    }

    private static Map<String, List<Remembered>> steps(Job job, String number) {
        Map<String, List<Remembered>> steps = new LinkedHashMap<>();
        Set<String> mistakes = Mistakes.of(job);
        Instant before = Instant.MIN;
        for (LogEntry kept : job.entries()) {
            if (mistakes.contains(kept.draft().id())) {
                continue;
            }
            Instant at = kept.draft().at();
            if (kept.body() instanceof Entry.StepDone done) {
                took(number, before, at).ifPresent(took -> add(steps, done.step(), took));
                if (!done.note().isBlank()) {
                    add(steps, done.step(), words(number, done.note()));
                }
            } else if (kept.body() instanceof Entry.StepUndone undone) {
                add(steps, undone.step(), words(number, "undone again: " + undone.reason()));
            } else if (kept.body() instanceof Entry.StepCannot cannot) {
                add(steps, cannot.step(), words(number, "could not be done: " + cannot.reason()));
            } else if (kept.body() instanceof Entry.StepJumped jumped) {
                add(steps, jumped.step(), words(number, "done out of order: " + jumped.reason()));
            } else if (kept.body() instanceof Entry.HoldOverruled overruled) {
                add(steps, overruled.step(), words(number, "passed by decision: " + overruled.reason()));
            } else if (kept.body() instanceof Entry.TimeOverruled late) {
                add(
                        steps,
                        late.step(),
                        words(number, "too " + late.what() + " (" + late.clock() + "): " + late.reason()));
            } else if (kept.body() instanceof Entry.NoteMade note
                    && note.about().startsWith("step ")) {
                add(steps, note.about().substring("step ".length()), words(number, note.text()));
            }
            before = at;
        }
        return steps;
    }

    /** Time between the entry before and a step's end; empty where somebody went home meanwhile, or it was kept at once. */
    private static Optional<Remembered> took(String job, Instant before, Instant at) {
        if (before.equals(Instant.MIN)) {
            return Optional.empty();
        }
        Duration gap = Duration.between(before, at);
        return gap.compareTo(AT_ONE_GO) > 0 || gap.toMinutes() < 1
                ? Optional.empty()
                : Optional.of(new Remembered(
                        job,
                        List.of((double) gap.toMinutes() * MINUTE),
                        Kind.TIME,
                        "counted from what was kept before it"));
    }
}
