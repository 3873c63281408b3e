/**
 * How a calculation shows its working: lines produced while computing, never afterwards. A calculation keeps a
 * {@link shimwright.mechanics.working.Working}, takes every intermediate number back from it, and closes it with
 * {@code worked(result)}. It may touch quantities alone.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.working;
