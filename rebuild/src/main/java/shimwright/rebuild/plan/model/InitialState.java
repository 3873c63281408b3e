package shimwright.rebuild.plan.model;

import java.util.Map;
import java.util.Set;

/**
 * How things stand now.
 *
 * @param orientation of the case; empty where it is not known, then the first costs nothing
 * @param stand where the person is; empty where that is not known, then the first walk costs nothing
 * @param tools laid out
 * @param weight heavy things in the case
 * @param waits seconds from now before a task can start (a cure that runs, a part on its way), by task
 * @param open seconds since a window was opened, by window
 */
public record InitialState(
        String orientation,
        String stand,
        Set<String> tools,
        int weight,
        Map<String, Double> waits,
        Map<String, Double> open) {
    public InitialState {
        tools = Set.copyOf(tools);
        waits = Map.copyOf(waits);
        open = Map.copyOf(open);
    }

    /** Nothing known, nothing running. */
    public static InitialState fresh() {
        return new InitialState("", "", Set.of(), 0, Map.of(), Map.of());
    }
}
