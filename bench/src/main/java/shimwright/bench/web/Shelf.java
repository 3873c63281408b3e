package shimwright.bench.web;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType;

/** The unit types this shop knows, by id; resolved units are kept ready. */
public final class Shelf {
    private final Supplier<? extends Collection<UnitType>> known;
    private final Map<String, Unit> units = new ConcurrentHashMap<>();

    private volatile @Nullable Map<String, UnitType> types;

    /**
     * A shelf that asks for its unit types when they are first wanted.
     *
     * @param known gives the same unit types each time
     */
    public Shelf(Supplier<? extends Collection<UnitType>> known) {
        this.known = known;
    }

    private Map<String, UnitType> byId() {
        Map<String, UnitType> asked = types;
        if (asked == null) {
            asked = new LinkedHashMap<>();
            for (UnitType type : known.get()) {
                asked.put(type.id(), type);
            }
            types = asked;
        }
        return asked;
    }

    public Collection<UnitType> types() {
        return byId().values();
    }

    public Optional<UnitType> type(String id) {
        return Optional.ofNullable(byId().get(id));
    }

    /** The unit of a type and variant; empty where either is not known here. */
    public Optional<Unit> unit(String type, String variant) {
        return type(type)
                .filter(known -> known.variants().containsKey(variant))
                .map(known -> units.computeIfAbsent(type + "/" + variant, key -> known.resolve(variant)));
    }
}
