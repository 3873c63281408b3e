/**
 * The program: store, web, print and command line, joined by Main. This room alone may touch all others.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench;
