/** Simulated rebuilds and benchmarks; ships nothing. */
@org.jspecify.annotations.NullMarked
package shimwright.trial;
