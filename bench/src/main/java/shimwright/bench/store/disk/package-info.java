/**
 * Writing that has reached the disk, and where things lie in a data folder. It may touch files and knows neither entries nor databases.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.store.disk;
