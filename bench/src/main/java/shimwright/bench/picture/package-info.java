/** Drawings as SVG text: the section of a unit, and the plots of readings, limits, packs and budgets. */
@org.jspecify.annotations.NullMarked
package shimwright.bench.picture;
