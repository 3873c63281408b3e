package shimwright.bench.desk;

import shimwright.rebuild.learn.Memories;
import shimwright.rebuild.learn.Taught;

/**
 * What earlier jobs of a unit type teach, as far as they are read.
 *
 * @param memories what the newest of them knew by the place where it matters, the newest first
 * @param taught all that they teach, of many more of them
 * @param all false while others of them are still being read
 */
public record Lessons(Memories memories, Taught taught, boolean all) {}
