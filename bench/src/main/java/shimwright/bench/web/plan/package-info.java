/**
 * The pages of the order of work: the plan, its finishing day, more people, getting back to something, a plan from a
 * strip-down. It may touch the desk, the kit, what the trade says of plans and finished pictures, and orders no steps
 * itself.
 */
@NullMarked
package shimwright.bench.web.plan;

import org.jspecify.annotations.NullMarked;
