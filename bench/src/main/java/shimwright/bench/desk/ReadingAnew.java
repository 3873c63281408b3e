package shimwright.bench.desk;

/**
 * How far the jobs of a shop are read for their lines.
 *
 * @param read so far
 * @param of jobs altogether
 */
public record ReadingAnew(int read, int of) {}
