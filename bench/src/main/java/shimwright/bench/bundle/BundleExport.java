package shimwright.bench.bundle;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.bench.bundle.UnitBundle.BundledPicture;
import shimwright.bench.bundle.UnitBundle.PastChange;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.UnitShelf;
import shimwright.bench.picture.photo.BarePicture;
import shimwright.bench.picture.photo.Thumbnail;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.PictureStore;

/**
 * A unit of this shop as a bundle for another one.
 *
 * @param shows by the hash of each picture that goes: {@code item ID}, {@code step ID} or {@code unit}
 * @param captions true where what was written under a picture goes with it
 * @param history true where who changed the file, when and why goes with it
 * @param named true where the shop says what it calls itself
 */
public record BundleExport(Map<String, String> shows, boolean captions, boolean history, boolean named) {
    /** A picture of more bytes and a longer side than these is made small: so many still go into one bundle. */
    private static final int BYTES = 1024 * 1024;

    private static final int SIDE = 1600;

    /** The bytes of the bundle; refused where a picture cannot go, or all together are too large for another shop. */
    public Outcome<byte[]> of(Desk desk, UnitShelf.ReadFile unit) {
        List<Refusal> faults = new ArrayList<>();
        List<BundledPicture> pictures = new ArrayList<>();
        for (PictureChoice choice : PictureChoice.of(desk, unit.type())) {
            String hash = choice.picture().picture();
            if (shows.containsKey(hash)) {
                Optional<byte[]> bare = desk.pictures().find(hash).flatMap(content -> light(desk, content));
                if (bare.isEmpty()) {
                    faults.add(Refusal.of(
                            "pictures", "the picture " + choice.source() + " cannot be read", "Leave it out"));
                } else {
                    pictures.add(new BundledPicture(
                            bare.get(),
                            shows.getOrDefault(hash, ""),
                            captions ? choice.picture().caption() : ""));
                }
            }
        }
        shows.keySet().stream()
                .filter(hash -> PictureChoice.of(desk, unit.type()).stream()
                        .noneMatch(choice -> choice.picture().picture().equals(hash)))
                .forEach(hash -> faults.add(
                        Refusal.of("pictures", "no picture " + hash + " is of this unit", "Choose one of the list")));
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        byte[] bytes = BundleFile.write(new UnitBundle(
                unit.type().id(),
                unit.type().maker() + " " + unit.type().model(),
                unit.content(),
                pictures,
                named ? desk.shop().facts().getOrDefault("name", "") : "",
                history ? past(desk, unit.type().id()) : List.of()));
        return bytes.length <= UnitBundle.LARGEST
                ? Outcome.ok(bytes)
                : Outcome.refused(Refusal.of(
                        "pictures",
                        "the bundle would have more than " + UnitBundle.LARGEST / (1024 * 1024) + " MB",
                        "Choose fewer pictures"));
    }

    /** What went through here once goes through unchanged. */
    private static Optional<byte[]> light(Desk desk, byte[] content) {
        Optional<byte[]> bare = BarePicture.of(content);
        boolean large = content.length > BYTES
                && desk.pictures().check("picture", content) instanceof Outcome.Ok<PictureStore.Picture> ok
                && Math.max(ok.value().width(), ok.value().height()) > SIDE;
        return large || bare.isEmpty() ? Thumbnail.of(content, SIDE) : bare;
    }

    private static List<PastChange> past(Desk desk, String type) {
        return desk.versions().of(type).stream()
                .limit(UnitBundle.MOST_CHANGES)
                .map(version -> new PastChange(
                        version.entry().draft().at().toString(),
                        version.entry().draft().by(),
                        version.change().what(),
                        version.change().why(),
                        version.change().changes()))
                .toList();
    }
}
