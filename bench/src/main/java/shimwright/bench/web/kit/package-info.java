/**
 * What every page needs: the form as it was typed, the act made of it, the answer, and numbers as the person reads them.
 * It may touch the desk and the templates, knows no single page, and is the only room of the pages that hands acts to the desk.
 */
@NullMarked
package shimwright.bench.web.kit;

import org.jspecify.annotations.NullMarked;
