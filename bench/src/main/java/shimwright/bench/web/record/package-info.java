/**
 * The pages of the hand-back record and what follows it. It may touch the desk, the kit, the record as data, the
 * section and the plots of the clearance pages, and prints nothing that the record does not hold.
 */
@NullMarked
package shimwright.bench.web.record;

import org.jspecify.annotations.NullMarked;
