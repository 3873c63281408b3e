/**
 * Paper: PDF from the same templates as the pages. It is handed a finished page as text and may touch the library that
 * sets it and the characters that paper can show, and neither pages nor store.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.print;
