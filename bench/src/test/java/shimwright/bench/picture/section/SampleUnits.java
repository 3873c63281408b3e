package shimwright.bench.picture.section;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.GearPair;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Section;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitKeys;
import shimwright.rebuild.unit.model.UnitType;

/** The shipped demo unit, and small units of our own. */
public final class SampleUnits {
    public static final Unit A = unit("A");

    private SampleUnits() {}

    public static Unit unit(String variant) {
        return type("ambleholt-l5-74").resolve(variant);
    }

    /** A shipped unit file. */
    public static UnitType type(String id) {
        try (InputStream in = UnitFiles.class.getResourceAsStream("/units/" + id + ".yaml")) {
            byte[] bytes = Objects.requireNonNull(in).readAllBytes();
            return UnitFiles.read(id, bytes).outcome().orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static Set<String> allItems(Unit unit) {
        return unit.type().items().stream()
                .filter(i -> !i.trial())
                .map(Item::id)
                .collect(Collectors.toSet());
    }

    public static Clearance clearance(String id) {
        return A.type().clearances().stream()
                .filter(c -> c.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** A unit that is nothing but a drawing. */
    public static Unit small(List<Item> items, Section section, List<GearPair> gears) {
        UnitType t = A.type();
        UnitType type = new UnitType(
                new UnitKeys.Identity(
                        t.format(),
                        t.id(),
                        "Own",
                        "Sample",
                        t.about(),
                        true,
                        t.mass(),
                        t.ratedTorque(),
                        t.fluid(),
                        t.variants(),
                        List.of()),
                t.materials(),
                new UnitKeys.Bench(Map.of(), Map.of()),
                new UnitKeys.Parts(
                        items, section, gears, List.of(), List.of(), List.of(), List.of(), List.of(), List.of()),
                new UnitKeys.Setting(Map.of(), List.of(), List.of()),
                new UnitKeys.Renewal(List.of(), List.of(), List.of()),
                new UnitKeys.Build(List.of(), List.of(), List.of(), List.of(), List.of(), List.of()),
                List.of(),
                new UnitKeys.Handling(Map.of(), Map.of(), 0, Map.of()),
                Map.of(),
                List.of(),
                List.of());
        return new Unit(type, "A");
    }

    public static Item item(String id, String name, Item.Shape shape, List<Double> along, List<Double> diameters) {
        return new Item(id, name, "", shape, "s", along, diameters, List.of(), 1, false, false, false, "", Set.of());
    }

    public static Section oneShaft(List<List<Double>> steps) {
        return new Section(
                List.of(new Section.Shaft("s", "shaft", Section.Axis.X, List.of(0.0, 0.0), steps, List.of(), "", true)),
                List.of());
    }
}
