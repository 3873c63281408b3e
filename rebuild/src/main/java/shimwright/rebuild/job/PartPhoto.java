package shimwright.rebuild.job;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shimwright.rebuild.job.Job.Said;

/**
 * A photograph of a part.
 *
 * @param picture hash of its content
 * @param caption what somebody wrote under it; may be empty
 * @param from where it was taken, in words
 */
public record PartPhoto(String picture, String caption, String from) {
    /** What pictures of a strip-down are about; each shows what came off last before it. */
    public static final String STRIP = "strip";

    private static final String PART = "part ";

    /** Those that a job has, by the item or single piece that they show. */
    public static Map<String, List<PartPhoto>> of(Job job) {
        Map<String, List<PartPhoto>> photos = new LinkedHashMap<>();
        job.pictures()
                .forEach((about, pictures) -> pictures.forEach(said -> shows(job, about, said.at())
                        .forEach(part -> photos.computeIfAbsent(part, p -> new ArrayList<>())
                                .add(photo(job, about, said)))));
        return photos;
    }

    private static PartPhoto photo(Job job, String about, Said<Entry.PictureAdded> said) {
        String where = about.equals(STRIP) ? "at the strip-down" : "at the inspection";
        return new PartPhoto(
                said.what().picture(),
                said.what().caption(),
                "job " + job.opened().number() + ", " + where);
    }

    /**
     * The items or single pieces that a picture of a job shows.
     *
     * @param about what it is about, as its entry says
     * @param at when it was taken
     * @return empty where it shows the unit or a step
     */
    public static List<String> shows(Job job, String about, Instant at) {
        if (about.startsWith(PART)) {
            return List.of(about.substring(PART.length()));
        }
        if (!about.equals(STRIP)) {
            return List.of();
        }
        return job.takenOff().stream()
                .filter(said -> !said.at().isAfter(at))
                .reduce((earlier, later) -> later)
                .map(said -> said.what().items())
                .orElse(List.of());
    }
}
