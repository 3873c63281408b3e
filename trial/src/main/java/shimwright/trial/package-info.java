/**
 * Simulated rebuilds and benchmarks; ships nothing. It may touch the whole house, and nobody touches it.
 */
@org.jspecify.annotations.NullMarked
package shimwright.trial;
