/**
 * The command line: its words and options. It may touch the worksheets and the unit files, and knows neither pages nor store.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.command;
