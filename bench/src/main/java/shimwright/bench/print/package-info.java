/** Paper: PDF from the same templates as the pages. */
@org.jspecify.annotations.NullMarked
package shimwright.bench.print;
