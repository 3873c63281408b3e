package shimwright.mechanics.quantity;

import java.util.OptionalDouble;

/**
 * A quantity as typed.
 *
 * @param si the value in the SI unit of its kind
 * @param unit the unit it was typed in, or the assumed one
 * @param u standard uncertainty in the same SI unit (a step, for temperatures), 0 or more; empty when none was typed
 */
public record Parsed(double si, Unit unit, OptionalDouble u) {}
