package shimwright.mechanics.working;

import shimwright.mechanics.quantity.Kind;

/**
 * One line of working.
 *
 * @param symbol what is computed, in words or a letter: {@code wanted thickness}
 * @param expression how: {@code trial + play − wanted play}
 * @param value in the SI unit of the kind, finite
 * @param kind what it measures
 * @param source where the formula or value stands; empty for plain arithmetic
 */
public record Line(String symbol, String expression, double value, Kind kind, String source) {}
