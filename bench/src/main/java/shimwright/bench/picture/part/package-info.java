/**
 * A part's own picture: one item, fastener or standard part alone, in half section and from its face with the sizes that are
 * known, or as an outline marked as not to scale. It may touch {@code svg}, the figures of {@code section}, the quantities, the
 * standard parts and the model of the unit, and never a job or the store.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.picture.part;
