/**
 * The pages of what a job may cost, what its owner says to that, and what it came to. They may touch the desk and the kit of the
 * pages; they reckon nothing themselves.
 */
@NullMarked
package shimwright.bench.web.money;

import org.jspecify.annotations.NullMarked;
