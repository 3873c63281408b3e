package shimwright.rebuild.unit.model;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import shimwright.rebuild.unit.model.Clearance.Heating;
import shimwright.rebuild.unit.model.Clearance.Length;
import shimwright.rebuild.unit.model.UnitType.Material;

/**
 * Growth of a closed loop at working heat: Σ sign × nominal × expansion × hot rise, each length with the material and the hot
 * state of its own part, so that a loop through two castings grows by both.
 */
public final class LoopGrowth {
    /** A growth below this is not worth a line, m. */
    private static final double LEAST = 1e-6;

    private LoopGrowth() {}

    /** The material of a length: its own, else that of its item; empty where neither is said or variants differ. */
    public static Optional<Material> material(Length length, UnitType type) {
        List<String> ids = length.material().isEmpty()
                ? type.items().stream()
                        .filter(item -> !length.item().isEmpty() && item.id().equals(length.item()))
                        .map(Item::material)
                        .distinct()
                        .toList()
                : List.of(length.material());
        return ids.size() == 1 ? Optional.ofNullable(type.materials().get(ids.get(0))) : Optional.empty();
    }

    /**
     * What becomes of a clearance by the lengths of its loop, signed, m.
     *
     * @return empty without a loop, for a distance, which is measured against parts that grow themselves, or where the
     *     material of a length is not known
     */
    public static OptionalDouble of(Clearance clearance, UnitType type) {
        if (clearance.loop().isEmpty() || clearance.sense() == Clearance.Sense.DISTANCE) {
            return OptionalDouble.empty();
        }
        double growth = 0;
        for (Length length : clearance.loop()) {
            Optional<Material> material = material(length, type);
            if (material.isEmpty()) {
                return OptionalDouble.empty();
            }
            growth += length.sign()
                    * length.nominal()
                    * material.get().expansion()
                    * material.get().hotRise();
        }
        return OptionalDouble.of(growth);
    }

    /** The clearance with the growth of its loop, where the file states none. */
    static Clearance stated(Clearance c, UnitType type) {
        double growth = c.growth() != 0 ? 0 : of(c, type).orElse(0);
        if (Math.abs(growth) < LEAST) {
            return c;
        }
        String note = c.growthNote().isEmpty() ? "By the lengths of its loop and their materials." : c.growthNote();
        return c.heated(new Heating(growth, note));
    }
}
