/** Pictures as data: curves, bars, limits and outlines with their units. How they are drawn is no business of a sheet. */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.diagram;
