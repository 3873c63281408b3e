/**
 * The pages of one job from intake to the last step: identification, readings against limits, orders, the step at
 * hand. It may touch the desk, the kit, what the trade says of the job, the pictures and the words of the plan pages;
 * what is typed becomes an act and nothing else.
 */
@NullMarked
package shimwright.bench.web.job;

import org.jspecify.annotations.NullMarked;
