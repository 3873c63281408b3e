package shimwright.bench.web.shop;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import shimwright.bench.picture.section.SectionState;
import shimwright.bench.web.kit.Drawings;
import shimwright.bench.web.kit.Show;
import shimwright.rebuild.unit.edit.FileSection;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType;

/** The section of a unit type beside its pages and forms: all of it put together, what the form is about marked in it. */
final class UnitDrawings {
    private static final Set<String> DRAWN = Set.of(FileSection.ONCE, "items", "gears", "bearings", "clearances");

    private UnitDrawings() {}

    /** True where entries of a section are seen in the drawing. */
    static boolean shows(FileSection section) {
        return DRAWN.contains(section.name()) || !section.path().isEmpty();
    }

    /**
     * The unit with an entry of a section marked in it: a part as in the hand, the loop of a clearance.
     *
     * @param entry that the form is about, by its keys; empty for none
     */
    static Optional<Drawings> of(
            UnitType type,
            Function<String, Optional<Unit>> resolved,
            FileSection section,
            Map<String, Object> entry,
            Show show) {
        return shows(section)
                ? Optional.of(of(type, resolved, section.name(), section.named(entry), show))
                : Optional.empty();
    }

    /**
     * The unit with one thing marked in it, in the first variant that has it.
     *
     * @param resolved the unit in a variant of the type
     * @param kind of thing: {@code items} or {@code clearances}; anything else marks nothing
     * @param id of the thing; empty for none
     */
    static Drawings of(UnitType type, Function<String, Optional<Unit>> resolved, String kind, String id, Show show) {
        List<Unit> units = type.variants().keySet().stream()
                .flatMap(variant -> resolved.apply(variant).stream())
                .toList();
        Unit unit = units.stream()
                .filter(one -> ids(one, kind).contains(id))
                .findFirst()
                .orElseGet(() -> units.get(0));
        Set<String> items = new HashSet<>();
        unit.type().items().stream().filter(item -> !item.trial()).map(Item::id).forEach(items::add);
        SectionState state = SectionState.EMPTY.withFitted(items);
        if (ids(unit, kind).contains(id)) {
            state = kind.equals("items") ? state.withInHand(Set.of(id)) : state.withClearance(id);
        }
        return Drawings.of("unit " + type.id(), unit, state, "unit", show);
    }

    private static Set<String> ids(Unit unit, String kind) {
        Set<String> ids = new HashSet<>();
        if (kind.equals("items")) {
            unit.type().items().forEach(item -> ids.add(item.id()));
        } else if (kind.equals("clearances")) {
            unit.type().clearances().forEach(clearance -> ids.add(clearance.id()));
        }
        return ids;
    }
}
