/** The data folder: the job log in SQLite with its head file, the pictures, backups. */
@org.jspecify.annotations.NullMarked
package shimwright.bench.store;
