/**
 * The worksheets as forms with their pictures, derived from the registry. It may touch the kit and what the doors share about
 * worksheets, and knows no sheet by name and no job.
 */
@NullMarked
package shimwright.bench.web.sheet;

import org.jspecify.annotations.NullMarked;
