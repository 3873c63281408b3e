/**
 * What lies on the bench as one immutable value: a job with the unit file it stands on, the shop, sessions and clocks, made
 * once for each state of the log. May touch job, unit, plan and clearance; decides nothing and keeps nothing.
 */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.workbench;
