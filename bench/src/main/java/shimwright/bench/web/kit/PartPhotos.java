package shimwright.bench.web.kit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.JobOnBench;
import shimwright.rebuild.inspect.JudgedPiece;
import shimwright.rebuild.job.PartPhoto;
import shimwright.rebuild.job.UnitPicture;
import shimwright.rebuild.unit.model.UnitType;

/**
 * The photographs of the parts of a unit that are at hand, each shown once: those of this box first, then those that go with the unit
 * type, then those of boxes that were handed back.
 *
 * @param own of this job, by item or single piece
 * @param ofType that go with the unit type
 * @param earlier of earlier jobs, by item or single piece
 */
public record PartPhotos(
        Map<String, List<PartPhoto>> own, List<UnitPicture> ofType, Map<String, List<PartPhoto>> earlier) {
    /** More beside one drawing nobody looks through. */
    private static final int MOST = 5;

    /** Those that a job can show. */
    public static PartPhotos of(JobOnBench bench) {
        return new PartPhotos(
                PartPhoto.of(bench.job()),
                bench.shop().unitPictures(bench.unit().type().id()),
                bench.earlier().photos());
    }

    /** Those of a unit type outside of any job. */
    public static PartPhotos of(Desk desk, UnitType type) {
        return new PartPhotos(
                Map.of(),
                desk.shop().unitPictures(type.id()),
                desk.lessons(type.id()).memories().photos());
    }

    /** Those of an item and of all its pieces. */
    public List<PartPhoto> ofItem(String item) {
        return shown(item, pieces(own, item), pieces(earlier, item));
    }

    /** Those of a single piece: of itself, and of what is not said to be another of its pieces. */
    public List<PartPhoto> ofPart(String part) {
        String item = JudgedPiece.item(part);
        List<PartPhoto> here = new ArrayList<>(own.getOrDefault(part, List.of()));
        if (!item.equals(part)) {
            here.addAll(own.getOrDefault(item, List.of()));
        }
        return shown(item, here, pieces(earlier, item));
    }

    private static List<PartPhoto> pieces(Map<String, List<PartPhoto>> photos, String item) {
        return photos.entrySet().stream()
                .filter(of -> JudgedPiece.item(of.getKey()).equals(item))
                .map(Map.Entry::getValue)
                .flatMap(Collection::stream)
                .toList();
    }

    private List<PartPhoto> shown(String item, List<PartPhoto> here, List<PartPhoto> before) {
        Map<String, PartPhoto> shown = new LinkedHashMap<>();
        here.forEach(photo -> shown.putIfAbsent(photo.picture(), photo));
        ofType.stream()
                .filter(picture -> picture.about().equals(UnitPicture.item(item)))
                .map(picture -> new PartPhoto(picture.picture(), picture.caption(), UnitPictures.from(picture)))
                .forEach(photo -> shown.putIfAbsent(photo.picture(), photo));
        before.forEach(photo -> shown.putIfAbsent(photo.picture(), photo));
        return shown.values().stream().limit(MOST).toList();
    }
}
