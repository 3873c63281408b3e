/**
 * The pages of one job from intake to the last step: identification, readings against limits, orders, the step at hand.
 * It may touch the desk, the kit and finished drawings; what is typed becomes an act and nothing else.
 */
@NullMarked
package shimwright.bench.web.job;

import org.jspecify.annotations.NullMarked;
