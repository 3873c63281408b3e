package shimwright.bench.desk;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What is known of some jobs while others of them may still be read.
 *
 * @param of by the job's id, in the order in which they were wanted
 * @param all false while others of them are still being read
 */
public record SoFar<T>(Map<String, T> of, boolean all) {
    public SoFar {
        of = Collections.unmodifiableMap(new LinkedHashMap<>(of));
    }

    /** What is known, in that order. */
    public List<T> values() {
        return List.copyOf(of.values());
    }
}
