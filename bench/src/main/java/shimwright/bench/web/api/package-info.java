/**
 * The doors for programs: worksheets, acts by name, and how jobs and shop stand, as JSON. It may touch the desk, the kit and what the
 * doors share about worksheets, and no page.
 */
@NullMarked
package shimwright.bench.web.api;

import org.jspecify.annotations.NullMarked;
