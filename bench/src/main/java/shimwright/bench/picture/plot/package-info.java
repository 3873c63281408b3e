/**
 * Plots of readings, limits, packs, budgets and worksheets, each from numbers that are already computed. It may touch
 * {@code svg}, the quantities and the diagrams of the mechanics, and computes nothing but where a line stands.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.picture.plot;
