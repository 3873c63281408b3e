/**
 * A result or every reason why there is none. It may touch the JDK alone, and every room may touch it.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.outcome;
