/**
 * The worksheets as forms with their pictures, derived from the registry. It may touch the kit, the plots and what the
 * doors share about worksheets, and knows no sheet by name and nothing of a job but that it is the one on the page.
 */
@NullMarked
package shimwright.bench.web.sheet;

import org.jspecify.annotations.NullMarked;
