/**
 * The shop's key, what it signs, and the heads that are remembered apart from all data folders. It may touch the owner's folder only.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.store.sign;
