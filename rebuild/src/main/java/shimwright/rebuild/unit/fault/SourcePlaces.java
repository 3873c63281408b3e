package shimwright.rebuild.unit.fault;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Set;

/** Where each record of a unit file stands in its text, and whether it was read without a problem. */
public final class SourcePlaces {
    private record Spot(Place start, Map<String, Place> keys, boolean sound) {}

    private final IdentityHashMap<Record, Spot> spots = new IdentityHashMap<>();

    /** Keeps where a record and its keys stand, and whether it was read without a problem. */
    public void put(Record record, Place start, Map<String, Place> keys, boolean sound) {
        spots.put(record, new Spot(start, Collections.unmodifiableMap(keys), sound));
    }

    /** True where the record itself and all in it were read without a problem. */
    public boolean sound(Record record) {
        Spot spot = spots.get(record);
        return spot != null && spot.sound();
    }

    /** Where the record stands. */
    public Place of(Record record) {
        Spot spot = spots.get(record);
        return spot == null ? Place.START : spot.start();
    }

    /** Where the value of a key stands; the record itself where the key is absent. */
    public Place of(Record record, String key) {
        Spot spot = spots.get(record);
        return spot == null ? Place.START : spot.keys().getOrDefault(key, spot.start());
    }

    /** The keys of a record that are written in the file. */
    public Set<String> written(Record record) {
        Spot spot = spots.get(record);
        return spot == null ? Set.of() : spot.keys().keySet();
    }
}
