/** The command line. */
@org.jspecify.annotations.NullMarked
package shimwright.bench.command;
