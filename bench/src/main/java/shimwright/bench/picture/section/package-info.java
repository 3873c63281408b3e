/**
 * The section drawing of a unit: its shafts, parts and castings as the unit file gives them, the state of a job as
 * plain values, and the dimension chain of a clearance under it. It may touch {@code svg}, the quantities and the
 * model of the unit, and never a job or the store.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.picture.section;
