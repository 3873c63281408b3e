/**
 * The words of the pages in the language and the usage that somebody chose. It knows templates as text and values, and no
 * page, job or unit.
 */
@NullMarked
package shimwright.bench.web.words;

import org.jspecify.annotations.NullMarked;
