/**
 * The job log, pictures and documents in a PostgreSQL database that several benches share. It may touch that database only.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.store.postgres;
