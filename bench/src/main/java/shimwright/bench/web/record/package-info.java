/**
 * The pages of the hand-back record and what follows it. It may touch the desk, the kit and what it is handed for paper,
 * and prints nothing that the record does not hold.
 */
@NullMarked
package shimwright.bench.web.record;

import org.jspecify.annotations.NullMarked;
