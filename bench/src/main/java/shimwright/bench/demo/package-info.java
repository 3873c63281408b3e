/**
 * The demo shop: two invented jobs played into a fresh log. It may touch the desk, the acts and what lies on the
 * bench, and does nothing but the acts that a person can do.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.demo;
