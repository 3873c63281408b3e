package shimwright.rebuild.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shimwright.rebuild.inspect.JudgedPiece;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.job.PartPhoto;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/**
 * What one job teaches of its unit: the order in which it was built, the traps, and what was written and photographed on the
 * way; nothing of whose it was.
 *
 * @param steps in the order in which they were done, those not done yet behind
 * @param done how many of them this job has done
 * @param off what came off, in order, by the names of the unit file
 * @param words what somebody wrote on the way, offered for the guide
 * @param pictures those of parts and steps, and others
 */
public record Guide(List<Step> steps, int done, List<Off> off, List<Words> words, List<Shot> pictures) {
    public Guide {
        steps = List.copyOf(steps);
        off = List.copyOf(off);
        words = List.copyOf(words);
        pictures = List.copyOf(pictures);
    }

    /**
     * Something that came off.
     *
     * @param items by name
     */
    public record Off(int place, String items) {}

    /**
     * What somebody wrote.
     *
     * @param id of the entry
     * @param step that it stands with; empty for the job as a whole
     * @param kept why it never goes out; empty where nothing is seen against it
     * @param left true where it is left out until somebody says otherwise
     */
    public record Words(String id, String step, String what, String text, Optional<String> kept, boolean left) {}

    /**
     * A picture.
     *
     * @param id of the entry
     * @param step that it stands with; empty for none
     * @param of what it shows
     * @param left true where it is left out until somebody says otherwise
     */
    public record Shot(String id, String picture, String step, String of, boolean left) {}

    /** The guide that a job can give. */
    public static Guide of(Job job, Unit unit, Discretion discretion) {
        List<Step> steps = new ArrayList<>();
        Set<String> own = job.added().keySet();
        job.stepsDone().stream()
                .filter(id -> !own.contains(id))
                .forEach(id -> unit.findStep(id).ifPresent(steps::add));
        int done = steps.size();
        unit.type().steps().stream()
                .filter(step -> !steps.contains(step) && !own.contains(step.id()))
                .forEach(steps::add);
        return new Guide(steps, done, off(job, unit), words(job, unit, discretion), pictures(job, unit));
    }

    private static List<Off> off(Job job, Unit unit) {
        List<Off> off = new ArrayList<>();
        for (Said<Entry.TakenOff> said : job.takenOff()) {
            List<String> names = unit.type().items().stream()
                    .filter(item -> said.what().items().contains(item.id()))
                    .map(Item::name)
                    .toList();
            if (!names.isEmpty()) {
                off.add(new Off(off.size() + 1, String.join(", ", names)));
            }
        }
        return off;
    }

    private static List<Words> words(Job job, Unit unit, Discretion discretion) {
        List<Words> all = new ArrayList<>();
        job.done()
                .values()
                .forEach(said -> add(
                        all,
                        discretion,
                        said.id(),
                        said.what().step(),
                        "with step " + said.what().step(),
                        said.what().note()));
        job.jumped()
                .values()
                .forEach(said -> add(
                        all,
                        discretion,
                        said.id(),
                        said.what().step(),
                        "out of order",
                        said.what().reason()));
        job.added()
                .values()
                .forEach(said -> add(
                        all,
                        discretion,
                        said.id(),
                        "",
                        "a step of this job's own",
                        said.what().todo()));
        job.takenOff().forEach(said -> add(all, discretion, said.id(), "", "as it came apart", offWords(said.what())));
        job.notes()
                .forEach((about, notes) -> notes.forEach(said -> {
                    String step = about.startsWith("step ") ? about.substring("step ".length()) : reads(unit, about);
                    add(
                            all,
                            discretion,
                            said.id(),
                            step,
                            about.equals(Entry.NoteMade.LESSON) ? "lesson" : "note",
                            said.what().text());
                }));
        return all;
    }

    private static String offWords(Entry.TakenOff off) {
        return Stream.of(off.gone(), off.note(), off.byForce(), off.destroyed())
                .filter(words -> !words.isBlank())
                .reduce((one, other) -> one + ", " + other)
                .orElse("");
    }

    /** The step that reads a clearance which a note is about. */
    private static String reads(Unit unit, String about) {
        return unit.type().steps().stream()
                .filter(step -> about.equals("clearance " + step.clearance()))
                .map(Step::id)
                .findFirst()
                .orElse("");
    }

    private static void add(List<Words> all, Discretion discretion, String id, String step, String what, String text) {
        if (!text.isBlank()) {
            Optional<String> kept = discretion.against(text);
            all.add(new Words(id, step, what, text, kept, kept.isPresent() || discretion.doubtful(text)));
        }
    }

    private static List<Shot> pictures(Job job, Unit unit) {
        Map<String, String> fits = new LinkedHashMap<>();
        unit.type()
                .steps()
                .forEach(step -> Stream.concat(step.installs().stream(), step.builds().stream())
                        .forEach(item -> fits.putIfAbsent(item, step.id())));
        List<Shot> shots = new ArrayList<>();
        for (Said<Entry.PictureAdded> said : HandBackRecord.pictures(job)) {
            String about = said.what().about();
            boolean ofStep = about.startsWith("step ");
            List<String> items = PartPhoto.shows(job, about, said.at()).stream()
                    .map(JudgedPiece::item)
                    .filter(item -> unit.type().items().stream()
                            .anyMatch(one -> one.id().equals(item)))
                    .toList();
            String step = ofStep
                    ? about.substring("step ".length())
                    : items.stream()
                            .map(item -> fits.getOrDefault(item, ""))
                            .findFirst()
                            .orElse("");
            String of = items.isEmpty()
                    ? (ofStep ? "" : "the unit")
                    : unit.item(items.get(0)).name();
            shots.add(new Shot(said.id(), said.what().picture(), step, of, !ofStep && items.isEmpty()));
        }
        return shots;
    }

    /** The same without what is left out; what must be kept back is never in it. */
    public Guide without(Set<String> left) {
        return new Guide(
                steps,
                done,
                off,
                words.stream()
                        .filter(one -> one.kept().isEmpty() && !left.contains(one.id()))
                        .toList(),
                pictures.stream().filter(one -> !left.contains(one.id())).toList());
    }

    /** What is left out until somebody chooses. */
    public Set<String> proposed() {
        return Stream.concat(
                        words.stream().filter(Words::left).map(Words::id),
                        pictures.stream().filter(Shot::left).map(Shot::id))
                .collect(Collectors.toSet());
    }

    /** What was written with a step; of none with an empty id. */
    public List<Words> wordsAt(String step) {
        return words.stream().filter(one -> one.step().equals(step)).toList();
    }

    /** The pictures of a step; of none with an empty id. */
    public List<Shot> picturesAt(String step) {
        return pictures.stream().filter(one -> one.step().equals(step)).toList();
    }
}
