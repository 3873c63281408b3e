/**
 * The command line: its words and options. It may touch the worksheets, the unit files and the remarks that a drawing
 * makes on them, and knows neither pages nor store.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.command;
