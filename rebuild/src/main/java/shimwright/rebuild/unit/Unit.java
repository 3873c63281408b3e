package shimwright.rebuild.unit;

/**
 * A unit type resolved for one variant: everything of other variants is gone, every reference holds, nothing optional
 * is left.
 *
 * @param type the unit type with only what holds for this variant
 * @param variant the variant's letter
 */
public record Unit(UnitType type, String variant) {}
