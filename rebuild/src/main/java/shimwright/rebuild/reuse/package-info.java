/**
 * Reuse, rework or replace by what it costs to be wrong: what stands beside a verdict, and what belongs together when one of it is
 * replaced. May touch unit, job, findings and the way back of the plan; decides nothing.
 */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.reuse;
