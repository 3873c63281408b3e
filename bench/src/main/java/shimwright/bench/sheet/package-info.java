/**
 * What the doors share about worksheets and acts: cases out of files and requests, answers as data, search, the
 * description for machines and the manual. It may touch the registry and what acts declare of themselves, knows no
 * sheet and no act by name, and neither pages nor store.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.sheet;
