package shimwright.rebuild.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import shimwright.rebuild.inspect.JudgedPiece;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.job.PartPhoto;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Unit;

/**
 * A picture that the front page of a record shows.
 *
 * @param place among all pictures of the job, from 1
 * @param label what it is of, and whether it shows it before or after; may be empty
 */
public record FrontPicture(int place, String label) {
    private static final int MOST = 4;

    private record Seen(int place, String of, boolean after) {}

    /**
     * Four at most: the same place before and after where both were taken, else those that were drawn on, then the first ones.
     */
    public static List<FrontPicture> of(Job job, Unit unit) {
        List<Said<Entry.PictureAdded>> all = HandBackRecord.pictures(job);
        Map<String, List<Seen>> byPlace = new LinkedHashMap<>();
        for (int i = 0; i < all.size(); i++) {
            for (String of : of(job, unit, all.get(i))) {
                byPlace.computeIfAbsent(of, o -> new ArrayList<>()).add(new Seen(i + 1, of, after(job, all.get(i))));
            }
        }
        List<FrontPicture> shown = new ArrayList<>();
        byPlace.forEach((of, seen) -> pair(seen).stream()
                .filter(one -> shown.size() < MOST)
                .filter(one -> shown.stream().noneMatch(before -> before.place() == one.place()))
                .forEach(one -> shown.add(new FrontPicture(
                        one.place(), (one.after() ? "After" : "Before") + (of.isEmpty() ? "" : ": " + of)))));
        if (shown.isEmpty()) {
            Stream.of(true, false).forEach(drawn -> {
                for (int i = 0; i < all.size(); i++) {
                    if (shown.size() < MOST && job.marksOn(all.get(i)).isEmpty() != drawn) {
                        shown.add(new FrontPicture(i + 1, ""));
                    }
                }
            });
        }
        return List.copyOf(shown);
    }

    /** The first before and the last after; nothing where one of them is not there. */
    private static List<Seen> pair(List<Seen> seen) {
        List<Seen> before = seen.stream().filter(one -> !one.after()).toList();
        List<Seen> after = seen.stream().filter(Seen::after).toList();
        return before.isEmpty() || after.isEmpty() ? List.of() : List.of(before.get(0), after.get(after.size() - 1));
    }

    /** Pictures of a step show it after, those of the strip-down and of a part before; one of the unit goes by when it was taken. */
    private static boolean after(Job job, Said<Entry.PictureAdded> picture) {
        String about = picture.what().about();
        return about.startsWith("step ")
                || (about.equals("job")
                        && job.done().values().stream().anyMatch(done -> done.number() < picture.number()));
    }

    /** What a picture shows, by name; one empty name for the unit as a whole. */
    private static List<String> of(Job job, Unit unit, Said<Entry.PictureAdded> picture) {
        String about = picture.what().about();
        List<String> items = about.startsWith("step ")
                ? unit.findStep(about.substring("step ".length())).stream()
                        .flatMap(step -> Stream.concat(step.installs().stream(), step.builds().stream()))
                        .toList()
                : PartPhoto.shows(job, about, picture.at()).stream()
                        .map(JudgedPiece::item)
                        .toList();
        List<String> names = unit.type().items().stream()
                .filter(item -> items.contains(item.id()))
                .map(Item::name)
                .toList();
        return names.isEmpty() && about.equals("job") ? List.of("") : names;
    }
}
