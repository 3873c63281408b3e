package shimwright.rebuild.record;

import java.util.HashMap;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shimwright.rebuild.inspect.JudgedPiece;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Unit;

/**
 * What the short ids of a unit file stand for, to be read by somebody who does not know them.
 *
 * @param clearances names by id
 * @param places where shims lie, by id
 * @param parts single parts by id
 */
public record PlaceNames(Map<String, String> clearances, Map<String, String> places, Map<String, String> parts) {
    public PlaceNames {
        clearances = Map.copyOf(clearances);
        places = Map.copyOf(places);
        parts = Map.copyOf(parts);
    }

    /** Those of a unit. */
    public static PlaceNames of(Unit unit) {
        Map<String, String> clearances = new HashMap<>();
        Map<String, String> places = new HashMap<>();
        for (Clearance clearance : unit.type().clearances()) {
            clearances.put(clearance.id(), clearance.name());
            clearance.positions().forEach(place -> places.putIfAbsent(place.id(), place.where()));
        }
        Map<String, String> parts = new HashMap<>();
        unit.type()
                .items()
                .forEach(item ->
                        JudgedPiece.parts(item).forEach(part -> parts.put(part, JudgedPiece.named(unit, part))));
        return new PlaceNames(clearances, places, parts);
    }

    /** A clearance; its id where the file has it no more. */
    public String clearance(String id) {
        return clearances.getOrDefault(id, id);
    }

    /** A piece of one part or of several; its id where the file has it no more. */
    public String piece(String id) {
        return Stream.of(id.split("\\+"))
                .map(part -> parts.getOrDefault(part, part))
                .collect(Collectors.joining(" with "));
    }

    /** A place for shims; its id where the file has it no more. */
    public String place(String id) {
        return places.getOrDefault(id, id);
    }
}
