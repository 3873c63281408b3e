package shimwright.bench.bundle;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import shimwright.bench.desk.Desk;
import shimwright.rebuild.inspect.JudgedPiece;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.PartPhoto;
import shimwright.rebuild.job.UnitPicture;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.UnitType;

/**
 * A picture that could go into a bundle.
 *
 * @param picture by hash, with what it shows as far as that is known
 * @param source where it was taken, in words
 * @param proposed true where nothing private is to be expected in it: it was taken of a part or at a step
 */
public record PictureChoice(UnitPicture picture, String source, boolean proposed) {
    /** Jobs that are looked through, the newest first. */
    private static final int JOBS = 100;

    private static final String STEP = "step ";

    /** Every picture of a unit type: those that go with it already, then those of its jobs, the newest first; each once. */
    public static List<PictureChoice> of(Desk desk, UnitType type) {
        Map<String, PictureChoice> all = new LinkedHashMap<>();
        for (UnitPicture picture : desk.shop().unitPictures(type.id())) {
            String from = picture.from().isEmpty() ? "another shop" : picture.from();
            all.put(picture.picture(), new PictureChoice(picture, "from " + from, true));
        }
        Set<String> steps = type.steps().stream().map(Step::id).collect(Collectors.toSet());
        Set<String> items = type.items().stream().map(Item::id).collect(Collectors.toSet());
        for (Job job : desk.jobs(type.id(), JOBS)) {
            List<PictureChoice> ofJob = new ArrayList<>();
            job.pictures()
                    .forEach((about, pictures) -> pictures.forEach(said -> {
                        String shows = shows(job, about, said.at(), steps, items);
                        ofJob.add(new PictureChoice(
                                new UnitPicture(
                                        said.what().picture(),
                                        shows,
                                        said.what().caption(),
                                        ""),
                                "job " + job.opened().number()
                                        + (about.equals("job")
                                                ? ""
                                                : ", " + (about.equals(PartPhoto.STRIP) ? "strip-down" : about)),
                                !shows.equals(UnitPicture.UNIT)));
                    }));
            ofJob.forEach(one -> all.putIfAbsent(one.picture().picture(), one));
        }
        return all.values().stream().limit(UnitBundle.MOST_PICTURES).toList();
    }

    /** Of the step it was taken at, or of the part that it shows. */
    private static String shows(Job job, String about, Instant at, Set<String> steps, Set<String> items) {
        if (about.startsWith(STEP) && steps.contains(about.substring(STEP.length()))) {
            return UnitPicture.step(about.substring(STEP.length()));
        }
        return PartPhoto.shows(job, about, at).stream()
                .map(JudgedPiece::item)
                .filter(items::contains)
                .findFirst()
                .map(UnitPicture::item)
                .orElse(UnitPicture.UNIT);
    }
}
