/**
 * Standard parts: what a stamp or a measured size says a part is, with its dimensions from the tables of the standards and how far
 * those agree. It may touch {@code mechanics}, and knows no unit, job or screen.
 */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.part;
