package shimwright.bench.web.record;

import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.picture.photo.Thumbnail;
import shimwright.bench.web.kit.MarkedPicture;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.job.PictureStore;
import shimwright.rebuild.record.HandBackRecord;

/**
 * A picture of the record.
 *
 * @param place among all of the job, from 1
 * @param of the picture with what was drawn on it
 * @param source address of its content: of the small picture on a page, all of it on paper; empty where it is damaged
 * @param wide on paper, px; 0 on a page
 * @param high on paper, px; 0 on a page
 */
public record RecordPicture(int place, MarkedPicture of, String source, long wide, long high) {
    /** Two marked pictures stand beside each other on paper, four on which nobody drew; px. */
    private static final int MARKED = 320;

    private static final int BARE = 152;

    private static final int FRONT = 150;

    /** Dots of a picture for each px of paper, so that it is sharp in print. */
    private static final int SHARP = 2;

    /** How large it stands on paper; empty on a page. */
    public String box() {
        return wide == 0 ? "" : "width: " + wide + "px; height: " + high + "px";
    }

    /** How large it stands on the first page on paper: four are beside each other; empty on a page. */
    public String inFront() {
        double less = wide == 0 ? 1 : Math.min(1, Math.min(FRONT / (double) wide, FRONT / (double) high));
        return wide == 0 ? "" : "width: " + Math.round(less * wide) + "px; height: " + Math.round(less * high) + "px";
    }

    /** How wide it stands with its words on paper; empty on a page. */
    public String room() {
        return wide == 0 ? "" : "width: " + (of.marked() ? MARKED : BARE) + "px";
    }

    /** Those of a job as a page shows them. */
    static List<RecordPicture> onPage(JobOnBench bench) {
        List<RecordPicture> pictures = new ArrayList<>();
        for (Said<Entry.PictureAdded> said : HandBackRecord.pictures(bench.job())) {
            pictures.add(new RecordPicture(
                    pictures.size() + 1,
                    MarkedPicture.of(bench.job(), bench.unit(), said),
                    "/picture/" + said.what().picture() + "/small",
                    0,
                    0));
        }
        return pictures;
    }

    /** Those of a job with all of their content, as paper needs it. */
    static List<RecordPicture> onPaper(JobOnBench bench, PictureStore store) {
        List<RecordPicture> pictures = new ArrayList<>();
        for (Said<Entry.PictureAdded> said : HandBackRecord.pictures(bench.job())) {
            boolean marked = !bench.job().marksOn(said).isEmpty();
            int side = marked ? MARKED : BARE;
            Optional<byte[]> small =
                    store.find(said.what().picture()).flatMap(content -> Thumbnail.of(content, SHARP * side));
            double tall = small.map(Thumbnail::tall)
                    .flatMap(found -> found.isPresent() ? Optional.of(found.getAsDouble()) : Optional.empty())
                    .orElse(1.0);
            double wide = tall > 1 ? side / tall : side;
            pictures.add(new RecordPicture(
                    pictures.size() + 1,
                    MarkedPicture.of(bench.job(), bench.unit(), said, wide),
                    small.map(jpeg -> "data:image/jpeg;base64,"
                                    + Base64.getEncoder().encodeToString(jpeg))
                            .orElse(""),
                    Math.round(wide),
                    Math.round(wide * tall)));
        }
        return pictures;
    }
}
