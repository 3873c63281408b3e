package shimwright.bench.web;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import shimwright.rebuild.unit.Unit;
import shimwright.rebuild.unit.UnitType;

/** The unit types this shop knows, by id; resolved units are kept ready. */
public final class Shelf {
    private final Map<String, UnitType> types = new LinkedHashMap<>();
    private final Map<String, Unit> units = new ConcurrentHashMap<>();

    public Shelf(Collection<UnitType> known) {
        known.forEach(type -> types.put(type.id(), type));
    }

    public Collection<UnitType> types() {
        return types.values();
    }

    public Optional<UnitType> type(String id) {
        return Optional.ofNullable(types.get(id));
    }

    /** The unit of a type and variant; empty where either is not known here. */
    public Optional<Unit> unit(String type, String variant) {
        return type(type)
                .filter(known -> known.variants().containsKey(variant))
                .map(known -> units.computeIfAbsent(type + "/" + variant, key -> known.resolve(variant)));
    }
}
