package shimwright.rebuild.unit.sense;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.unit.model.VariantFilter;

/** What of a unit type holds for each of its variants, worked out once for all checks. */
final class VariantTypes {
    private final UnitType type;
    private final Map<String, VariantFilter> filters = new HashMap<>();
    private final Map<String, UnitType> types = new HashMap<>();

    VariantTypes(UnitType type) {
        this.type = type;
    }

    private VariantFilter filter(String variant) {
        return filters.computeIfAbsent(variant, one -> new VariantFilter(type, one));
    }

    /** The ids of a variant by list. */
    Map<String, Set<String>> ids(String variant) {
        return filter(variant).ids();
    }

    /** The unit type with only what holds for a variant. */
    UnitType type(String variant) {
        return types.computeIfAbsent(variant, one -> filter(one).filtered());
    }
}
