/**
 * Drawings as SVG text, in four rooms: {@code svg} the pen and letters, {@code plot} readings and limits, {@code plan} the
 * order of work, {@code section} the unit itself. The last three know the first and not each other; none knows a page or the
 * store, each takes finished values and gives back text.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.picture;
