package shimwright.bench.picture.part;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.bench.picture.part.PartSize.Origin;
import shimwright.bench.picture.part.PartSize.Place;

/** The sizes of a part that are known; what is not known is drawn in a usual proportion and never written. */
final class PartSizes {
    private final Map<Place, PartSize> known = new EnumMap<>(Place.class);

    PartSizes with(Place place, double value, Origin origin) {
        if (value > 0 && Double.isFinite(value)) {
            known.putIfAbsent(place, new PartSize(place, value, origin));
        }
        return this;
    }

    Optional<PartSize> get(Place place) {
        return Optional.ofNullable(known.get(place));
    }

    boolean has(Place... places) {
        return List.of(places).stream().allMatch(known::containsKey);
    }

    /** The size where it is known, else the one that the shape is drawn with, m. */
    double or(Place place, double usual) {
        PartSize size = known.get(place);
        return size == null ? usual : size.value();
    }

    List<PartSize> all() {
        return List.copyOf(known.values());
    }
}
