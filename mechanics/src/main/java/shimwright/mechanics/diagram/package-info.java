/**
 * Pictures as data: curves, bars, limits and outlines with their units; how they are drawn is no business of a
 * sheet. May touch quantities only.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.diagram;
