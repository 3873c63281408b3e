/**
 * The doors for programs: worksheets, acts by name, and how jobs and shop stand, as JSON. It may touch the desk with
 * what lies on it, the kit and what the doors share about worksheets and acts, and no page.
 */
@NullMarked
package shimwright.bench.web.api;

import org.jspecify.annotations.NullMarked;
