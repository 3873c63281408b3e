/** The program: store, web, print and command line, joined by Main. */
@org.jspecify.annotations.NullMarked
package shimwright.bench;
