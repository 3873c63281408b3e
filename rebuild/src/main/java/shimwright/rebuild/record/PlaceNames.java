package shimwright.rebuild.record;

import java.util.HashMap;
import java.util.Map;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Unit;

/**
 * What the short ids of a unit file stand for, to be read by somebody who does not know them.
 *
 * @param clearances names by id
 * @param places where shims lie, by id
 */
public record PlaceNames(Map<String, String> clearances, Map<String, String> places) {
    public PlaceNames {
        clearances = Map.copyOf(clearances);
        places = Map.copyOf(places);
    }

    /** Those of a unit. */
    public static PlaceNames of(Unit unit) {
        Map<String, String> clearances = new HashMap<>();
        Map<String, String> places = new HashMap<>();
        for (Clearance clearance : unit.type().clearances()) {
            clearances.put(clearance.id(), clearance.name());
            clearance.positions().forEach(place -> places.putIfAbsent(place.id(), place.where()));
        }
        return new PlaceNames(clearances, places);
    }

    /** A clearance; its id where the file has it no more. */
    public String clearance(String id) {
        return clearances.getOrDefault(id, id);
    }

    /** A place for shims; its id where the file has it no more. */
    public String place(String id) {
        return places.getOrDefault(id, id);
    }
}
