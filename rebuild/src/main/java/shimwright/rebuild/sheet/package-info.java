/**
 * Worksheets for the things of a job: each opened with what unit and job know of it, what it still asks, and what it says in a line.
 * May touch unit, job, bench and the worksheets; keeps nothing itself.
 */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.sheet;
