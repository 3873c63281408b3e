/**
 * Which devices were let in, as what, and by which certificate the shop is known to them. Keeps its own few files in the
 * data folder and knows neither pages nor store.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.web.pair;
