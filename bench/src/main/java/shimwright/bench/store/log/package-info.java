/**
 * What a job log is in any database: rows, hash chain, statements, walks, and what can be wrong. It opens no log by itself.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.store.log;
