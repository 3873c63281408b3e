/**
 * The calculations, one room a topic, with what all topics stand on. It may touch the JDK and the numerics library, and never the
 * trade or the program.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics;
