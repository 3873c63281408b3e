package shimwright.bench.web.kit;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.job.UnitPicture;

/** The pictures that go with a unit type, where its parts and steps are shown. */
public final class UnitPictures {
    private UnitPictures() {}

    /** Those of a step and of what is put in or taken out with it. */
    public static List<UnitPicture> ofStep(Shop shop, String type, String step, Collection<String> items) {
        return about(
                shop,
                type,
                Stream.concat(Stream.of(UnitPicture.step(step)), items.stream().map(UnitPicture::item)));
    }

    /** Those of some parts. */
    public static List<UnitPicture> ofItems(Shop shop, String type, Collection<String> items) {
        return about(shop, type, items.stream().map(UnitPicture::item));
    }

    private static List<UnitPicture> about(Shop shop, String type, Stream<String> places) {
        Set<String> about = places.collect(Collectors.toSet());
        return shop.unitPictures(type).stream()
                .filter(picture -> about.contains(picture.about()))
                .toList();
    }

    /** Where a picture comes from, in words. */
    public static String from(UnitPicture picture) {
        return picture.from().isEmpty() ? "from another shop" : "from another shop, " + picture.from();
    }
}
