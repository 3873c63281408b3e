/**
 * Whether a store, a backup or a record is as it was kept. It reads all of them and writes nothing.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.store.verify;
