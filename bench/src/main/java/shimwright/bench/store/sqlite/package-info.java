/**
 * The job log of a data folder: one SQLite file with its head file, and the summaries beside it. It may touch that folder only.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.store.sqlite;
