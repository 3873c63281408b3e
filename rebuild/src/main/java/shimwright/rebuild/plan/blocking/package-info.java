/**
 * What the section geometry says about the order: what is trapped behind what, compared with the unit file's steps. It may touch unit
 * files and the plan's plain values, and never a job.
 */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.plan.blocking;
