/**
 * The data folder or database: the job log with its head file, pictures, documents, backups, signatures. It may touch
 * disks, databases and the entries and interfaces of the job log, and decides nothing of the trade.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.store;
