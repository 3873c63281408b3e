/**
 * The pages of one clearance and of several that share a drawer: readings in, packs on offer, what is predicted and
 * accepted. It may touch the desk, the kit, the sessions of the trade and the pictures; it decides nothing and keeps
 * nothing itself.
 */
@NullMarked
package shimwright.bench.web.clearance;

import org.jspecify.annotations.NullMarked;
