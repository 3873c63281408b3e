/**
 * Paper: PDF from the same templates as the pages. It may touch the records as data and the library that sets them, and neither pages
 * nor store.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.print;
