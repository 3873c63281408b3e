/**
 * Backups taken of either store and laid into either. It reads one store, writes another, and changes nothing of the first.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.store.backup;
