/**
 * What every page needs: the form as it was typed, the act made of it, the answer, and numbers as the person reads
 * them. It may touch the desk, the guard, the paired devices, the templates and the section drawing, and knows no
 * single page.
 */
@NullMarked
package shimwright.bench.web.kit;

import org.jspecify.annotations.NullMarked;
