/**
 * The order of work as pictures: the plan as boxes in rows, and who does what when as swimlanes. It may touch {@code svg}
 * alone; steps, names and times come to it as plain values.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.picture.plan;
