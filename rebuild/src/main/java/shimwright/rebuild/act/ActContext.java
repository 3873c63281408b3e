package shimwright.rebuild.act;

import java.time.Instant;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.workbench.ShopFloor;

/**
 * What is around an act.
 *
 * @param floor the shop and its unit files
 * @param units in which the person types bare numbers and reads sentences
 * @param now the moment
 */
public record ActContext(ShopFloor floor, UnitSystem units, Instant now) {}
