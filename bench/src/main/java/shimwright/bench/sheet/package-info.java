/**
 * What the doors share about worksheets: cases out of files and requests, answers as data, search, the description for
 * machines and the manual. Every sheet is read from the registry; none is known by name here.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.sheet;
